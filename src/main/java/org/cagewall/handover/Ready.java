package org.cagewall.handover;

import java.time.LocalDate;
import java.util.List;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/**
 * What has to be ready before the owner leaves, and how far it is. Immutable; any thread.
 *
 * @param lines in the order of {@link Matter}, one each
 * @param shopping what the birds eat on the days away
 * @param effort the sitter's minutes on the first day that is still to come
 */
public record Ready(Absence absence, List<Line> lines, Shopping shopping, Effort effort) {

    /** How far something is. */
    public enum State {
        OPEN,
        DONE,
        NOT_NEEDED
    }

    /**
     * One thing.
     *
     * @param title in a few words
     * @param text how it stands, in whole sentences
     */
    public record Line(Matter matter, State state, Message title, Message text, Lead lead) {}

    public Ready {
        lines = List.copyOf(lines);
    }

    /**
     * How ready the room is for these days away.
     *
     * @param today the day on which it is asked, before the days away or on one of them
     */
    public static Ready of(Room room, LocalDate today, Absence absence) {
        return new Preparing(room, today, absence).ready();
    }

    /** How many things are still to be seen to. */
    public long open() {
        return lines.stream().filter(line -> line.state() == State.OPEN).count();
    }
}
