package org.cagewall.desk;

import java.util.function.Function;
import org.cagewall.text.Message;

/** What came of a reading of the record: the thing asked for, a reason why not, or a failure. Immutable; any thread. */
public sealed interface Answer<T> {

    record Got<T>(T value) implements Answer<T> {}

    record Refused<T>(Message reason) implements Answer<T> {}

    /** Something broke. The code also stands in the log. */
    record Failed<T>(String code) implements Answer<T> {}

    /** One value for each of the three. */
    default <R> R fold(Function<T, R> got, Function<Message, R> refused, Function<String, R> failed) {
        if (this instanceof Got<T> it) {
            return got.apply(it.value());
        }
        if (this instanceof Refused<T> it) {
            return refused.apply(it.reason());
        }
        return failed.apply(((Failed<T>) this).code());
    }
}
