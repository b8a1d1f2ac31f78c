package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The nest box of a cage: when it hung, and the last day each other thing was done to it. Immutable; any thread.
 *
 * @param hung oldest first
 * @param hanging whether the last of these put it up, or turned it, rather than took it off
 */
public record Box(
        List<Hung> hung,
        Optional<LocalDate> turned,
        Optional<LocalDate> off,
        Optional<LocalDate> cleaned,
        Optional<BoxStep> hanging) {

    public static final Box NONE =
            new Box(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    public Box {
        hung = List.copyOf(hung);
    }

    /** The last day on which it was put up. */
    public Optional<LocalDate> on() {
        return last().map(Hung::on);
    }

    /** The last time it hung, or hangs. */
    public Optional<Hung> last() {
        return hung.isEmpty() ? Optional.empty() : Optional.of(hung.get(hung.size() - 1));
    }

    /** The time in which that day lies; of two the later. */
    public Optional<Hung> hungOn(LocalDate day) {
        return hung.stream().filter(time -> time.covers(day)).reduce((earlier, later) -> later);
    }

    public boolean isOn() {
        return hanging.filter(step -> step == BoxStep.ON).isPresent();
    }

    public boolean isTurned() {
        return hanging.filter(step -> step == BoxStep.TURNED).isPresent();
    }

    /** The box as it hung before that day, as far as that is remembered. */
    public Box before(LocalDate day) {
        Optional<LocalDate> on = on();
        Optional<LocalDate> wasOn = Days.before(on, day);
        Optional<LocalDate> wasTurned = Days.before(turned, day);
        Optional<LocalDate> wasOff = Days.before(off, day);
        if (wasOn.equals(on) && wasTurned.equals(turned) && wasOff.equals(off)) {
            return this;
        }
        boolean facedTheWall =
                wasTurned.filter(last -> wasOn.filter(last::isBefore).isEmpty()).isPresent();
        Optional<BoxStep> hangs =
                wasOn.equals(on) ? Optional.of(facedTheWall ? BoxStep.TURNED : BoxStep.ON) : Optional.empty();
        List<Hung> times = hung.stream()
                .filter(time -> time.on().isBefore(day))
                .map(time -> time.before(day))
                .toList();
        return new Box(times, wasTurned, wasOff, cleaned, hangs);
    }
}
