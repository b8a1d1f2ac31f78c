package org.cagewall.cards;

import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.card.CardFace;
import org.cagewall.text.Message;

/** Which face cards get: each by its cage's use, or all the same one. Immutable; any thread. */
public enum FaceChoice {
    BY_USE,
    PLAIN,
    LARGE,
    FLIGHT;

    public Face of(CardFace card) {
        return switch (this) {
            case BY_USE -> Face.byUse(card);
            case PLAIN -> Face.PLAIN;
            case LARGE -> Face.LARGE;
            case FLIGHT -> Face.FLIGHT;
        };
    }

    /** The name by which commands, settings and sentences know it, such as {@code by-use}. */
    public String word() {
        return Message.word(this);
    }

    public static Optional<FaceChoice> named(String word) {
        return Stream.of(values()).filter(each -> each.word().equals(word)).findFirst();
    }
}
