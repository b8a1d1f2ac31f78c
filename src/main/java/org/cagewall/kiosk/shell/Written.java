package org.cagewall.kiosk.shell;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import javax.swing.text.JTextComponent;

/** What a field held before each of the last characters went into it, so that they can be taken out again. Event thread. */
final class Written {

    private static final int MOST = 64;

    private final Deque<String> before = new ArrayDeque<>();
    private Optional<JTextComponent> field = Optional.empty();

    /** One more character is about to go into this field. */
    void goesInto(JTextComponent next) {
        if (field.filter(next::equals).isEmpty()) {
            before.clear();
            field = Optional.of(next);
        }
        before.push(next.getText());
        if (before.size() > MOST) {
            before.removeLast();
        }
    }

    /** Takes the last n characters out, and puts back what they had replaced. */
    void takeOut(int characters) {
        Optional<String> whole =
                before.stream().skip(Math.max(0, characters - 1)).findFirst();
        whole.ifPresent(text -> field.ifPresent(it -> it.setText(text)));
        before.clear();
    }
}
