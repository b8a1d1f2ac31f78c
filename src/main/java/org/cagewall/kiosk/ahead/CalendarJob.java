package org.cagewall.kiosk.ahead;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import org.cagewall.desk.Book;
import org.cagewall.files.Calendar;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts the calendar for a phone into a folder. For the study lane, never the event thread. Immutable. */
record CalendarJob(Words words, Path folder) {

    /** What came of it, and a sentence about it. */
    record Result(AheadState.Came came, Message what) {}

    Result save(Book book, Room room, LocalDate today) {
        Instant stamp = book.entry(room.head()).map(LogEntry::recorded).orElse(Instant.EPOCH);
        try {
            return switch (Calendar.write(folder, room, today, stamp, words::say)) {
                case WRITTEN ->
                    new Result(
                            AheadState.Came.WELL, Message.of("ahead.calendar-saved", Calendar.FILE, folder.toString()));
                case NOTHING_TO_SHOW -> new Result(AheadState.Came.WELL, Message.of("ahead.calendar-empty"));
            };
        } catch (IOException e) {
            return new Result(AheadState.Came.NOT, Message.of("ahead.calendar-not-saved", folder.toString()));
        }
    }
}
