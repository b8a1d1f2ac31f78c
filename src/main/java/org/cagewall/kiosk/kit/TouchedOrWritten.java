package org.cagewall.kiosk.kit;

import java.util.Optional;
import org.cagewall.text.Message;

/**
 * What somebody answered by touching one of several names, by writing, or by both. Immutable; any thread.
 *
 * @param kept the name that was touched, else what was written
 * @param note what was written beside a name
 */
public record TouchedOrWritten(String kept, Optional<String> note) {

    /** Empty where neither was done. */
    public static Optional<TouchedOrWritten> of(Optional<? extends Enum<?>> touched, String written) {
        Optional<String> note = Optional.of(written.strip()).filter(text -> !text.isEmpty());
        return touched.map(name -> new TouchedOrWritten(Message.word(name), note))
                .or(() -> note.map(words -> new TouchedOrWritten(words, Optional.empty())));
    }
}
