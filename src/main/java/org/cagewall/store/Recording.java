package org.cagewall.store;

import java.util.List;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/** What became of the deeds of one touch. Immutable; any thread. */
public sealed interface Recording {

    /**
     * All are recorded and committed.
     *
     * @param entries their numbers, in the order of the deeds
     * @param room the room after them
     */
    record Done(List<Long> entries, Room room) implements Recording {}

    /** None is recorded: the one at that index is odd, and the person is asked. */
    record Asks(int index, Message question) implements Recording {}

    /** None is recorded: the one at that index cannot be. */
    record Refused(int index, Message reason) implements Recording {}
}
