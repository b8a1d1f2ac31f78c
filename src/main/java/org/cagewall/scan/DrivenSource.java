package org.cagewall.scan;

import com.github.sarxos.webcam.WebcamDevice;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import org.cagewall.text.Message;

/**
 * What one camera sees, and why it sees nothing: in use elsewhere, denied, unplugged, covered. After a reason that does
 * not pass by itself there are no more pictures. Lane of frames.
 */
final class DrivenSource implements FrameSource {

    /** More pixels cost time for each picture; with fewer the symbol of a card at arm's length has too few. */
    private static final int LONGEST_SIDE = 1920;

    private static final Comparator<Dimension> BY_SIZE =
            Comparator.comparingLong(size -> (long) size.width * size.height);

    private final WebcamDevice device;
    private final BooleanSupplier denied;
    private final BooleanSupplier there;
    private final LongSupplier nanos;
    private final Liveliness liveliness = new Liveliness();
    private State state = State.NEW;

    private enum State {
        NEW,
        OPEN,
        OVER
    }

    DrivenSource(WebcamDevice device, BooleanSupplier denied, BooleanSupplier there, LongSupplier nanos) {
        this.device = device;
        this.denied = denied;
        this.there = there;
        this.nanos = nanos;
    }

    @Override
    public Optional<Frame> next() {
        if (state == State.NEW) {
            state = open() ? State.OPEN : State.OVER;
            if (state == State.OVER) {
                return broken(denied.getAsBoolean() ? "denied" : "busy");
            }
        }
        return state == State.OPEN ? Optional.of(seen()) : Optional.empty();
    }

    @Override
    public void close() {
        state = State.OVER;
        try {
            device.close();
        } catch (RuntimeException e) {
            // It is gone, which is what was wanted.
        }
    }

    private boolean open() {
        try {
            size(device.getResolutions()).ifPresent(device::setResolution);
            device.open();
            return device.isOpen();
        } catch (RuntimeException e) {
            return false;
        }
    }

    /** The largest that is not too large; else the smallest. */
    private static Optional<Dimension> size(Dimension[] sizes) {
        return Arrays.stream(sizes)
                .filter(size -> Math.max(size.width, size.height) <= LONGEST_SIDE)
                .max(BY_SIZE)
                .or(() -> Arrays.stream(sizes).min(BY_SIZE));
    }

    private Frame seen() {
        Optional<BufferedImage> image = image();
        if (image.isEmpty()) {
            return gone();
        }
        Luma luma = Luma.of(image.get());
        return switch (liveliness.of(luma, nanos.getAsLong())) {
            case SEES -> new Frame.Picture(luma);
            case BLACK -> new Frame.Broken(sentence("black"));
            case FROZEN -> gone();
        };
    }

    private Optional<BufferedImage> image() {
        try {
            return Optional.ofNullable(device.getImage());
        } catch (RuntimeException e) {
            return Optional.empty();
        }
    }

    /** A camera that is unplugged goes on giving its last picture; whether it is there the driver says anew. */
    private Frame gone() {
        close();
        return new Frame.Broken(sentence(there.getAsBoolean() ? "frozen" : "unplugged"));
    }

    private static Optional<Frame> broken(String why) {
        return Optional.of(new Frame.Broken(sentence(why)));
    }

    private static Message sentence(String what) {
        return DrivenCameras.sentence(what);
    }
}
