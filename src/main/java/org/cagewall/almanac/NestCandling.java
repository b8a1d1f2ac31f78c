package org.cagewall.almanac;

import java.util.List;
import org.cagewall.room.nest.Lying;

/**
 * A look at a nest's eggs against the light that is still to be done: one for a nest, not for an egg. Immutable; any
 * thread.
 *
 * @param eggs those to be looked at: what is clear, addled or pipped is left in peace
 */
public record NestCandling(Window window, List<Lying> eggs) {

    public NestCandling {
        eggs = List.copyOf(eggs);
    }
}
