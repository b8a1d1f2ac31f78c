package org.cagewall.plan;

import java.time.LocalDate;

/**
 * What the birdroom's nests will hold on a day. Immutable; any thread.
 *
 * @param eggs that lie in nests, clear ones among them
 * @param chicksInBox that have not left it
 * @param toRing of an age to be ringed, and too young for it when the owner left
 * @param toTakeAway that have come to feed themselves since the owner left
 */
public record DayAhead(LocalDate date, Range eggs, Range chicksInBox, Range toRing, Range toTakeAway) {}
