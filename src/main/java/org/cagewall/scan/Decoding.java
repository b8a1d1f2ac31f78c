package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import org.cagewall.text.Message;

/** What came of looking for a symbol in a picture. Immutable; any thread. */
public sealed interface Decoding permits Decoding.Found, Decoding.Nothing, Decoding.Unreadable {

    /** What the symbol says. */
    default Optional<String> text() {
        return Optional.empty();
    }

    /** Why nothing was found. */
    default Optional<Message> reason() {
        return Optional.empty();
    }

    /** That something else was in view too. */
    default Optional<Message> besides() {
        return Optional.empty();
    }

    /**
     * A symbol, whatever it says.
     *
     * @param nearest the one nearest the middle of the picture
     * @param others what the others say
     */
    record Found(Sighting nearest, List<String> others) implements Decoding {

        public Found {
            others = List.copyOf(others);
        }

        @Override
        public Optional<String> text() {
            return Optional.of(nearest.text());
        }

        @Override
        public Optional<Message> besides() {
            return others.isEmpty() ? Optional.empty() : Optional.of(Message.of("scan.others", others.size()));
        }

        Found scaled(double times) {
            return new Found(nearest.scaled(times), others);
        }

        Found moved(double right, double down) {
            return new Found(nearest.moved(right, down), others);
        }
    }

    /** A picture in which no symbol was found. */
    record Nothing() implements Decoding {

        @Override
        public Optional<Message> reason() {
            return Optional.of(Message.of("scan.nothing"));
        }
    }

    /** No picture at all. */
    record Unreadable(Message why) implements Decoding {

        @Override
        public Optional<Message> reason() {
            return Optional.of(why);
        }
    }
}
