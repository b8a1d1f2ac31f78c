package org.cagewall.kiosk.handover;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** What happened, the most urgent first, each line to be ticked. Used on the event thread. */
final class ReviewPage extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Supplier<ReviewActs> acts;
    private final Stack list = new Stack();
    private final Stack side = new Stack();
    private final TouchScroll scroll;
    private final Map<String, JComponent> titles = new LinkedHashMap<>();
    private transient Optional<String> startAt = Optional.empty();
    private transient HandoverState.View shows = new HandoverState.AtAGlance();

    ReviewPage(Words words, HandoverState.Happened happened, Supplier<ReviewActs> acts) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Sizes.isRoomy() ? "[grow,fill][332!,fill]" : "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.acts = acts;
        this.scroll = new TouchScroll(words, "review", list);
        add(scroll, "wmin 0");
        if (Sizes.isRoomy()) {
            add(new TouchScroll(words, "sections", side), "wmin 0");
        }
        show(happened);
    }

    void show(HandoverState.Happened happened) {
        list.removeAll();
        side.removeAll();
        titles.clear();
        if (Sizes.isRoomy()) {
            side.add(summary(happened));
            if (!happened.course().isEmpty()) {
                side.add(new WrapLabel(happened.course(), TextStyle.LINE, Tone.INK));
            }
        } else {
            list.add(summary(happened));
        }
        if (happened.view() instanceof HandoverState.OneCage one) {
            cage(one);
        } else {
            sections(happened.sections());
        }
        if (!happened.view().equals(shows)) {
            startAt = Optional.of(happened.view() instanceof HandoverState.LineByLine lines ? lines.from() : "");
        }
        shows = happened.view();
        revalidate();
        repaint();
    }

    private void sections(List<HandoverState.Section> sections) {
        for (HandoverState.Section section : sections) {
            JComponent title = new WrapLabel(section.title(), TextStyle.ACTION, Tone.INK);
            titles.put(section.name(), title);
            list.add(title);
            section.rows().forEach(row -> list.add(row(row)));
        }
        if (sections.isEmpty()) {
            list.add(new WrapLabel(words.say("handover.quiet"), TextStyle.ACTION, Tone.INK));
            list.add(new WrapLabel(words.say("handover.quiet-text"), TextStyle.LINE, Tone.SOFT));
        }
    }

    private void cage(HandoverState.OneCage one) {
        list.add(new WrapLabel(one.title(), TextStyle.ACTION, Tone.INK));
        one.rows().forEach(row -> list.add(row(row)));
        SideBySide buttons = new SideBySide();
        buttons.add(TouchButton.of(
                        ButtonKind.OUTLINED, "open-cage", words.say("handover.open-cage", one.cage()), () -> acts.get()
                                .openCage(one.cage()))
                .tall(64));
        list.add(buttons);
    }

    /** A view of other lines begins where it was asked to, once its lines have their places. */
    @Override
    public void doLayout() {
        super.doLayout();
        startAt.ifPresent(section -> {
            startAt = Optional.empty();
            scroll.validate();
            Optional.ofNullable(titles.get(section)).ifPresentOrElse(scroll::startAt, scroll::toTop);
        });
    }

    private Card summary(HandoverState.Happened happened) {
        Card card = new Card().strong();
        card.add(new WrapLabel(happened.days(), TextStyle.ACTION, Tone.INK), "wmin 0, growx");
        card.add(
                new WrapLabel(words.say("handover.unread", happened.unread()), TextStyle.LEAD, Tone.INK),
                "wmin 0, growx");
        if (happened.reading() != HandoverState.Reading.ALL_READ) {
            if (happened.unread() > 0) {
                card.add(
                        new WrapLabel(words.say("handover.touch-to-read"), TextStyle.SECOND, Tone.SOFT),
                        "wmin 0, growx");
            }
            boolean ticking = happened.reading() == HandoverState.Reading.TICKING;
            TouchButton all = TouchButton.of(
                            ButtonKind.MAIN,
                            "all-read",
                            words.say(ticking ? "handover.one-moment" : "handover.all-read"),
                            () -> acts.get().tickAll())
                    .tall(64);
            all.setEnabled(!ticking);
            card.add(all, "growx, gaptop 4");
        }
        card.add(
                TouchButton.of(ButtonKind.OUTLINED, "glance", words.say("handover.glance"), () -> acts.get()
                                .glance())
                        .tall(64),
                "growx, gaptop 4");
        return card;
    }

    private JComponent row(HandoverState.Row row) {
        return row.touch() instanceof HandoverState.Nowhere
                ? Still.of(row.face())
                : new ListRow(
                        (row.touch() instanceof HandoverState.Go ? "go." : "tick.") + row.name(),
                        row.face(),
                        () -> acts.get().touch(row));
    }
}
