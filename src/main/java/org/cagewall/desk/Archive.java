package org.cagewall.desk;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Iterator;
import java.util.Properties;
import org.cagewall.deed.Lines;
import org.cagewall.store.SealedLine;
import org.cagewall.store.Store;
import org.cagewall.store.StoreProblem;
import org.cagewall.text.Message;

/**
 * A backup is the record's lines with their numbers, instants and digests, and a small file with what was fixed when the
 * room was made; a restored room is made of them from the first entry on. Bound to no thread.
 */
public final class Archive {

    private static final String LINES = "record.jsonl";
    private static final String ORIGIN = "room.properties";

    private Archive() {}

    /** What a backup holds. */
    public record Kept(long entries) {}

    /**
     * Writes a backup into the folder; an older one there is replaced only when the new one is whole.
     *
     * @throws DataFolder.Unavailable when the folder cannot be written to
     */
    public static Kept write(Book book, Path folder) {
        try {
            Files.createDirectories(folder);
            Store.Origin origin = book.origin();
            Path part = folder.resolve(LINES + ".part");
            try (BufferedWriter out = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
                book.exportedLines(line -> append(out, line));
            }
            Files.move(part, folder.resolve(LINES), StandardCopyOption.REPLACE_EXISTING);
            Properties fixed = new Properties();
            fixed.setProperty("code", origin.code());
            fixed.setProperty("zone", origin.zone());
            fixed.setProperty("entries", Long.toString(origin.entries()));
            fixed.setProperty("digest", origin.digest());
            Path originPart = folder.resolve(ORIGIN + ".part");
            try (BufferedWriter out = Files.newBufferedWriter(originPart, StandardCharsets.UTF_8)) {
                fixed.store(out, null);
            }
            Files.move(originPart, folder.resolve(ORIGIN), StandardCopyOption.REPLACE_EXISTING);
            return new Kept(origin.entries());
        } catch (IOException | UncheckedIOException e) {
            throw new DataFolder.Unavailable(
                    Message.of("store.read-only", folder.toAbsolutePath().toString()));
        }
    }

    /**
     * Makes the room of a backup in a data folder that has none yet.
     *
     * @throws Desk.Unopened when there is no backup, it does not hold together, or a room is there already
     */
    public static Kept restore(Path backup, DataFolder folder, Clocks clocks) {
        if (Store.exists(folder.record())) {
            throw new Desk.Unopened(Message.of("store.not-empty", folder.path().toString()));
        }
        requireBackup(backup);
        Store.keepEngineLogIn(folder.logs().resolve("engine.log"));
        Path unfinished = folder.record().resolveSibling("room.restoring");
        try {
            long entries = restore(backup, unfinished, clocks);
            Files.move(unfinished, folder.record());
            return new Kept(entries);
        } catch (StoreProblem e) {
            throw new Desk.Unopened(e.why());
        } catch (IOException | UncheckedIOException | DateTimeException e) {
            throw new Desk.Unopened(
                    Message.of("store.no-backup", backup.toAbsolutePath().toString()));
        } finally {
            Store.discard(unfinished);
        }
    }

    private static long restore(Path backup, Path unfinished, Clocks clocks) throws IOException {
        Properties fixed = new Properties();
        try (BufferedReader in = Files.newBufferedReader(backup.resolve(ORIGIN), StandardCharsets.UTF_8)) {
            fixed.load(in);
        }
        String zone = fixed.getProperty("zone", "UTC");
        LocalDate today = clocks.today(ZoneId.of(zone));
        Store.discard(unfinished);
        Store.create(unfinished, fixed.getProperty("code", "000"), zone);
        try (Store store = Store.open(unfinished);
                BufferedReader in = Files.newBufferedReader(backup.resolve(LINES), StandardCharsets.UTF_8)) {
            long entries = store.restore(() -> sealedLines(in, today), today);
            String written = fixed.getProperty("entries", "");
            if (!written.matches("\\d{1,18}") || entries < Long.parseLong(written)) {
                throw new Desk.Unopened(Message.of("store.backup-short", Long.toString(entries), written));
            }
            return entries;
        }
    }

    /**
     * Asks for a backup in the folder.
     *
     * @throws Desk.Unopened when there is none
     */
    public static void requireBackup(Path folder) {
        if (!Files.isRegularFile(folder.resolve(LINES)) || !Files.isRegularFile(folder.resolve(ORIGIN))) {
            throw new Desk.Unopened(
                    Message.of("store.no-backup", folder.toAbsolutePath().toString()));
        }
    }

    private static Iterator<SealedLine> sealedLines(BufferedReader in, LocalDate today) {
        return in.lines().map(line -> sealed(line, today)).iterator();
    }

    private static SealedLine sealed(String exported, LocalDate today) {
        if (Lines.read(exported, today) instanceof Lines.Understood understood
                && understood.seal().isPresent()) {
            Lines.Seal seal = understood.seal().get();
            return new SealedLine(seal.entry(), seal.recorded(), seal.digest(), Lines.recorded(exported));
        }
        throw new Desk.Unopened(Message.of("store.unread-line"));
    }

    private static void append(BufferedWriter out, String line) {
        try {
            out.write(line);
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
