package org.cagewall.kiosk.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.handover.Strip;
import org.cagewall.handover.Strip.Seen;
import org.cagewall.kiosk.kit.strip.DayMark;
import org.cagewall.kiosk.kit.strip.DayMark.Ground;
import org.cagewall.kiosk.kit.strip.DayMark.Shape;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts who looked at what into marks, and the same into words. Used on the event thread, free of Swing. */
final class StripWords {

    /** More days than these are counted, not named. */
    private static final int MOST_DAYS = 4;

    private final Words words;

    StripWords(Words words) {
        this.words = words;
    }

    HandoverState.StripFace strip(Strip strip) {
        return new HandoverState.StripFace(
                strip.days().stream()
                        .map(day -> Integer.toString(day.getDayOfMonth()))
                        .toList(),
                strip.days().stream().map(words::shortDay).toList(),
                lines(strip.rows()),
                key(strip));
    }

    private List<HandoverState.StripEntry> lines(List<Strip.Row> rows) {
        List<HandoverState.StripEntry> lines = new ArrayList<>();
        List<String> empty = new ArrayList<>();
        for (Strip.Row row : rows) {
            if (row.isEmpty()) {
                empty.add(row.cage());
            } else {
                tell(empty, lines);
                lines.add(line(row));
            }
        }
        tell(empty, lines);
        return lines;
    }

    /** Those that follow one another, once, and then others can follow. */
    private void tell(List<String> empty, List<HandoverState.StripEntry> lines) {
        if (!empty.isEmpty()) {
            lines.add(new HandoverState.EmptyCages(
                    words.say("handover.strip-empty", empty.size(), empty.get(0), empty.get(empty.size() - 1))));
            empty.clear();
        }
    }

    private HandoverState.StripLine line(Strip.Row row) {
        String remark = remark(row);
        String seen = words.say("handover.strip-seen", row.cage(), row.count(Seen.BY_SCAN), row.count(Seen.BY_HAND));
        return new HandoverState.StripLine(
                row.cage(),
                remark.isEmpty() ? seen : words.say("handover.strip-said", seen, remark),
                remark,
                row.cells().stream().map(StripWords::mark).toList());
    }

    private static DayMark mark(Strip.Cell cell) {
        return new DayMark(shape(cell.seen()), cell.isDifferent() ? Ground.DIFFERENT : Ground.PLAIN);
    }

    private static Shape shape(Seen seen) {
        return switch (seen) {
            case BY_SCAN -> Shape.SQUARE;
            case BY_HAND -> Shape.RING;
            case NOBODY -> Shape.CROSS;
            case LEFT_ALONE -> Shape.LINE;
            case NOT_YET -> Shape.DOTS;
            case NOT_EXPECTED, EMPTY -> Shape.DOT;
        };
    }

    private String remark(Strip.Row row) {
        List<String> parts = new ArrayList<>();
        days(row.cells().stream().filter(cell -> cell.seen() == Seen.NOBODY), "handover.strip-nobody", parts);
        days(row.cells().stream().filter(Strip.Cell::isDifferent), "handover.strip-different", parts);
        return String.join("; ", parts);
    }

    private void days(Stream<Strip.Cell> cells, String key, List<String> parts) {
        List<String> days = cells.map(Strip.Cell::day).map(words::shortDay).toList();
        if (!days.isEmpty()) {
            parts.add(words.say(key, days.size() <= MOST_DAYS ? days : words.say("handover.strip-days", days.size())));
        }
    }

    /** Only of the marks that are there. */
    private List<HandoverState.Key> key(Strip strip) {
        List<HandoverState.Key> key = new ArrayList<>();
        List<Shape> there = strip.rows().stream()
                .filter(row -> !row.isEmpty())
                .flatMap(row -> row.cells().stream())
                .map(cell -> shape(cell.seen()))
                .toList();
        for (Seen seen : Seen.values()) {
            if (seen != Seen.EMPTY && there.contains(shape(seen))) {
                key.add(new HandoverState.Key(new DayMark(shape(seen), Ground.PLAIN), word(seen)));
            }
        }
        if (strip.rows().stream().flatMap(row -> row.cells().stream()).anyMatch(Strip.Cell::isDifferent)) {
            key.add(new HandoverState.Key(
                    new DayMark(Shape.DOT, Ground.DIFFERENT), words.say("handover.key.different")));
        }
        return key;
    }

    private String word(Seen seen) {
        return words.say("handover.key." + Message.word(seen));
    }
}
