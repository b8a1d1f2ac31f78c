package org.cagewall.almanac;

import java.util.Optional;

/**
 * One stage of parting a pair. Immutable; any thread.
 *
 * @param skipped whether it was left out; it has no window then, unless it was done all the same
 */
public record StageOutlook(boolean skipped, Optional<Due> due) {

    public boolean isOpen() {
        return !skipped && due.filter(it -> it.happened().isPresent()).isEmpty();
    }
}
