package org.cagewall.desk;

import java.util.function.Consumer;
import org.cagewall.text.Message;

/** What came of a reading of the record: the thing asked for, a reason why not, or a failure. Immutable; any thread. */
public sealed interface Reading<T> {

    record Got<T>(T value) implements Reading<T> {}

    record Refused<T>(Message reason) implements Reading<T> {}

    /** Something broke. The code also stands in the log. */
    record Failed<T>(String code) implements Reading<T> {}

    /** What follows in each of the three cases: none can be left out. */
    default void then(Consumer<? super T> got, Consumer<Message> refused, Consumer<String> failed) {
        if (this instanceof Got<T> it) {
            got.accept(it.value());
        } else if (this instanceof Refused<T> it) {
            refused.accept(it.reason());
        } else {
            failed.accept(((Failed<T>) this).code());
        }
    }
}
