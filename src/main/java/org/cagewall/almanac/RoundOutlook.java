package org.cagewall.almanac;

import java.util.Optional;
import org.cagewall.room.SatFrom;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;

/**
 * One round of the cage's pair; several may be under way. Immutable; any thread.
 *
 * @param start from when she sits, as eggs are reckoned by it; the day may still be foreseen
 * @param sitting when she is looked for on the eggs: from the first egg with which a hen may begin to the last
 * @param nextEgg empty when no more is expected
 * @param nextRound the first egg of the round that follows; empty where none is expected
 */
public record RoundOutlook(
        Pair pair,
        Round round,
        Optional<SatFrom> start,
        Optional<Due> sitting,
        Optional<NextEgg> nextEgg,
        Optional<Due> nextRound) {}
