package org.cagewall.kiosk.today;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
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

/** The lines of the list, the next one opened out at the top. Used on the event thread. */
final class ListPage extends Pane {

    private static final long serialVersionUID = 1L;

    ListPage(Words words, TodayState.Lines lines, Supplier<TodayPresenter> presenter) {
        super(new BorderLayout());
        Stack list = new Stack();
        lines.next().ifPresent(next -> list.add(next(words, next, lines.likewise(), presenter)));
        lines.allDone().ifPresent(done -> list.add(allDone(words, done, presenter)));
        lines.degrees()
                .ifPresent(face -> list.add(
                        new ListRow("degrees", face, () -> presenter.get().degrees())));
        for (TodayState.Line line : lines.lines()) {
            list.add(new ListRow(
                    "row." + line.task(), line.face(), () -> presenter.get().touch(line.task())));
        }
        if (!lines.foot().isEmpty()) {
            list.add(new WrapLabel(lines.foot(), TextStyle.LINE, Tone.SOFT));
        }
        add(new TouchScroll(words, "list", list));
    }

    private static Card next(
            Words words, TodayState.Next next, List<TodayState.Next> likewise, Supplier<TodayPresenter> presenter) {
        Card card = new Card(new MigLayout("insets 18 24 18 24, fillx, wrap 2, gap 0 6", "[112!,left][grow,fill]"))
                .leading();
        card.setName("next");
        if (!next.lead().isEmpty()) {
            card.add(
                    new WrapLabel(next.lead(), TextStyle.NEXT, Tone.INK)
                            .orSmaller(
                                    TextStyle.TITLE, TextStyle.LEAD, TextStyle.TAG, TextStyle.SECOND, TextStyle.MARK),
                    "cell 0 0 1 2, aligny top, wmin 0, wmax 104");
        }
        String where = next.lead().isEmpty() ? "cell 0 %d 2 1, wmin 0, growx" : "cell 1 %d, wmin 0, growx";
        card.add(
                new Steady(
                        said(next),
                        likewise.stream()
                                .filter(other -> isAnsweredAs(next, other))
                                .map(ListPage::said)
                                .toList()),
                where.formatted(0));
        SideBySide answers = new SideBySide();
        for (TaskAct act : next.acts()) {
            answers.add(button(words, act, () -> presenter.get().act(next.task(), act)));
        }
        card.add(answers, where.formatted(1) + ", gaptop 8");
        return card;
    }

    /** Lines of one kind follow one another under a hurried finger; one of another kind needs no room kept for it. */
    private static boolean isAnsweredAs(TodayState.Next one, TodayState.Next other) {
        return one.lead().isEmpty() == other.lead().isEmpty()
                && one.acts().stream()
                        .skip(1)
                        .toList()
                        .equals(other.acts().stream().skip(1).toList());
    }

    private static Stack said(TodayState.Next next) {
        Stack said = new Stack(6);
        Stream.of(
                        new WrapLabel(next.first(), TextStyle.LEAD, Tone.INK),
                        new WrapLabel(Sizes.px(100) > 100 ? next.brief() : next.how(), TextStyle.LINE, Tone.INK),
                        new WrapLabel(next.mind(), TextStyle.BUTTON, Tone.INK),
                        new WrapLabel(next.why(), TextStyle.SECOND, Tone.SOFT))
                .filter(label -> !label.getText().isEmpty())
                .forEach(said::add);
        return said;
    }

    private static Card allDone(Words words, TodayState.AllDone done, Supplier<TodayPresenter> presenter) {
        Card card = new Card(new MigLayout("insets 28 28 28 28, fillx, wrap 1, gap 0 10", "[grow,fill]")).leading();
        card.add(new WrapLabel(done.title(), TextStyle.TITLE, Tone.INK), "wmin 0");
        card.add(new WrapLabel(done.text(), TextStyle.LINE, Tone.INK), "wmin 0");
        done.then()
                .ifPresent(
                        act -> card.add(button(words, act, () -> presenter.get().act(act)), "growx 0, gaptop 8"));
        return card;
    }

    private static TouchButton button(Words words, TaskAct act, Runnable then) {
        TouchButton button = TouchButton.of(act.kind(), "act." + act.word(), words.say("today.act." + act.word()), then)
                .type(act == TaskAct.NOT_DONE || act == TaskAct.OPEN_CAGE ? TextStyle.BUTTON : TextStyle.LEAD)
                .tall(64);
        Dimension natural = button.getPreferredSize();
        int least = Sizes.px(act.kind() == ButtonKind.MAIN ? 220 : 120);
        button.setPreferredSize(new Dimension(Math.max(least, natural.width), natural.height));
        return button;
    }
}
