package org.cagewall.plan;

import org.cagewall.room.Span;

/** How much time everything is given: the three columns of an answer. */
public enum Pace {
    /** Everything comes as early as it may. */
    PUSH,
    /** Everything comes when it usually does. */
    USUAL,
    /** Everything comes as late as it may. */
    SAFE;

    /** The days that this column takes of a span. */
    int of(Span span) {
        return switch (this) {
            case PUSH -> span.earliest();
            case USUAL -> span.expected();
            case SAFE -> span.latest();
        };
    }
}
