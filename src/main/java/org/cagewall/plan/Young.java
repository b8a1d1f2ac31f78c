package org.cagewall.plan;

import java.util.Optional;
import java.util.OptionalInt;
import org.cagewall.room.nest.Lying;

/**
 * One egg or chick of a nest as it stands, or an egg yet to be laid; days as counted from 1970. Immutable; any thread.
 *
 * @param lying empty for an egg yet to be laid
 * @param laid empty for an egg yet to be laid
 * @param satFrom empty where that depends on eggs yet to be laid
 * @param mayHatch whether a chick may come of it
 * @param chance that one does, from 0 to 1, today not yet come to nothing
 * @param hatched the day, for a chick
 * @param out the day it left the box
 * @param fed the day it was taken away, feeding itself
 */
record Young(
        Optional<Lying> lying,
        OptionalInt laid,
        OptionalInt satFrom,
        boolean mayHatch,
        double chance,
        OptionalInt hatched,
        OptionalInt out,
        OptionalInt fed,
        boolean ringed) {

    static Young toCome(double chance) {
        return new Young(
                Optional.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                true,
                chance,
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalInt.empty(),
                false);
    }

    boolean isChick() {
        return hatched.isPresent();
    }

    /** A chick in the care of the nest. */
    boolean isInCare() {
        return isChick() && fed.isEmpty();
    }
}
