package org.cagewall.scan;

import org.cagewall.text.Message;

/** What a source of pictures gives: a picture, or the reason why there is none. Immutable; any thread. */
public sealed interface Frame permits Frame.Picture, Frame.Broken {

    /** What a decoder makes of it. */
    Decoding decodedBy(Decoder decoder);

    /** A picture to look for a symbol in. */
    record Picture(Luma luma) implements Frame {

        @Override
        public Decoding decodedBy(Decoder decoder) {
            return decoder.decode(luma);
        }
    }

    /** No picture, and why. */
    record Broken(Message why) implements Frame {

        @Override
        public Decoding decodedBy(Decoder decoder) {
            return new Decoding.Unreadable(why);
        }
    }
}
