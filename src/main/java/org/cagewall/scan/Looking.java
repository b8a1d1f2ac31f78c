package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.cagewall.text.Message;

/**
 * Looks through one camera after the other for cards that newly come into view, a picture at a time. Made anywhere,
 * used on the lane of frames alone.
 */
public final class Looking {

    /** What a view on the screen needs. */
    private static final int SHOWN_SIDE = 960;

    private final Cameras cameras;
    private final LongSupplier nanos;
    private Watch watch;
    private Optional<FrameSource> source = Optional.empty();

    /** @param nanos the machine's running time */
    public Looking(Cameras cameras, LongSupplier nanos) {
        this.cameras = cameras;
        this.nanos = nanos;
        this.watch = new Watch(nanos);
    }

    /** A camera that can be chosen. */
    public record Choice(String id, Message name) {}

    /**
     * What there is to choose from.
     *
     * @param chosen the one that is looked through now; empty when there is none
     * @param trouble why there is none
     */
    public record Begun(List<Choice> all, Optional<String> chosen, Optional<Message> trouble) {}

    /**
     * A code that has just come into view.
     *
     * @param besides that others are in view too, and which one was read
     */
    public record Read(String text, Optional<Message> besides) {}

    /** What came of one look. */
    public sealed interface Glance {

        /** A picture, the code that has just come into view, and whether one was in view a moment ago. */
        record Saw(Luma picture, Optional<Read> read, Watch.Sight sight) implements Glance {}

        /** No picture just now, and why; the next one may be better. */
        record Blind(Message why) implements Glance {}

        /** There will be no more pictures. */
        record Over() implements Glance {}
    }

    /** Finds the cameras and begins to look through the wanted one, else the first. */
    public Begun begin(String wanted) {
        close();
        watch = new Watch(nanos);
        Cameras.Found found = cameras.find();
        Optional<Cameras.One> chosen = found.choose(wanted);
        source = chosen.map(Cameras.One::open);
        return new Begun(
                found.all().stream()
                        .map(each -> new Choice(each.id(), each.name()))
                        .toList(),
                chosen.map(Cameras.One::id),
                found.trouble());
    }

    /** Takes the next picture and looks for a card in it. */
    public Glance look() {
        Optional<Frame> next = source.flatMap(FrameSource::next);
        if (next.isEmpty()) {
            return new Glance.Over();
        }
        if (next.get() instanceof Frame.Picture picture) {
            Optional<Read> read = watch.see(picture.luma())
                    .flatMap(found -> found.text().map(text -> new Read(text, found.besides())));
            return new Glance.Saw(picture.luma().atMost(SHOWN_SIDE), read, watch.sight());
        }
        return new Glance.Blind(((Frame.Broken) next.get()).why());
    }

    /** Lets go of the camera. */
    public void close() {
        source.ifPresent(FrameSource::close);
        source = Optional.empty();
    }
}
