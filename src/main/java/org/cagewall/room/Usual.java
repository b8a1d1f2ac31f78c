package org.cagewall.room;

import java.util.Optional;

/** What is usual of a bird, and how soon and late it comes. Pure; any thread. */
@FunctionalInterface
public interface Usual {

    /** Days or a count; empty where nothing is known. */
    Optional<Span> span(Timing timing);

    default Optional<Integer> expected(Timing timing) {
        return span(timing).map(Span::expected);
    }
}
