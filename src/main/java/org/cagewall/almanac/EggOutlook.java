package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.room.SatFrom;
import org.cagewall.room.nest.Lying;

/**
 * One egg, whatever became of it, and what is expected of it. Immutable; any thread.
 *
 * @param here whether it, or its chick, is in this nest now, or was here last
 * @param satFrom from when it is sat on, or is expected to be
 * @param firstLook against the light; the day it was looked at once that has been done
 * @param secondLook again, later; the day it was looked at once that has been done
 * @param pip empty once it has hatched with no pip seen, and for an egg that cannot hatch
 * @param hatch empty for an egg that was taken out, or is known to be clear or addled
 * @param wouldHatch when it would hatch if it were full, whatever is known of it
 * @param overdueFrom the day from which it is late: after the last day to hatch, and not sooner than the days of
 *     incubation and two after laying
 * @param unsat for an egg that lies unsat: how long it keeps
 */
public record EggOutlook(
        Lying lying,
        boolean here,
        Optional<SatFrom> satFrom,
        Optional<Due> firstLook,
        Optional<Due> secondLook,
        Optional<Due> pip,
        Optional<Due> hatch,
        Optional<Window> wouldHatch,
        Optional<LocalDate> overdueFrom,
        Optional<Unsat> unsat) {

    /**
     * Whether it is getting old on that day with nobody sitting on it yet.
     *
     * @param day the day for which it is asked
     */
    public boolean liesUnsat(LocalDate day) {
        return unsat.filter(keeps -> !keeps.warnFrom().isAfter(day)).isPresent()
                && satFrom.filter(sat -> sat.foreseen() || sat.day().isAfter(day))
                        .isPresent();
    }

    /** The look against the light that comes next; empty when both are done or none is of use. */
    public Optional<Due> nextLook() {
        return firstLook.filter(Due::isOpen).or(() -> secondLook.filter(Due::isOpen));
    }
}
