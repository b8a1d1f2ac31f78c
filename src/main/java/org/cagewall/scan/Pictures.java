package org.cagewall.scan;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import org.cagewall.text.Message;

/**
 * Reads a picture file whatever is in it: what is none, broken off or far too large gets a sentence and never stops the
 * program. Stateless; any thread but the event thread.
 */
public final class Pictures {

    /** Few cameras make more, and no card needs it; a file that claims more is refused before it takes the memory. */
    static final long MOST_PIXELS = 64_000_000;

    /** Larger pictures are read with every second or third pixel: a symbol still has more than a decoder needs. */
    private static final long USUAL_PIXELS = 12_000_000;

    private static final long MOST_BYTES = 64 * 1024 * 1024;

    private Pictures() {}

    /** The picture in a file; what it is called does not matter. */
    public static Frame read(Path file) {
        String name = String.valueOf(file.getFileName());
        if (!Files.exists(file)) {
            return broken("no-file", name);
        }
        if (Files.isDirectory(file)) {
            return broken("folder", name);
        }
        try {
            if (Files.size(file) > MOST_BYTES) {
                return broken("too-large", name);
            }
            return read(name, Files.readAllBytes(file));
        } catch (IOException e) {
            return broken("not-open", name);
        }
    }

    /**
     * The picture in these bytes of a file.
     *
     * @param name what the picture is called in a sentence
     */
    public static Frame read(String name, byte[] bytes) {
        if (bytes.length == 0) {
            return broken("empty", name);
        }
        try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            return readers.hasNext() ? read(name, in, readers.next()) : broken("no-picture", name);
        } catch (IOException | RuntimeException e) {
            return broken("cut-short", name);
        }
    }

    /** A picture that is already in memory, such as a pasted one. */
    public static Frame of(BufferedImage image) {
        return (long) image.getWidth() * image.getHeight() > MOST_PIXELS
                ? new Frame.Broken(Message.of("scan.picture.pasted-too-large"))
                : new Frame.Picture(Luma.of(image));
    }

    private static Frame read(String name, ImageInputStream in, ImageReader reader) throws IOException {
        try {
            reader.setInput(in, true, true);
            long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
            if (pixels > MOST_PIXELS) {
                return broken("too-large", name);
            }
            ImageReadParam reading = reader.getDefaultReadParam();
            int step = (int) Math.ceil(Math.sqrt((double) pixels / USUAL_PIXELS));
            if (step > 1) {
                reading.setSourceSubsampling(step, step, 0, 0);
            }
            return new Frame.Picture(Luma.of(reader.read(0, reading)));
        } finally {
            reader.dispose();
        }
    }

    private static Frame broken(String why, String name) {
        return new Frame.Broken(Message.of("scan.picture." + why, name));
    }
}
