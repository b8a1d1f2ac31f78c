package org.cagewall.deed;

import java.util.Optional;

/**
 * What something is from now on, in a deed that changes it; without a value it is nothing any more, which a line writes
 * as null. Immutable; any thread.
 */
public record NewValue<T>(Optional<T> value) {

    public static <T> NewValue<T> to(T value) {
        return new NewValue<>(Optional.of(value));
    }

    public static <T> NewValue<T> none() {
        return new NewValue<>(Optional.empty());
    }

    /** What it is after the change, where there is one. */
    static <T> Optional<T> after(Optional<T> before, Optional<NewValue<T>> change) {
        return change.isPresent() ? change.get().value() : before;
    }
}
