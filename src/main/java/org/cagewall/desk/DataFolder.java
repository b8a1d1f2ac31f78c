package org.cagewall.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import org.cagewall.store.SameFile;
import org.cagewall.store.Store;
import org.cagewall.text.Message;

/**
 * The folder that holds one birdroom: its record, its log, its own sheets of cards and the kiosk's settings. Whoever
 * opens it keeps its lock until it is closed. Bound to no thread.
 */
public final class DataFolder implements AutoCloseable {

    private final Path folder;
    private final Hold hold;

    private DataFolder(Path folder, Hold hold) {
        this.folder = folder;
        this.hold = hold;
    }

    /** Whether there is a birdroom in the folder. Creates nothing. */
    public static boolean holdsARoom(Path folder) {
        return Store.exists(record(folder));
    }

    /**
     * Makes the folder where it is missing, readable by its owner alone, and locks it.
     *
     * @throws Unavailable when it cannot be written to or is open elsewhere
     */
    public static DataFolder open(Path folder) {
        Path absolute = folder.toAbsolutePath().normalize();
        try {
            make(absolute);
            Files.createDirectories(absolute.resolve("log"));
            return new DataFolder(absolute, Hold.on(absolute));
        } catch (IOException e) {
            throw new Unavailable(Message.of("store.read-only", absolute.toString()));
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

    private static void make(Path folder) throws IOException {
        if (Files.isDirectory(folder)) {
            return;
        }
        Files.createDirectories(folder);
        PosixFileAttributeView view =
                Files.getFileAttributeView(folder, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString("rwx------"));
        }
    }

    public Path path() {
        return folder;
    }

    public Path record() {
        return record(folder);
    }

    public Path logs() {
        return folder.resolve("log");
    }

    /** Sheets of cards of the keeper's own; they win over those that come with the program. */
    public Path labels() {
        return folder.resolve("labels");
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
        return folder.resolve("room");
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
