package org.cagewall.room;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The nest box of a cage: the last day each thing was done to it. Immutable; any thread.
 *
 * @param hanging whether the last of these put it up, or turned it, rather than took it off
 */
public record Box(
        Optional<LocalDate> on,
        Optional<LocalDate> turned,
        Optional<LocalDate> off,
        Optional<LocalDate> cleaned,
        Optional<BoxStep> hanging) {

    public static final Box NONE =
            new Box(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public boolean isOn() {
        return hanging.filter(step -> step == BoxStep.ON).isPresent();
    }

    public boolean isTurned() {
        return hanging.filter(step -> step == BoxStep.TURNED).isPresent();
    }

    /** The box as it hung before that day, as far as that is remembered. */
    Box before(LocalDate day) {
        Optional<LocalDate> wasOn = Days.before(on, day);
        Optional<LocalDate> wasTurned = Days.before(turned, day);
        Optional<LocalDate> wasOff = Days.before(off, day);
        if (wasOn.equals(on) && wasTurned.equals(turned) && wasOff.equals(off)) {
            return this;
        }
        boolean facedTheWall =
                wasTurned.filter(last -> wasOn.filter(last::isBefore).isEmpty()).isPresent();
        Optional<BoxStep> hung =
                wasOn.equals(on) ? Optional.of(facedTheWall ? BoxStep.TURNED : BoxStep.ON) : Optional.empty();
        return new Box(wasOn, wasTurned, wasOff, cleaned, hung);
    }
}
