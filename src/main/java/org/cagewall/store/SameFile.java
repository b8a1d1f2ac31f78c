package org.cagewall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.List;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * A file or folder as it was met at its path. A file that was deleted stays open and takes whatever is written to it, so
 * only its path tells whether anything is kept. Immutable; any thread.
 *
 * @param key what the file system calls it by; where it has no such name, the moment it was made
 */
public record SameFile(Path path, Object key) {

    public static SameFile at(Path path) throws IOException {
        return new SameFile(path, keyOf(path));
    }

    public boolean isStillThere() {
        try {
            return keyOf(path).equals(key);
        } catch (IOException e) {
            return false;
        }
    }

    /** Why what is written to these files is not kept: one is gone, or another lies in its place. */
    public static Optional<Message> missing(List<SameFile> files) {
        return files.stream()
                .filter(file -> !file.isStillThere())
                .findFirst()
                .map(file -> Message.of(
                        Files.exists(file.path()) ? "store.other" : "store.gone",
                        file.path().toString()));
    }

    private static Object keyOf(Path path) throws IOException {
        BasicFileAttributes attributes = Files.readAttributes(path, BasicFileAttributes.class);
        return attributes.fileKey() == null ? attributes.creationTime() : attributes.fileKey();
    }
}
