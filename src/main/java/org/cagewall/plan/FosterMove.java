package org.cagewall.plan;

import org.cagewall.room.Cage;
import org.cagewall.room.nest.Lying;
import org.cagewall.text.Message;

/**
 * An egg that could go to another nest. Immutable; any thread.
 *
 * @param gap between its expected hatching and the hatchings of the other nest, in days; 0 where it falls among them
 * @param why it would go there
 */
public record FosterMove(Lying egg, Cage from, Cage to, int gap, Message why) {

    /** What the egg is called in the nest it lies in. */
    public String mark() {
        return egg.name(from.id());
    }
}
