package org.cagewall.kiosk.handover;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.ListRow;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.text.Words;

/** What happened, the most urgent first, each line to be ticked; the sections at the right. Used on the event thread. */
final class ReviewPage extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Supplier<HandoverPresenter> presenter;
    private final Stack list = new Stack();
    private final Stack side = new Stack();
    private final TouchScroll scroll;
    private final Map<String, JComponent> titles = new LinkedHashMap<>();

    ReviewPage(Words words, HandoverState.Happened happened, Supplier<HandoverPresenter> presenter) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Measure.isRoomy() ? "[grow,fill][332!,fill]" : "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.presenter = presenter;
        this.scroll = new TouchScroll(words, "review", list);
        add(scroll, "wmin 0");
        if (Measure.isRoomy()) {
            add(new TouchScroll(words, "sections", side), "wmin 0");
        }
        show(happened);
    }

    void show(HandoverState.Happened happened) {
        list.removeAll();
        side.removeAll();
        titles.clear();
        if (Measure.isRoomy()) {
            side.add(summary(happened));
            ways(happened);
        } else {
            list.add(summary(happened));
        }
        for (HandoverState.Section section : happened.sections()) {
            JComponent title = new WrapLabel(section.title(), Type.ACTION, Tone.INK);
            titles.put(section.name(), title);
            list.add(title);
            section.rows().forEach(row -> list.add(row(row)));
        }
        if (happened.sections().isEmpty()) {
            list.add(new WrapLabel(words.say("handover.quiet"), Type.ACTION, Tone.INK));
            list.add(new WrapLabel(words.say("handover.quiet-text"), Type.LINE, Tone.SOFT));
        }
        revalidate();
        repaint();
    }

    private Card summary(HandoverState.Happened happened) {
        Card card = new Card().strong();
        card.add(new WrapLabel(happened.days(), Type.ACTION, Tone.INK), "wmin 0, growx");
        card.add(new WrapLabel(words.say("handover.unread", happened.unread()), Type.LEAD, Tone.INK), "wmin 0, growx");
        if (happened.unread() > 0) {
            card.add(new WrapLabel(words.say("handover.touch-to-read"), Type.SECOND, Tone.SOFT), "wmin 0, growx");
            boolean ticking = happened.ticking() == HandoverState.Ticking.ALL;
            TouchButton all = TouchButton.of(
                            ButtonKind.MAIN,
                            "all-read",
                            words.say(ticking ? "handover.one-moment" : "handover.all-read"),
                            () -> presenter.get().tickAll())
                    .tall(64);
            all.setEnabled(!ticking);
            card.add(all, "growx, gaptop 4");
        }
        return card;
    }

    /** The ways to the sections of a long list. */
    private void ways(HandoverState.Happened happened) {
        for (HandoverState.Section section : happened.sections()) {
            side.add(TouchButton.of(
                            ButtonKind.PLAIN,
                            "section." + section.name(),
                            section.title(),
                            () -> scroll.show(titles.get(section.name())))
                    .tall(52));
        }
    }

    private JComponent row(HandoverState.Row row) {
        return row.entries().isEmpty()
                ? Still.of(row.face())
                : new ListRow(
                        "tick." + row.name(), row.face(), () -> presenter.get().tick(row));
    }
}
