package org.cagewall.desk;

import java.util.List;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/** What became of the deeds of one touch. Immutable; any thread. */
public sealed interface Outcome {

    /**
     * All are recorded and committed.
     *
     * @param entries their numbers, in the order of the deeds; the first names the touch
     * @param room the room after them
     */
    record Done(List<Long> entries, Room room) implements Outcome {
        public long touch() {
            return entries.get(0);
        }
    }

    /** None is recorded: the one at that index is odd, and the person is asked. */
    record Asks(int index, Message question) implements Outcome {}

    /** None is recorded: the one at that index cannot be. */
    record Refused(int index, Message reason) implements Outcome {}

    /**
     * None is recorded, and not because of what it is: the record could not be written to. The same may be tried again.
     *
     * @param code also stands in the log
     */
    record Unwritten(Message reason, String code) implements Outcome {}

    /** Something broke; nothing is recorded. The code also stands in the log. */
    record Failed(String code) implements Outcome {}
}
