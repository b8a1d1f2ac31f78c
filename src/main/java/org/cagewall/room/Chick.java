package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What became of an egg that hatched. Immutable; any thread.
 *
 * @param about whether the day it hatched is the keeper's guess
 * @param trips the days it left the box and was put back, in order
 */
public record Chick(
        LocalDate hatched,
        boolean about,
        Optional<ChickRing> ring,
        List<BoxTrip> trips,
        List<ChickTrait> traits,
        Optional<ChickLoss> lost,
        Optional<Weaning> weaned) {

    public Chick {
        trips = List.copyOf(trips);
        traits = List.copyOf(traits);
    }

    /** Whether it is still in the care of a nest: alive, not missing, not weaned. */
    public boolean isInCare() {
        return lost.isEmpty() && weaned.isEmpty();
    }

    /** The day on which it left the box and was not put back since. */
    public Optional<LocalDate> outOfBox() {
        return trips.isEmpty() || !trips.get(trips.size() - 1).out()
                ? Optional.empty()
                : Optional.of(trips.get(trips.size() - 1).day());
    }

    public Optional<String> ringWorn() {
        return ring.map(ChickRing::ring);
    }
}
