package org.cagewall.cards;

import org.cagewall.room.CardCode;
import org.cagewall.room.CardFace;

/**
 * One card to be printed. Immutable; any thread.
 *
 * @param face what it shows
 * @param code what its symbol says
 */
public record PrintedCard(CardFace face, CardCode code) {}
