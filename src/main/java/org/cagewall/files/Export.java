package org.cagewall.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Message;

/**
 * Writes the whole record into a folder in open forms: its lines as they were recorded, tables for a spreadsheet, a
 * calendar for a phone. All files are UTF-8. Stateless; any thread but the event thread.
 */
public final class Export {

    /** The file of the record's own lines. */
    public static final String LINES = "record.jsonl";

    private Export() {}

    /** Hands out the record's lines, each with its number, instant and digest, in their order. */
    @FunctionalInterface
    public interface RecordLines {
        void handOut(Consumer<String> to);
    }

    /**
     * Writes all files; each takes the place of an older one only when it is whole.
     *
     * @param everything the room with every bird, pair and check there ever was
     * @param present the room as it stands, from which the calendar is made
     * @param log every entry
     * @param words the reader's language
     * @throws IOException when the folder cannot be made or written to
     */
    public static void write(
            Path folder,
            RecordLines lines,
            Room everything,
            Room present,
            List<LogEntry> log,
            Function<Message, String> words)
            throws IOException {
        OwnersFolder.makeKnown(folder, LINES);
        put(folder.resolve(LINES), out -> lines.handOut(line -> append(out, line + "\n")));
        Map<String, String> tables = new Tables(everything, log, words).byFile();
        for (Map.Entry<String, String> table : tables.entrySet()) {
            put(folder.resolve(table.getKey()), out -> append(out, table.getValue()));
        }
        calendar(folder, present, log, words);
    }

    /** The same record makes the same calendar: its stamp is that of the entry recorded last. */
    private static void calendar(Path folder, Room present, List<LogEntry> log, Function<Message, String> words)
            throws IOException {
        Instant stamp =
                log.stream().map(LogEntry::recorded).max(Instant::compareTo).orElse(Instant.EPOCH);
        Calendar.write(folder, present, present.day(), stamp, words);
    }

    static void put(Path file, Consumer<BufferedWriter> content) throws IOException {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try (BufferedWriter out = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
            OwnersFolder.close(part);
            content.accept(out);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
        Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
    }

    static void append(BufferedWriter out, String text) {
        try {
            out.write(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
