package org.cagewall.deed;

import java.util.Optional;

/**
 * What something is from now on, in a deed that changes it; without a value it is nothing any more, which a line writes
 * as null. Immutable; any thread.
 */
public record Anew<T>(Optional<T> value) {

    public static <T> Anew<T> to(T value) {
        return new Anew<>(Optional.of(value));
    }

    public static <T> Anew<T> none() {
        return new Anew<>(Optional.empty());
    }

    /** What it is after the change, where there is one. */
    static <T> Optional<T> after(Optional<T> before, Optional<Anew<T>> change) {
        return change.isPresent() ? change.get().value() : before;
    }
}
