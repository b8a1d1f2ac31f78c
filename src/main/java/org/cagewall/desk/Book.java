package org.cagewall.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.deed.Lines;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.store.Store;

/** The record opened for reading, past and all. Valid only while it is lent, on the thread it is lent to. */
public final class Book {

    private final Store.Reading reading;

    Book(Store.Reading reading) {
        this.reading = reading;
    }

    /** The entries asked for, the newest first. */
    public List<LogEntry> log(LogQuery query) {
        return reading.log(query);
    }

    public Optional<LogEntry> entry(long number) {
        return reading.entry(number);
    }

    /** A bird that was ever in the record, by its ring or name. */
    public Optional<Bird> bird(String name) {
        return reading.bird(name);
    }

    /** The room with every bird, pair, check and outcome there ever was, as of that day. */
    public Room everything(LocalDate today) {
        return reading.everything(today);
    }

    /** Hands out every entry as an export writes it, in the order of the numbers. */
    public void exportedLines(Consumer<String> consumer) {
        reading.lines(kept -> consumer.accept(
                Lines.export(kept.line(), new Lines.Seal(kept.entry(), kept.recorded(), kept.digest()))));
    }

    /** Follows the chain of digests; the first entry that does not fit, if there is one. */
    public Optional<Long> firstBroken() {
        return reading.firstBroken();
    }

    public Head head() {
        Store.Origin origin = reading.origin();
        return new Head(origin.entries(), origin.digest());
    }

    /** What was fixed when the room was made, and how far its record goes. */
    Store.Origin origin() {
        return reading.origin();
    }
}
