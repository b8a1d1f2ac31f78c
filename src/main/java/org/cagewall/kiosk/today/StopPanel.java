package org.cagewall.kiosk.today;

import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.text.Words;

/** When to stop and whom to phone; never out of sight while the list is on the screen. Used on the event thread. */
final class StopPanel extends Card {

    private static final long serialVersionUID = 1L;

    StopPanel(Words words, TodayState.Stop stop, Runnable onSafety) {
        super(new MigLayout("insets 16 20 16 20, fill, wrap 1, gap 0 10", "[grow,fill]", "[][grow,fill][]"));
        setName("stop");
        strong();
        add(new WrapLabel(words.say("today.stop"), Type.ACTION, Tone.INK).lines(1), "wmin 0");
        add(new TouchScroll(words, "stop.all", all(words, stop)), "grow");
        add(
                TouchButton.of(ButtonKind.PLAIN, "safety", words.say("today.safety"), onSafety)
                        .tall(52),
                "growx");
    }

    private static Stack all(Words words, TodayState.Stop stop) {
        Stack all = new Stack(12);
        for (String rule : stop.rules()) {
            Card card = new Card(new MigLayout("insets 14 14 14 14, fillx", "[grow,fill]")).attention();
            card.add(new WrapLabel(rule, Type.TAG, Tone.ATTENTION_INK), "growx, wmin 0");
            all.add(card);
        }
        stop.phones().forEach(phone -> all.add(line(phone)));
        String foot = words.say(stop.phones().isEmpty() ? "today.no-phones" : "today.next-phone");
        all.add(new WrapLabel(foot, Type.SECOND, Tone.SOFT));
        return all;
    }

    private static Pane line(TodayState.Phone phone) {
        boolean narrow = Measure.px(100) > 100;
        Pane line = new Pane(new MigLayout(
                "insets 6 4 0 4, fillx, gap 8 0" + (narrow ? ", wrap 1" : ""), "[grow,fill]" + (narrow ? "" : "[]")));
        line.add(new WrapLabel(phone.name(), Type.BUTTON, Tone.SOFT), "wmin 0, growx");
        line.add(new WrapLabel(phone.number(), Type.ACTION, Tone.INK), "wmin 0");
        return line;
    }
}
