package org.cagewall.scan;

import java.awt.Graphics2D;
import java.awt.Image;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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

    private static final int MOST_BYTES = 64 * 1024 * 1024;

    /** What cameras, telephones and scanners write. */
    private static final Set<String> KINDS = Set.of("PNG", "JPEG", "GIF", "BMP");

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
        if (!Files.isRegularFile(file)) {
            return broken("no-picture", name);
        }
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            return bytes.length > MOST_BYTES ? broken("too-large", name) : read(name, bytes);
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
            Optional<ImageReader> reader = reader(in);
            return reader.isPresent() ? read(name, in, reader.get()) : broken("no-picture", name);
        } catch (IOException | RuntimeException e) {
            return broken("cut-short", name);
        }
    }

    /** A picture that is already in memory, such as a pasted one; one that is too large is not even copied. */
    public static Frame of(Image image) {
        int width = Math.max(1, image.getWidth(null));
        int height = Math.max(1, image.getHeight(null));
        return (long) width * height > MOST_PIXELS
                ? new Frame.Broken(Message.of("scan.picture.pasted-too-large"))
                : new Frame.Picture(Luma.of(drawn(image, width, height)));
    }

    private static BufferedImage drawn(Image image, int width, int height) {
        if (image instanceof BufferedImage already) {
            return already;
        }
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = copy.createGraphics();
        brush.drawImage(image, 0, 0, null);
        brush.dispose();
        return copy;
    }

    /** Java reads more kinds, of which nobody has a use here and a stranger's file may make a bad one. */
    private static Optional<ImageReader> reader(ImageInputStream in) throws IOException {
        Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
        while (readers.hasNext()) {
            ImageReader reader = readers.next();
            if (KINDS.contains(reader.getFormatName().toUpperCase(Locale.ROOT))) {
                return Optional.of(reader);
            }
            reader.dispose();
        }
        return Optional.empty();
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
