package org.cagewall.cards;

import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.room.card.CardFace;

/**
 * One card to be printed. Immutable; any thread.
 *
 * @param face what it shows
 * @param code what its symbol says
 * @param birds how many birds the cage held on the day of the print, which the face of a flight says with its date; it
 *     is no part of the card's facts, or each bird that comes would make the card old
 */
public record CardToPrint(CardFace face, CardCode code, int birds) {

    /** The card of a cage as it would be printed now. */
    public static CardToPrint of(Room room, Cage cage) {
        return new CardToPrint(
                CardFaces.of(room, cage),
                CardFaces.code(room, cage),
                room.birdsIn(cage).size() + cage.flock());
    }
}
