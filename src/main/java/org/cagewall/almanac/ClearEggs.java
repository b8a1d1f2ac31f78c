package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.List;
import org.cagewall.room.nest.Lying;

/**
 * Eggs that will not hatch and may be taken out: they prop a first chick and hold a hen, so that it is offered only after
 * the last hatch, or when all are clear and their time is three days past. Immutable; any thread.
 *
 * @param from the day from which their removal is offered
 */
public record ClearEggs(LocalDate from, List<Lying> eggs) {

    public ClearEggs {
        eggs = List.copyOf(eggs);
    }
}
