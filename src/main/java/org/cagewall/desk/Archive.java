package org.cagewall.desk;

import java.io.BufferedInputStream;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Iterator;
import java.util.Optional;
import java.util.Properties;
import java.util.regex.Pattern;
import org.cagewall.deed.Lines;
import org.cagewall.files.InputLine;
import org.cagewall.files.InputLines;
import org.cagewall.files.OwnersFolder;
import org.cagewall.store.Endings;
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
    private static final String UNFINISHED = "room.restoring";

    private Archive() {}

    /** What a backup holds. */
    public record Kept(long entries) {}

    /** Hears how far a restore has come. */
    @FunctionalInterface
    public interface Progress {
        void back(long entries, long ofAll);
    }

    /**
     * Writes a backup into the folder; an older one there is replaced only when the new one is whole.
     *
     * @throws DataFolder.Unavailable when the folder cannot be written to
     */
    public static Kept write(Book book, Path folder) {
        try {
            OwnersFolder.makeKnown(folder, LINES);
            Store.Origin origin = book.origin();
            Path part = folder.resolve(LINES + ".part");
            try (BufferedWriter out = Files.newBufferedWriter(part, StandardCharsets.UTF_8)) {
                OwnersFolder.close(part);
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
                OwnersFolder.close(originPart);
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
     * @param progress hears after each entry how many are back, and how many the backup speaks of
     * @throws Desk.Unopened when there is no backup, it does not hold together, or a room is there already
     */
    public static Kept restore(Path backup, DataFolder folder, Clocks clocks, Progress progress) {
        if (DataFolder.holdsARoom(folder.path())) {
            throw new Desk.Unopened(Message.of("store.not-empty", folder.path().toString()));
        }
        requireBackup(backup);
        Store.keepEngineLogIn(folder.logs().resolve("engine.log"));
        clearAway(folder);
        Path unfinished = unfinished(folder);
        try {
            long entries = restore(backup, unfinished, clocks, progress);
            Files.move(unfinished, folder.record());
            return new Kept(entries);
        } catch (RuntimeException | IOException e) {
            Endings.after(e, () -> clearAway(folder));
            throw notRestored(backup, e);
        }
    }

    private static Desk.Unopened notRestored(Path backup, Exception broken) {
        if (broken instanceof Desk.Unopened unopened) {
            return unopened;
        }
        new Failures().keep("restore", broken);
        return new Desk.Unopened(
                broken instanceof StoreProblem problem
                        ? problem.why()
                        : Message.of("store.no-backup", backup.toAbsolutePath().toString()));
    }

    /** Takes away what a restore that was killed has left; whoever has the folder may do so. */
    static void clearAway(DataFolder folder) {
        Store.discard(unfinished(folder));
        Store.discard(unfinished(folder).resolveSibling(UNFINISHED + ".new"));
    }

    private static Path unfinished(DataFolder folder) {
        return folder.record().resolveSibling(UNFINISHED);
    }

    private static long restore(Path backup, Path unfinished, Clocks clocks, Progress progress) throws IOException {
        Origin origin = Origin.read(backup);
        LocalDate today = clocks.today(origin.zone());
        Store.create(unfinished, origin.code(), origin.zone().getId());
        try (Store store = Store.open(unfinished);
                InputStream in = new BufferedInputStream(Files.newInputStream(backup.resolve(LINES)))) {
            KeptLines lines = new KeptLines(new InputLines(in, InputLines.MOST_BYTES_KEPT), origin, today);
            long entries = store.restore(() -> lines, today, back -> progress.back(back, origin.entries()));
            if (entries < origin.entries()) {
                throw new Desk.Unopened(
                        Message.of("store.backup-short", Long.toString(entries), Long.toString(origin.entries())));
            }
            return entries;
        }
    }

    /**
     * What the small file of a backup says: what was fixed when the room was made, and how far its record went. Where the
     * writing of a newer backup was cut short, the lines go further than that; they still go through it.
     */
    private record Origin(String code, ZoneId zone, long entries, String digest) {

        private static final Pattern CODE = Pattern.compile("[0-9A-Z]{3}");
        private static final Pattern NUMBER = Pattern.compile("\\d{1,18}");
        private static final long MOST_BYTES = 64 * 1024;

        static Origin read(Path backup) throws IOException {
            Path file = backup.resolve(ORIGIN);
            if (Files.size(file) > MOST_BYTES) {
                throw odd(backup);
            }
            Properties fixed = new Properties();
            try (BufferedReader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                fixed.load(in);
                String code = fixed.getProperty("code", "");
                String entries = fixed.getProperty("entries", "");
                if (!CODE.matcher(code).matches() || !NUMBER.matcher(entries).matches()) {
                    throw odd(backup);
                }
                return new Origin(
                        code,
                        ZoneId.of(fixed.getProperty("zone", "")),
                        Long.parseLong(entries),
                        fixed.getProperty("digest", ""));
            } catch (IllegalArgumentException | DateTimeException | CharacterCodingException e) {
                throw odd(backup);
            }
        }

        /** Whether an entry is what the small file says of the last one, or is none of its business. */
        boolean fits(SealedLine line) {
            return line.entry() != entries || line.digest().equals(digest);
        }

        private static Desk.Unopened odd(Path backup) {
            return new Desk.Unopened(
                    Message.of("store.backup-odd", backup.toAbsolutePath().toString()));
        }
    }

    /** The lines of a backup, each read when its turn has come. */
    private static final class KeptLines implements Iterator<SealedLine> {

        private final InputLines lines;
        private final Origin origin;
        private final LocalDate today;
        private Optional<InputLine> next;

        KeptLines(InputLines lines, Origin origin, LocalDate today) throws IOException {
            this.lines = lines;
            this.origin = origin;
            this.today = today;
            this.next = lines.next();
        }

        @Override
        public boolean hasNext() {
            return next.isPresent();
        }

        @Override
        public SealedLine next() {
            SealedLine line = sealed(next.orElseThrow());
            if (!origin.fits(line)) {
                throw new Desk.Unopened(Message.of("store.broken-line", line.entry()));
            }
            try {
                next = lines.next();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return line;
        }

        private SealedLine sealed(InputLine exported) {
            if (exported instanceof InputLine.Text text
                    && Lines.read(text.text(), today) instanceof Lines.Understood understood
                    && understood.seal().isPresent()) {
                Lines.Seal seal = understood.seal().get();
                return new SealedLine(seal.entry(), seal.recorded(), seal.digest(), Lines.recorded(text.text()));
            }
            throw new Desk.Unopened(Message.of("store.unread-line", exported.number()));
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

    private static void append(BufferedWriter out, String line) {
        try {
            out.write(line);
            out.write('\n');
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
