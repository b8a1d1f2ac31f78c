package org.cagewall.kiosk.alarm;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.tasks.Danger;

/**
 * What the page of alarms shows. Immutable; any thread.
 *
 * @param dangers all that may be touched
 * @param open the one that is happening
 */
public record AlarmState(String title, String subtitle, List<Choice<Danger>> dangers, Optional<Open> open) {

    public AlarmState {
        dangers = List.copyOf(dangers);
    }

    /**
     * One alarm.
     *
     * @param steps what to do, and until somebody answers
     * @param cages where it may be, and "I do not know"; empty where it is about the room
     * @param at what was touched of them
     * @param until what comes before anybody answers
     * @param noAnswer what to do when somebody, or nobody at all, answers
     * @param agreed what was agreed about it and holds
     */
    public record Open(
            Danger danger,
            String title,
            String rule,
            List<String> steps,
            List<Choice<Optional<String>>> cages,
            Optional<Optional<String>> at,
            List<Phone> phones,
            String until,
            String noAnswer,
            List<String> agreed) {

        public Open {
            steps = List.copyOf(steps);
            cages = List.copyOf(cages);
            phones = List.copyOf(phones);
            agreed = List.copyOf(agreed);
        }
    }

    /** Somebody to phone. */
    public record Phone(String name, String number) {}
}
