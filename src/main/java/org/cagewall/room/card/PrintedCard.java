package org.cagewall.room.card;

import java.time.LocalDate;

/**
 * The card that hangs on a cage: the face it shows, by print or by pencil, since when. Immutable; any thread.
 *
 * @param digest the face digest in the symbol of the paper card, which a pencil does not change
 * @param revision counted from 1 for each cage
 */
public record PrintedCard(CardFace face, String digest, int revision, LocalDate day) {}
