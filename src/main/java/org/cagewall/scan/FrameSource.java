package org.cagewall.scan;

import java.awt.Image;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

/**
 * Where pictures come from, one after the other, so that who looks for a card need not know whether it is files or
 * anything else that sees. Used on the lane of frames alone.
 */
public interface FrameSource extends AutoCloseable {

    /** The next picture, or nothing when there will be no more. May wait for it. */
    Optional<Frame> next();

    @Override
    default void close() {}

    /** These files in their order, each read when its turn comes. */
    static FrameSource of(List<Path> files) {
        Iterator<Path> left = List.copyOf(files).iterator();
        return () -> left.hasNext() ? Optional.of(Pictures.read(left.next())) : Optional.empty();
    }

    /** One picture that is already in memory, such as one from the clipboard. */
    static FrameSource of(Image picture) {
        Iterator<Image> left = List.of(picture).iterator();
        return () -> left.hasNext() ? Optional.of(Pictures.of(left.next())) : Optional.empty();
    }
}
