package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.care.TaskOutcome;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Which answers to tasks have to be remembered longer than a day. */
class KindTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 14);

    /** Their ids name the very day for which they are asked. */
    private static final Set<Kind> OF_A_DAY =
            Set.of(Kind.MORNING, Kind.EVENING_FOOD, Kind.EVENING_ROW, Kind.EVENING, Kind.CHECK, Kind.CARD);

    @ParameterizedTest
    @EnumSource(Kind.class)
    void onlyTheAnswerToATaskOfOneDayNeedNotBeRemembered(Kind kind) {
        assertThat(outcome(Task.id(DAY, "A1", kind)).mayBeAskedAgain()).isEqualTo(!OF_A_DAY.contains(kind));
        assertThat(outcome(Task.id(DAY, "A1", kind, 2)).mayBeAskedAgain()).isEqualTo(!OF_A_DAY.contains(kind));
    }

    private static TaskOutcome outcome(String task) {
        return new TaskOutcome(1, task, true, Optional.empty(), "Ines", DAY, Optional.empty(), Optional.empty());
    }
}
