package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Task;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How long it is remembered that a task was ticked off, or left out with a word. */
class OutcomesTest extends InMemory {

    /** The box was put on on the third of March and no egg came: expected on the thirteenth, late from the 25th on. */
    private static final String NO_EGG = "2026-03-13/A1/first-egg";

    /** The first day on which the egg is late. */
    private static final LocalDate LATE = LocalDate.of(2026, 3, 25);

    @TempDir
    Path folder;

    @Override
    boolean isFurnished() {
        return true;
    }

    @Test
    void aTaskOfANestThatWasLeftOutWithAWordStaysSo() throws IOException {
        assertThat(state(room(), LATE)).isEqualTo(Task.State.OPEN);
        tell("""
                {"deed":"task-not-done","task":"%s","why":"young hen","on":"2026-03-25","by":"Ines"}
                """.formatted(NO_EGG));

        keepAtTheEnd();
        for (int days = 0; days <= 10; days++) {
            LocalDate day = LATE.plusDays(days);
            Room anew = store().room(day);

            assertThat(state(anew, day)).as("read anew on %s", day).isEqualTo(Task.State.NOT_DONE);
            assertThat(Later.on(kept(), day)).as("kept since, on %s", day).isEqualTo(anew);
        }
    }

    @Test
    void itIsRememberedAsLongAsItMayBeAskedForAndThatOfADayOnlyTillTheNextDay() {
        tell("""
                {"deed":"task-not-done","task":"%s","why":"young hen","by":"Ines"}
                {"deed":"task-done","task":"2026-04-14/A1/evening-food","by":"Ines"}
                """.formatted(NO_EGG));

        assertThat(outcomes(TODAY.plusDays(1))).hasSize(2);
        assertThat(outcomes(TODAY.plusDays(2))).containsExactly(NO_EGG);
        assertThat(outcomes(TODAY.plusDays(Room.OUTCOME_HELD_DAYS))).containsExactly(NO_EGG);
        assertThat(outcomes(TODAY.plusDays(Room.OUTCOME_HELD_DAYS + 1))).isEmpty();
    }

    @Test
    void anAnswerToAnotherTaskDoesNotBringItBack() {
        tell("""
                {"deed":"task-not-done","task":"%s","why":"young hen","on":"2026-03-25","by":"Ines"}
                {"deed":"task-done","task":"2026-04-14/A2/evening-food","by":"Ines"}
                """.formatted(NO_EGG));

        assertThat(state(room(), LATE)).isEqualTo(Task.State.NOT_DONE);
        assertThat(room()).isEqualTo(roomReadAnew());
    }

    private List<String> outcomes(LocalDate day) {
        Room anew = store().room(day);
        assertThat(Later.on(room(), day)).isEqualTo(anew);
        return anew.outcomes().stream().map(outcome -> outcome.task()).toList();
    }

    private static Task.State state(Room room, LocalDate day) {
        return DailyList.of(room, day, Audience.OWNER).stream()
                .filter(task -> task.id().equals(NO_EGG))
                .map(Task::state)
                .findFirst()
                .orElseThrow();
    }

    private void keepAtTheEnd() throws IOException {
        new Glance(folder.resolve("room")).keep(head(), room());
    }

    private Room kept() {
        return new Glance(folder.resolve("room")).read(head()).orElseThrow();
    }

    private RoomReader.Head head() {
        RoomReader.Head[] head = new RoomReader.Head[1];
        useDatabase(session -> head[0] = new RoomReader(session).head());
        return head[0];
    }
}
