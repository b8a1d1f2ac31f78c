package org.cagewall.room.nest;

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

    /** From this age on, in days, the cock can rear it without the hen; common practice, no source. */
    public static final int COCK_REARS_FROM_DAYS = 21;

    public Chick {
        trips = List.copyOf(trips);
        traits = List.copyOf(traits);
    }

    /** The chick before that day. */
    Chick before(LocalDate day) {
        return new Chick(
                hatched,
                about,
                ring.filter(worn -> worn.day().isBefore(day))
                        .map(worn ->
                                new ChickRing(worn.ring(), worn.day(), worn.about(), Days.before(worn.checked(), day))),
                trips.stream().filter(trip -> trip.day().isBefore(day)).toList(),
                traits,
                lost.filter(loss -> loss.day().isBefore(day)),
                weaned.filter(weaning -> weaning.day().isBefore(day)));
    }

    /** Whether it is still in the care of a nest: alive, not missing, not weaned. */
    public boolean isInCare() {
        return lost.isEmpty() && weaned.isEmpty();
    }

    /** How it left the box, if it was not put back since. */
    public Optional<BoxTrip> leftBox() {
        return trips.isEmpty()
                ? Optional.empty()
                : Optional.of(trips.get(trips.size() - 1)).filter(BoxTrip::out);
    }

    /** The day on which it left the box and was not put back since. */
    public Optional<LocalDate> outOfBox() {
        return leftBox().map(BoxTrip::day);
    }

    public Optional<String> ringWorn() {
        return ring.map(ChickRing::ring);
    }
}
