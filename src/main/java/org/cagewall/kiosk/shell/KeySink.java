package org.cagewall.kiosk.shell;

/** Hears every typed character before any field does: the place for a scanner that types. Event thread. */
public interface KeySink {

    /**
     * A character was typed while no field has the keyboard; Enter comes as {@code '\n'}.
     *
     * @param nanos when, by the machine's running time
     * @return whether it was taken, so that nobody else hears it
     */
    boolean key(char c, long nanos);

    /** A character was typed into a field; taken only if this says so. */
    default boolean keyInField(char c, long nanos) {
        return false;
    }
}
