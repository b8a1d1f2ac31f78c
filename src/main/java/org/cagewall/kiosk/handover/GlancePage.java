package org.cagewall.kiosk.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.strip.DayMark;
import org.cagewall.kiosk.kit.strip.MarkLabel;
import org.cagewall.kiosk.kit.strip.StripHead;
import org.cagewall.kiosk.kit.strip.StripRow;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/**
 * What happened at one look: how many there are of everything, how the days away came, and below them who looked at
 * which cage on which day. Used on the event thread.
 */
final class GlancePage extends Pane {

    private static final long serialVersionUID = 1L;

    /** So many rows of a strip have room below one another, at the normal text size. */
    private static final int ROWS = 9;

    /** The narrowest cell in which a mark is still told from others. */
    private static final int NARROWEST = 21;

    private static final int WIDTH = 1232;
    private static final int GAP = 20;
    private static final int NAME = 72;

    private final transient Words words;
    private final transient Supplier<ReviewActs> acts;
    private final Stack all = new Stack(8);
    private int part;

    GlancePage(Words words, HandoverState.Happened happened, Supplier<ReviewActs> acts) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.acts = acts;
        add(new TouchScroll(words, "glance", all), "wmin 0");
        show(happened);
    }

    void show(HandoverState.Happened happened) {
        all.removeAll();
        all.add(counts(happened));
        if (!happened.course().isEmpty()) {
            all.add(new WrapLabel(happened.course(), TextStyle.LINE, Tone.INK));
        }
        strip(happened);
        revalidate();
        repaint();
    }

    private SideBySide counts(HandoverState.Happened happened) {
        SideBySide counts = new SideBySide();
        counts.add(TouchButton.of(ButtonKind.MAIN, "read", words.say("handover.read-on"), () -> acts.get()
                        .lines(""))
                .second(words.say("handover.unread", happened.unread()))
                .tall(72));
        for (HandoverState.Section section : happened.sections()) {
            counts.add(TouchButton.of(
                            section.ground() == DayMark.Ground.DIFFERENT ? ButtonKind.ATTENTION : ButtonKind.PLAIN,
                            "count." + section.name(),
                            Integer.toString(section.count()),
                            () -> acts.get().lines(section.name()))
                    .type(TextStyle.LEAD)
                    .second(section.word())
                    .tall(72));
        }
        return counts;
    }

    // ------------------------------------------------------------------ the strip

    private void strip(HandoverState.Happened happened) {
        HandoverState.StripFace strip = happened.strip();
        int columns = columns(strip.lines().size(), strip.days().size());
        int most = mostDays(columns);
        int parts = Math.max(1, (strip.days().size() + most - 1) / most);
        part = Math.min(part, parts - 1);
        int each = (strip.days().size() + parts - 1) / parts;
        int first = part * each;
        int last = Math.min(strip.days().size(), first + each);
        SideBySide key = new SideBySide();
        strip.key().forEach(entry -> key.add(new MarkLabel(entry.mark(), entry.text())));
        all.add(key);
        if (parts > 1) {
            all.add(parts(happened, each, parts));
        }
        all.add(columns(strip, columns, first, last));
    }

    private Chips<Integer> parts(HandoverState.Happened happened, int each, int parts) {
        List<String> days = happened.strip().dates();
        List<Choice<Integer>> choices = new ArrayList<>();
        for (int i = 0; i < parts; i++) {
            int last = Math.min(days.size(), (i + 1) * each) - 1;
            choices.add(new Choice<>(
                    Integer.toString(i + 1), words.say("handover.strip-part", days.get(i * each), days.get(last)), i));
        }
        return Chips.oneOf("strip-part", choices, chosen -> {
                    part = chosen;
                    show(happened);
                })
                .choose(List.of(part));
    }

    /** As few as are all seen at once, unless the cells would be too narrow. */
    private static int columns(int rows, int days) {
        int wanted = Math.max(1, (rows + ROWS - 1) / ROWS);
        int columns = Math.min(wanted, Math.max(1, 3 * 100 / Sizes.px(100)));
        while (columns > 1 && mostDays(columns) < days) {
            columns--;
        }
        return columns;
    }

    private static int mostDays(int columns) {
        return (WIDTH * 100 / Sizes.px(100) / columns - GAP - NAME) / NARROWEST;
    }

    private JComponent row(HandoverState.StripEntry entry, int first, int last) {
        if (entry instanceof HandoverState.StripLine line) {
            return new StripRow(
                    "strip." + line.cage(),
                    line.cage(),
                    line.said(),
                    line.remark(),
                    line.marks().subList(first, last),
                    () -> acts.get().cage(line.cage()));
        }
        Pane pane = new Pane(new MigLayout("insets 10 8 10 8, fillx", "[grow,fill]"));
        pane.add(new WrapLabel(((HandoverState.EmptyCages) entry).said(), TextStyle.SECOND, Tone.SOFT), "wmin 0");
        return pane;
    }

    /** Down the first column, then down the next, as one walks. */
    private Pane columns(HandoverState.StripFace strip, int count, int first, int last) {
        Pane columns = new Pane(new MigLayout(
                "insets 0, fillx, gap " + Sizes.px(GAP) + "px 0", "[grow,fill,sizegroup]".repeat(count), "[]"));
        int each = (strip.lines().size() + count - 1) / count;
        for (int column = 0; column < count; column++) {
            Stack rows = new Stack(0);
            rows.add(new StripHead(strip.days().subList(first, last)));
            strip.lines().stream()
                    .skip((long) column * each)
                    .limit(each)
                    .forEach(line -> rows.add(row(line, first, last)));
            columns.add(rows, "wmin 0, aligny top");
        }
        return columns;
    }
}
