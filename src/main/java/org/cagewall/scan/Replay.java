package org.cagewall.scan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import java.util.stream.Stream;
import org.cagewall.text.Message;

/**
 * A folder of pictures in the place of a camera: they come by their names, at a steady rate, round and round, and each
 * goes on from where it was left. Lane of frames.
 */
public final class Replay implements Cameras.One {

    /** By this it is chosen in the settings. */
    public static final String ID = "folder";

    private final Path folder;
    private final long period;
    private final LongSupplier nanos;
    private int shown = -1;
    private long since;
    private Frame now = new Frame.Broken(Message.of("scan.nothing"));

    /**
     * @param framesPerSecond more than 0; below 1 each picture stays for seconds
     * @param nanos the machine's running time
     */
    public Replay(Path folder, double framesPerSecond, LongSupplier nanos) {
        if (!(framesPerSecond > 0)) {
            throw new IllegalArgumentException("no pictures come at " + framesPerSecond + " a second");
        }
        this.folder = folder;
        this.period = (long) (1_000_000_000 / framesPerSecond);
        this.nanos = nanos;
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Message name() {
        return Message.of("scan.camera.folder", String.valueOf(folder.getFileName()));
    }

    @Override
    public FrameSource open() {
        return this::next;
    }

    private Optional<Frame> next() {
        long moment = nanos.getAsLong();
        if (shown < 0 || moment - since >= period) {
            List<Path> files = files();
            if (files.isEmpty()) {
                return Optional.of(
                        new Frame.Broken(Message.of("scan.camera.folder-empty", String.valueOf(folder.getFileName()))));
            }
            shown = (shown + 1) % files.size();
            since = moment;
            now = Pictures.read(files.get(shown));
        }
        return Optional.of(now);
    }

    private List<Path> files() {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
