package org.cagewall.kiosk.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.handover.Strip;
import org.cagewall.handover.Strip.Seen;
import org.cagewall.kiosk.kit.DayMark;
import org.cagewall.kiosk.kit.DayMark.Ground;
import org.cagewall.kiosk.kit.DayMark.Shape;
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
                strip.rows().stream().map(this::line).toList(),
                key(strip));
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
            case NOT_EXPECTED -> Shape.DOT;
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
        for (Seen seen : Seen.values()) {
            if (strip.count(seen) > 0) {
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
