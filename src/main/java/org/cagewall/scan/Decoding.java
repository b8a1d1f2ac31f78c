package org.cagewall.scan;

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

    /** A symbol, and what it says, whatever that is. */
    record Found(String said) implements Decoding {

        @Override
        public Optional<String> text() {
            return Optional.of(said);
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
