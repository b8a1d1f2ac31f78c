package org.cagewall.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/**
 * The room's days as a phone's calendar reads them (RFC 5545): whole days, and the same names in every file, so that a
 * later import changes what an earlier one brought. Stateless; any thread but the event thread.
 */
public final class Calendar {

    /** The file's name, always the same: the one that lies there tells what a phone may hold. */
    public static final String FILE = "calendar.ics";

    /** So long after its last day a file still tells a phone that something is over. */
    private static final int DAYS_TOLD = 60;

    /** A longer file was not written here, and counts as none. */
    private static final int MOST_BYTES = 16 * 1024 * 1024;

    private Calendar() {}

    /** Whether there was anything to put into the file. */
    public enum Came {
        WRITTEN,
        NOTHING_TO_SHOW
    }

    /**
     * Writes the calendar into the folder in place of the one that lies there; where there is nothing to show there is
     * no file, since RFC 5545 knows no empty calendar.
     *
     * @param stamp when the record was last written to
     * @throws IOException when the folder cannot be read or written to
     */
    public static Came write(Path folder, Room room, LocalDate today, Instant stamp, Function<Message, String> words)
            throws IOException {
        Path file = folder.resolve(FILE);
        Optional<String> text = of(room, today, stamp, lying(file), words);
        if (text.isEmpty()) {
            Files.deleteIfExists(file);
            return Came.NOTHING_TO_SHOW;
        }
        Export.put(file, out -> Export.append(out, text.get()));
        return Came.WRITTEN;
    }

    private static String lying(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? "" : new String(bytes, StandardCharsets.UTF_8);
        } catch (NoSuchFileException e) {
            return "";
        }
    }

    /**
     * The calendar as text; empty where there is nothing to show. What the file before it held and no longer holds is
     * told as cancelled, in a later revision, so that a phone lets go of it (RFC 5545, 3.8.1.11 and 3.8.7.4).
     *
     * @param room the room as it stands; the number of its last entry is the least revision
     * @param today for which the open tasks are listed
     * @param before the text of the file before this one; none of this room's counts as none
     * @param words the reader's language
     */
    static Optional<String> of(
            Room room, LocalDate today, Instant stamp, String before, Function<Message, String> words) {
        CalendarFile earlier = CalendarFile.read(before);
        List<CalendarEvent> holding = new CalendarEntries(room, today)
                .all().stream().map(entry -> entry.said(words)).toList();
        Set<String> held = holding.stream().map(CalendarEvent::uid).collect(Collectors.toSet());
        Stream<CalendarEvent> over = earlier.events().stream()
                .filter(event -> event.uid().endsWith(CalendarEntries.ending(room)) && !held.contains(event.uid()))
                .filter(event -> !event.last().plusDays(DAYS_TOLD).isBefore(today))
                .map(event -> event.over(words.apply(Message.of("calendar.over", event.summary()))));
        List<CalendarEvent> all = Stream.concat(holding.stream(), over).toList();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                earlier.sequence() >= room.head() && all.equals(earlier.events())
                        ? before
                        : new CalendarFile(all, Math.max(room.head(), later(earlier.sequence()))).text(stamp));
    }

    /** After the highest revision that a calendar can hold the moment of the file alone tells which is the later one. */
    private static long later(long sequence) {
        return Math.min(Integer.MAX_VALUE, sequence + 1);
    }
}
