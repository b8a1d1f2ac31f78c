package org.cagewall.kiosk.shell;

import java.util.function.IntConsumer;

/** Hears every typed character before any field does: the place for a scanner that types. Event thread. */
public interface KeySink {

    /**
     * A character was typed while no field has the keyboard; Enter comes as {@code '\n'}.
     *
     * @param nanos when, by the machine's running time
     * @return whether it was taken, so that nobody else hears it
     */
    boolean key(char c, long nanos);

    /**
     * A character was typed into a field, which gets it at once unless it is taken.
     *
     * @param takeOut takes the n characters typed just before this one out of the field again, and puts back
     *     what they had replaced
     * @return whether it was taken, so that the field does not get it
     */
    default boolean keyInField(char c, long nanos, IntConsumer takeOut) {
        return false;
    }
}
