package org.cagewall.cards;

import java.util.List;
import org.cagewall.room.card.CardFace;

/** How a card is laid out. What it says, and so its digest, is the same on each. Immutable; any thread. */
public enum Face {
    /** Name, pair, round and rings, with the symbol twice where there is room. */
    PLAIN,
    /** Name and rings as large as they go, for old eyes and from across the room. */
    LARGE,
    /** Whom it holds, how many by word, and lines to count on with a pencil. */
    FLIGHT;

    private static final List<String> FLOCKS = List.of("flight", "nursery");

    /** The face that suits what the cage is for. */
    static Face byUse(CardFace card) {
        return FLOCKS.contains(card.use()) && card.pair().isEmpty() ? FLIGHT : PLAIN;
    }
}
