package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.card.CardFace;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.tasks.RoomSketch.CageSketch;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** What the owner's day holds, and in which order; and whom anybody phones. */
class OwnersListTest {

    private static final Words WORDS = Words.english();

    @Test
    void eachCageIsLookedAtOnceADayAndOneMissedYesterdayIsLate() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 3);
        CageSketch today = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        CageSketch missed = sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.HEN);
        sketch.cage("A3", 1, 3, Use.BREEDING).bird(Sex.HEN);
        sketch.check(today, DAY.minusDays(1)).check(today, DAY).check(missed, DAY.minusDays(3));

        List<Task> tasks = DailyList.of(sketch.room(), DAY, Audience.OWNER);

        assertThat(tasks.stream().map(Task::state)).containsExactly(Task.State.DONE, Task.State.OPEN, Task.State.OPEN);
        assertThat(tasks.stream().map(Task::late)).containsExactly(false, true, false);
        assertThat(tasks.get(1).due()).isEqualTo(DAY.minusDays(2));
        assertThat(tasks.get(1).id()).isEqualTo("2026-04-14/A2/check");
    }

    @Test
    void whatWasReportedDifferentComesFirstAndEachReportHasItsOwnLine() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        CageSketch cage = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        sketch.check(cage, DAY.minusDays(1), Answer.DIFFERENT, DayPart.MORNING)
                .check(cage, DAY.minusDays(1), Answer.DIFFERENT, DayPart.EVENING);

        List<Task> tasks = DailyList.of(sketch.room(), DAY, Audience.OWNER);

        assertThat(tasks.stream().map(Task::id))
                .containsExactly("2026-04-13/A1/report", "2026-04-13/A1/report/2", "2026-04-14/A1/check");
        assertThat(tasks.get(0).late()).isTrue();
        assertThat(WORDS.say(tasks.get(0).how().get(1))).isEqualTo("Seen: puffed up.");
    }

    @Test
    void daysAwayAreInTheListAFortnightAheadAndTheirReviewAfterwards() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        sketch.away(DAY.minusDays(9), DAY.minusDays(2)).away(DAY.plusDays(14), DAY.plusDays(20));

        List<Task> tasks = DailyList.of(sketch.room(), DAY, Audience.OWNER);

        assertThat(tasks.stream().map(Task::id))
                .containsExactly("2026-04-13/A1/back", "2026-04-28/A1/away", "2026-04-14/A1/check");
        assertThat(WORDS.say(tasks.get(1).words())).isEqualTo("You go away in 14 days, on 28 April 2026");
        assertThat(tasks.get(1).cage()).isEmpty();
        assertThat(DailyList.of(sketch.room(), DAY.minusDays(1), Audience.OWNER).stream()
                        .map(Task::kind))
                .doesNotContain(Kind.AWAY);
    }

    @Test
    void aBirdBackFromAShowIsInTheListForAFortnightUnlessItWasTreatedSince() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2).rules("Spot-on after each big show.");
        LocalDate back = DAY.minusDays(3);
        CageSketch cage = sketch.cage("A1", 1, 1, Use.STOCK);
        cage.backFromShow(back)
                .bird(Sex.COCK)
                .bird(Sex.COCK)
                .treated(back.plusDays(1))
                .bird(Sex.COCK);

        Task task = only(sketch, DAY, Kind.AFTER_SHOW);
        assertThat(task.id()).isEqualTo("2026-04-11/A1/after-show");
        assertThat(task.late()).isFalse();
        assertThat(WORDS.say(task.words())).contains("R6", "R7").doesNotContain("R8");
        assertThat(task.how().stream().map(WORDS::say))
                .anyMatch(sentence -> sentence.contains("label") && sentence.contains("vet"))
                .contains("Your rules: Spot-on after each big show.");
        assertThat(kinds(sketch, back.plusDays(14))).contains(Kind.AFTER_SHOW);
        assertThat(kinds(sketch, back.plusDays(15))).doesNotContain(Kind.AFTER_SHOW);
        assertThat(kinds(sketch, back.minusDays(1))).doesNotContain(Kind.AFTER_SHOW);
    }

    @Test
    void aPlannedPairThatWasNotTreatedForAYearIsInTheListOnceForItsCage() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 3);
        CageSketch box = sketch.cage("A1", 1, 1, Use.BREEDING);
        CageSketch stock = sketch.cage("A2", 1, 2, Use.STOCK);
        stock.treated(DAY.minusDays(366))
                .bird(Sex.COCK)
                .treated(DAY.minusDays(365))
                .bird(Sex.HEN);
        sketch.plan(box, DAY.minusDays(2));

        Task task = only(sketch, DAY, Kind.YEARLY);
        assertThat(task.id()).isEqualTo("2026-04-12/A1/yearly");
        assertThat(task.late()).isFalse();
        assertThat(WORDS.say(task.words())).isEqualTo("Not treated for a year: R7");
        assertThat(WORDS.say(only(sketch, DAY.plusDays(1), Kind.YEARLY).words()))
                .as("a day later the hen's year is over too")
                .isEqualTo("Not treated for a year: R7, R8");

        sketch.done(task.id());
        assertThat(only(sketch, DAY, Kind.YEARLY).state()).isEqualTo(Task.State.DONE);
    }

    @Test
    void aTreatmentRecordedThatDayShowsTheReminderAsDone() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        sketch.cage("A1", 1, 1, Use.STOCK)
                .backFromShow(DAY.minusDays(3))
                .treated(DAY)
                .bird(Sex.COCK);

        assertThat(only(sketch, DAY, Kind.AFTER_SHOW).state()).isEqualTo(Task.State.DONE);
        assertThat(kinds(sketch, DAY.plusDays(1))).doesNotContain(Kind.AFTER_SHOW);
    }

    private static Task only(RoomSketch sketch, LocalDate day, Kind kind) {
        List<Task> found = DailyList.of(sketch.room(), day, Audience.OWNER).stream()
                .filter(task -> task.kind() == kind)
                .toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static List<Kind> kinds(RoomSketch sketch, LocalDate day) {
        return DailyList.of(sketch.room(), day, Audience.OWNER).stream()
                .map(Task::kind)
                .toList();
    }

    @Test
    void aCardThatNoLongerFitsAndBirdsInQuarantineAreInTheList() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2);
        sketch.cage("A1", 1, 1, Use.STOCK).card(CardFace.of("A1", "flight"));
        sketch.cage("A2", 1, 2, Use.QUARANTINE).bird(Sex.HEN);

        List<Task> tasks = DailyList.of(sketch.room(), DAY, Audience.OWNER);

        assertThat(tasks.stream().map(Task::kind)).containsExactly(Kind.CARD, Kind.CHECK, Kind.QUARANTINE);
        assertThat(WORDS.say(tasks.get(2).words())).isEqualTo("New bird, day 12 of 30");
        assertThat(tasks.get(2).due()).isEqualTo(DAY.plusDays(19));
        assertThat(tasks.get(2).late()).isFalse();
    }

    @Test
    void theOwnerIsPhonedFirstThenTheSecondKeeperThenTheVet() {
        RoomSketch sketch = new RoomSketch().away(DAY, DAY.plusDays(3));

        Alarms alarms = Alarms.of(sketch.room(), DAY);

        assertThat(alarms.phones())
                .containsExactly(
                        new Alarms.Phone(Alarms.Who.OWNER, "Ines", Optional.of("0555 0142")),
                        new Alarms.Phone(Alarms.Who.SECOND, "Joan", Optional.of("0555 0177")),
                        new Alarms.Phone(Alarms.Who.VET, "Bird vet", Optional.of("0555 0190")));
        assertThat(alarms.rules().stream().map(WORDS::say))
                .containsExactly(
                        "A bird that gasps, or whose tail bobs with each breath. A bird that is bleeding or hurt."
                                + " A hen that strains. A bird on the floor, puffed up or not eating."
                                + " A chick outside the nest.",
                        "A cage that you can not give food or water. A bird that was given the wrong food.",
                        "A bird dead, loose, stuck or missing. Do not chase it.",
                        "The room at 32 \u00b0C or more, or at 5 \u00b0C or less."
                                + " The heater failed, the water frozen or the power off.",
                        "There is smoke, fire or a bad smell: go out first."
                                + " There is water on the floor, a rat or a cat, or a stranger.");
    }
}
