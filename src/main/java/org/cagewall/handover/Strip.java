package org.cagewall.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.care.Answer;

/**
 * Who looked at what: a row for each cage in walking order, a cell for each day. Immutable; any thread.
 *
 * @param days those that have come, the first first
 */
public record Strip(List<LocalDate> days, List<Row> rows) {

    /** How a cage was seen on a day; the firmest of several. */
    public enum Seen {
        /** Its card was scanned there. */
        BY_SCAN,
        BY_HAND,
        /** Somebody was expected, and nobody came. */
        NOBODY,
        /** The owner wanted no hand in it, and nobody looked. */
        LEFT_ALONE,
        /** The day is not over, and nobody has looked so far. */
        NOT_YET,
        /** Nobody had to: the cage was not there yet, or the owner was at home. */
        NOT_EXPECTED,
        /** No bird lived there, and nobody looked. */
        EMPTY
    }

    /** One cage. */
    public record Row(String cage, List<Cell> cells) {

        public Row {
            cells = List.copyOf(cells);
        }

        /** Whether no bird lived there on any of the days, so that there is nothing to tell of it. */
        public boolean isEmpty() {
            return !cells.isEmpty() && count(Seen.EMPTY) == cells.size();
        }

        /** On how many days it was seen so. */
        public long count(Seen seen) {
            return cells.stream().filter(cell -> cell.seen() == seen).count();
        }
    }

    /**
     * One cage on one day.
     *
     * @param answer what was found; different, if anything was
     */
    public record Cell(LocalDate day, Seen seen, Optional<Answer> answer) {

        public boolean isDifferent() {
            return answer.filter(it -> it == Answer.DIFFERENT).isPresent();
        }
    }

    public Strip {
        days = List.copyOf(days);
        rows = List.copyOf(rows);
    }

    public long count(Seen seen) {
        return rows.stream().mapToLong(row -> row.count(seen)).sum();
    }

    /** The cages to which nobody came on a day, in walking order. */
    Stream<String> unvisited(LocalDate day) {
        Cell missed = new Cell(day, Seen.NOBODY, Optional.empty());
        return rows.stream().filter(row -> row.cells().contains(missed)).map(Row::cage);
    }
}
