package org.cagewall.almanac;

import java.util.Optional;
import org.cagewall.room.Span;

/**
 * One stage of parting a pair. Immutable; any thread.
 *
 * @param skipped whether it was left out; it has no window then, unless it was done all the same
 * @param until how many days later the next may follow
 */
public record StageOutlook(boolean skipped, Optional<Due> due, Span until) {

    public boolean isOpen() {
        return !skipped && due.filter(it -> it.happened().isPresent()).isEmpty();
    }

    /** The same, not before another has ended. */
    StageOutlook after(Optional<Window> before) {
        return isOpen() && before.isPresent()
                ? new StageOutlook(false, due.map(it -> Due.expected(it.window().and(before.get()))), until)
                : this;
    }
}
