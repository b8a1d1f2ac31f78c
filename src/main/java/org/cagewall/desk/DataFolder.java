package org.cagewall.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.cagewall.files.OwnersFolder;
import org.cagewall.store.SameFile;
import org.cagewall.store.Store;
import org.cagewall.text.Message;

/**
 * The folder that holds one birdroom: its record, its log, its own sheets of cards and the kiosk's settings. Whoever
 * opens it keeps its lock until it is closed. Bound to no thread.
 */
public final class DataFolder implements AutoCloseable {

    private static final String ROOM = "room";
    private static final String LOG = "log";

    private final Path folder;
    private final Hold hold;
    private final List<Path> tightened;

    private DataFolder(Path folder, Hold hold, List<Path> tightened) {
        this.folder = folder;
        this.hold = hold;
        this.tightened = List.copyOf(tightened);
    }

    /**
     * Whether there is a birdroom in the folder. Creates nothing.
     *
     * @throws Unavailable when that cannot be told, as in a folder that is another's, or there can be none
     */
    public static boolean holdsARoom(Path folder) {
        requireUsableName(folder);
        if (!Store.canBeTold(record(folder))) {
            throw new Unavailable(
                    Message.of("store.no-entry", folder.toAbsolutePath().toString()));
        }
        return Store.exists(record(folder));
    }

    /**
     * Makes the folder where it is missing, readable by its owner alone, and locks it.
     *
     * @throws Unavailable when it cannot be written to, is open elsewhere, or has a name that the record cannot bear
     */
    public static DataFolder open(Path folder) {
        requireUsableName(folder);
        Path absolute = folder.toAbsolutePath().normalize();
        try {
            List<Path> tightened = new ArrayList<>();
            for (Path each : List.of(absolute, absolute.resolve(LOG))) {
                if (OwnersFolder.make(each, each.equals(absolute) ? ROOM : ".")) {
                    tightened.add(each);
                }
            }
            return new DataFolder(absolute, Hold.on(absolute), tightened);
        } catch (IOException e) {
            throw new Unavailable(Message.of("store.read-only", absolute.toString()));
        }
    }

    private static void requireUsableName(Path folder) {
        if (!Store.canLieAt(record(folder))) {
            throw new Unavailable(
                    Message.of("store.colon", folder.toAbsolutePath().toString()));
        }
    }

    /**
     * Asks for the folder that was opened: it may have been deleted, or have gone with the disk that it is on.
     *
     * @throws Unavailable when it is not at its place any more
     */
    void requireInPlace() {
        SameFile.missing(hold.files()).ifPresent(why -> {
            throw new Unavailable(why);
        });
    }

    /** Asks the kiosk that has the folder open to come forward. */
    public static void callForward(Path folder) {
        try {
            Files.writeString(callFile(folder), "", StandardOpenOption.CREATE);
        } catch (IOException e) {
            throw new Unavailable(Message.of("store.read-only", folder.toString()));
        }
    }

    /** What others could look into until it was opened, for the log, which cannot be kept before. */
    void tellWhatWasTightened() {
        tightened.forEach(OwnersFolder::tell);
    }

    public Path path() {
        return folder;
    }

    public Path record() {
        return record(folder);
    }

    public Path logs() {
        return folder.resolve(LOG);
    }

    /** Sheets of cards of the keeper's own; they win over those that come with the program. */
    public Path labels() {
        return folder.resolve("labels");
    }

    /** Where the record is backed up before it gets a new schema. */
    Path backupBeforeUpdate() {
        return folder.resolve("backup-before-update-to-" + Store.schema());
    }

    /** How many bytes may still be written on the disk that holds the folder; nothing where the system does not say. */
    OptionalLong free() {
        try {
            return OptionalLong.of(Files.getFileStore(folder).getUsableSpace());
        } catch (IOException e) {
            return OptionalLong.empty();
        }
    }

    public Path kioskProperties() {
        return folder.resolve("kiosk.properties");
    }

    /** Whether somebody has asked this kiosk to come forward since the last time. */
    public boolean isCalledForward() {
        try {
            return Files.deleteIfExists(callFile(folder));
        } catch (IOException e) {
            return false;
        }
    }

    @Override
    public void close() {
        try {
            hold.end();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Path record(Path folder) {
        return folder.resolve(ROOM);
    }

    private static Path callFile(Path folder) {
        return folder.resolve("forward");
    }

    /** The lock on a folder, and the files by which the folder is known again. */
    private record Hold(FileChannel channel, FileLock lock, List<SameFile> files) {

        static Hold on(Path folder) throws IOException {
            Path file = folder.resolve("lock");
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            try {
                FileLock lock = tryLock(channel);
                if (lock == null) {
                    throw new Unavailable(Message.of("store.open-elsewhere", folder.toString()));
                }
                return new Hold(channel, lock, List.of(SameFile.at(folder), SameFile.at(file)));
            } catch (IOException | Unavailable e) {
                channel.close();
                throw e;
            }
        }

        private static FileLock tryLock(FileChannel channel) throws IOException {
            try {
                return channel.tryLock();
            } catch (OverlappingFileLockException e) {
                return null;
            }
        }

        void end() throws IOException {
            try (channel) {
                lock.release();
            }
        }
    }

    /** The folder cannot be used, and why. */
    public static final class Unavailable extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final transient Message why;

        Unavailable(Message why) {
            super(why.key());
            this.why = why;
        }

        public Message why() {
            return why;
        }
    }
}
