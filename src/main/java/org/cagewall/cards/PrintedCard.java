package org.cagewall.cards;

import org.cagewall.room.Cage;
import org.cagewall.room.CardCode;
import org.cagewall.room.CardFace;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;

/**
 * One card to be printed. Immutable; any thread.
 *
 * @param face what it shows
 * @param code what its symbol says
 * @param birds how many birds the cage held on the day of the print, which the face of a flight says with its date; it
 *     is no part of the card's facts, or each bird that comes would make the card old
 */
public record PrintedCard(CardFace face, CardCode code, int birds) {

    /** The card of a cage as it would be printed now. */
    public static PrintedCard of(Room room, Cage cage) {
        return new PrintedCard(
                CardFaces.of(room, cage),
                CardFaces.code(room, cage),
                room.birdsIn(cage).size() + cage.flock());
    }
}
