package org.cagewall.kiosk.kit;

import org.cagewall.kiosk.theme.TextStyle;

/** Who is recording, always to be seen and changed in one touch. Makes buttons; used on the event thread. */
public final class PersonPill {

    private PersonPill() {}

    /** The pill that says who records now; {@code said} is its accessible name. */
    public static TouchButton of(String who, String said, Runnable onPress) {
        TouchButton pill = TouchButton.of(ButtonKind.PLAIN, "person", who, onPress)
                .type(TextStyle.BUTTON)
                .pill();
        say(pill, who, said);
        return pill;
    }

    public static void say(TouchButton pill, String who, String said) {
        pill.setText(who);
        pill.getAccessibleContext().setAccessibleName(said);
    }
}
