package org.cagewall.room;

import java.time.LocalTime;

/** The hours in which the screen stays dim. They may run over midnight. Immutable; any thread. */
public record Quiet(LocalTime from, LocalTime to) {

    public boolean holds(LocalTime time) {
        return from.isBefore(to)
                ? !time.isBefore(from) && time.isBefore(to)
                : !time.isBefore(from) || time.isBefore(to);
    }
}
