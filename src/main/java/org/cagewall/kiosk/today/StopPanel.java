package org.cagewall.kiosk.today;

import java.util.function.Consumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.AlarmButtons;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Words;

/** When to stop and whom to phone; never out of sight while the list is on the screen. Used on the event thread. */
final class StopPanel extends Card {

    private static final long serialVersionUID = 1L;

    StopPanel(Words words, TodayState.Stop stop, Consumer<Danger> onAlarm, Runnable onSafety) {
        super(new MigLayout("insets 14 20 14 20, fill, wrap 1, gap 0 8", "[grow,fill]", "[][][grow,fill][]"));
        setName("stop");
        strong();
        add(new WrapLabel(words.say("today.stop"), TextStyle.ACTION, Tone.INK).lines(1), "wmin 0");
        add(phones(words, stop), "growx, wmin 0");
        add(new TouchScroll(words, "stop.all", all(words, stop, onAlarm)), "grow");
        add(
                TouchButton.of(ButtonKind.PLAIN, "safety", words.say("today.safety"), onSafety)
                        .tall(52),
                "growx");
    }

    /** The numbers stand above all that is scrolled. */
    private static Pane phones(Words words, TodayState.Stop stop) {
        Pane phones = new Pane(new MigLayout("insets 0, fillx, wrap 1, gap 0 2", "[grow,fill]"));
        stop.phones().forEach(phone -> phones.add(line(phone), "wmin 0, growx"));
        if (stop.phones().isEmpty()) {
            phones.add(new WrapLabel(words.say("today.no-phones"), TextStyle.SECOND, Tone.INK), "wmin 0, growx");
        }
        return phones;
    }

    private static Stack all(Words words, TodayState.Stop stop, Consumer<Danger> onAlarm) {
        Stack all = new Stack(8);
        all.add(new WrapLabel(words.say(Danger.NO_ANSWER), TextStyle.TAG, Tone.INK));
        stop.agreed().forEach(agreed -> all.add(new WrapLabel(agreed, TextStyle.TAG, Tone.INK)));
        all.add(new AlarmButtons(words, onAlarm));
        all.add(new WrapLabel(words.say(Danger.EMERGENCY_FIRST), TextStyle.SECOND, Tone.INK));
        stop.rules().forEach(rule -> all.add(new WrapLabel(rule, TextStyle.SECOND, Tone.INK)));
        return all;
    }

    /** The name above, so that a long one leaves the number whole. */
    private static Pane line(TodayState.Phone phone) {
        Pane line = new Pane(new MigLayout("insets 0 4 0 4, fillx, wrap 1, gap 0 0", "[grow,fill]"));
        line.add(new WrapLabel(phone.name(), TextStyle.SECOND, Tone.SOFT), "wmin 0, growx");
        line.add(new WrapLabel(phone.number(), TextStyle.ACTION, Tone.INK).lines(1), "wmin 0, growx");
        return line;
    }
}
