package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.text.Message;

/**
 * All that there is to look through: what is plugged in, and what stands in for a camera. Nothing of a driver is loaded
 * before it is asked. Used on the lane of frames alone.
 */
public interface Cameras {

    /** What can be looked through now. The first time it may take half a second; each time it is found anew. */
    Found find();

    /** A machine without any. */
    static Cameras none() {
        return () -> new Found(List.of(), Optional.of(Message.of("scan.camera.none")));
    }

    /** The cameras that are plugged into this machine, by its own driver. */
    static Cameras ofThisMachine() {
        return new PluggedIn();
    }

    /** These, and one more after them. */
    default Cameras and(One more) {
        return () -> {
            Found found = find();
            return new Found(
                    Stream.concat(found.all().stream(), Stream.of(more)).toList(), found.trouble());
        };
    }

    /**
     * What was found.
     *
     * @param trouble why no camera that is plugged in is among them, and what to do about it
     */
    record Found(List<One> all, Optional<Message> trouble) {

        public Found {
            all = List.copyOf(all);
        }

        /** The one that is wanted; else the first. */
        Optional<One> choose(String wanted) {
            return all.stream()
                    .filter(each -> each.id().equals(wanted))
                    .findFirst()
                    .or(() -> all.stream().findFirst());
        }
    }

    /** One of them. */
    interface One {

        /** The same for the same camera, whenever it is plugged in. */
        String id();

        Message name();

        /** Begins to look. One that cannot gives no picture, but the reason; none makes light or sound. */
        FrameSource open();
    }
}
