package org.cagewall.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Folders and files that their owner alone may look into, since a record holds phone numbers and says when nobody is at
 * home. Where the file system knows no such rights they are left as they are. Stateless; any thread but the event thread.
 */
public final class OwnersFolder {

    private static final Logger LOG = LoggerFactory.getLogger(OwnersFolder.class);

    private static final Set<PosixFilePermission> OWNERS = Set.copyOf(PosixFilePermissions.fromString("rwx------"));

    private OwnersFolder() {}

    /**
     * Makes the folder, and those above it that are missing, so that at no moment anybody else may look into it. One that
     * is there is tightened, but only if it is empty or our own, since others may need what else lies in it.
     *
     * @param mark the name by which a folder of our own is known
     * @return whether one that is there was tightened
     */
    public static boolean make(Path folder, String mark) throws IOException {
        if (!Files.isDirectory(folder)) {
            create(folder);
            return false;
        }
        boolean isOurs = Files.exists(folder.resolve(mark)) || isEmpty(folder);
        return isOurs && close(folder);
    }

    /** The same, with a word in the log. */
    public static void makeKnown(Path folder, String mark) throws IOException {
        if (make(folder, mark)) {
            tell(folder);
        }
    }

    /** Says in the log that a folder was tightened. */
    public static void tell(Path folder) {
        LOG.info("others may no longer look into {}", folder);
    }

    private static void create(Path folder) throws IOException {
        boolean hasRights = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (hasRights) {
            Files.createDirectories(folder, PosixFilePermissions.asFileAttribute(OWNERS));
        } else {
            Files.createDirectories(folder);
        }
    }

    /**
     * Takes away what others may do with a file or folder.
     *
     * @return whether there was anything to take away
     */
    public static boolean close(Path path) throws IOException {
        PosixFileAttributeView view =
                Files.getFileAttributeView(path, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
        if (view == null) {
            return false;
        }
        Set<PosixFilePermission> held = view.readAttributes().permissions();
        EnumSet<PosixFilePermission> kept = EnumSet.noneOf(PosixFilePermission.class);
        kept.addAll(held);
        kept.retainAll(OWNERS);
        if (kept.equals(held)) {
            return false;
        }
        view.setPermissions(kept);
        return true;
    }

    private static boolean isEmpty(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findAny().isEmpty();
        }
    }
}
