package org.cagewall.plan;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The days of one round, from the box on to the hen in the flight. Immutable; any thread.
 */
public record Steps(
        LocalDate boxOn,
        LocalDate firstEgg,
        LocalDate lastEgg,
        LocalDate lastHatch,
        LocalDate boxTurned,
        LocalDate boxOff,
        LocalDate independent,
        LocalDate cockOut,
        LocalDate henOut) {

    /** What is done or happens on a day of these. */
    public enum Step {
        BOX_ON,
        FIRST_EGG,
        LAST_EGG,
        LAST_HATCH,
        BOX_TURNED,
        BOX_OFF,
        INDEPENDENT,
        COCK_OUT,
        HEN_OUT;

        /** From which step the days to this one are counted; empty for the first. */
        public Optional<Step> before() {
            return switch (this) {
                case BOX_ON -> Optional.empty();
                case FIRST_EGG -> Optional.of(BOX_ON);
                case LAST_EGG -> Optional.of(FIRST_EGG);
                case LAST_HATCH -> Optional.of(LAST_EGG);
                case BOX_TURNED, INDEPENDENT -> Optional.of(LAST_HATCH);
                case BOX_OFF -> Optional.of(BOX_TURNED);
                case COCK_OUT -> Optional.of(INDEPENDENT);
                case HEN_OUT -> Optional.of(COCK_OUT);
            };
        }
    }

    public LocalDate day(Step step) {
        return switch (step) {
            case BOX_ON -> boxOn;
            case FIRST_EGG -> firstEgg;
            case LAST_EGG -> lastEgg;
            case LAST_HATCH -> lastHatch;
            case BOX_TURNED -> boxTurned;
            case BOX_OFF -> boxOff;
            case INDEPENDENT -> independent;
            case COCK_OUT -> cockOut;
            case HEN_OUT -> henOut;
        };
    }
}
