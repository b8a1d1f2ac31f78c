package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.desk.Daybook;
import org.cagewall.handover.Ready.State;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a birdroom is made ready for days away, from a real record. */
class ReadyTest {

    private static final Words WORDS = Words.english();
    private static final LocalDate DAY = LocalDate.of(2026, 4, 14);

    @TempDir
    Path folder;

    private Daybook book;

    @BeforeEach
    void inesGoesOnMonday() {
        book = Daybook.furnished(folder.resolve("room"), DAY);
    }

    @AfterEach
    void close() {
        book.close();
    }

    private void planned() {
        book.tell("""
                {"deed":"away-planned","from":"2026-04-20","to":"2026-04-28","sitter":"Tomas","by":"Ines"}
                """);
    }

    @Test
    void aCageThatIsLeftAloneNeedsSomebodyWhoFeedsIt() {
        planned();
        assertThat(state(Matter.ALONE)).isEqualTo(State.NOT_NEEDED);

        book.tell("{\"deed\":\"away-changed\",\"leave-alone\":[\"B3\"],\"by\":\"Ines\"}");
        assertThat(open()).contains(Matter.ALONE);
        assertThat(said(Matter.ALONE)).isEqualTo("Nobody is named who feeds B3. The sitter puts no hand in.");

        book.tell("{\"deed\":\"away-changed\",\"feeder\":\"Joan\",\"by\":\"Ines\"}");
        assertThat(said(Matter.ALONE)).isEqualTo("Joan feeds B3.");
        assertThat(state(Matter.ALONE)).isEqualTo(State.DONE);
    }

    @Test
    void everythingIsThereOnceInItsOrder() {
        planned();

        assertThat(ready().lines().stream().map(Ready.Line::matter)).containsExactly(Matter.values());
    }

    @Test
    void aPhoneASecondKeeperAndAVetAreThereOnceTheyAreSetDown() {
        planned();
        assertThat(open()).contains(Matter.PHONES, Matter.SECOND, Matter.VET);
        assertThat(said(Matter.PHONES)).isEqualTo("Missing for Tomas.");

        book.tell("""
                {"deed":"person-changed","person":"Tomas","phone":"0555 0163","by":"Ines"}
                {"deed":"away-changed","second":"Joan","vet":"the vet at the mill","by":"Ines"}
                """);
        assertThat(open()).contains(Matter.VET).doesNotContain(Matter.PHONES, Matter.SECOND);
        assertThat(said(Matter.VET)).isEqualTo("A number is missing.");

        book.tell("{\"deed\":\"away-changed\",\"vet\":\"the vet at the mill, 0555 0190\",\"by\":\"Ines\"}");
        assertThat(open()).doesNotContain(Matter.VET);
        assertThat(line(Matter.VET).lead()).isEqualTo(Lead.Place.PLAN);
    }

    @Test
    void aNestThatIsNotClearIsNamedWithItsDayAndLeadsAhead() {
        planned();
        assertThat(state(Matter.NESTS)).isEqualTo(State.OPEN);
        assertThat(line(Matter.NESTS).lead()).isEqualTo(Lead.Place.AHEAD);

        book.tell("{\"deed\":\"egg-laid\",\"cage\":\"A1\",\"on\":\"2026-04-10\",\"by\":\"Ines\"}");
        assertThat(said(Matter.NESTS)).contains("Not clear when you go: A1.", "days too late");
    }

    @Test
    void aRoomWithoutPairsHasNoNestsToClear() {
        book.tell("{\"deed\":\"box-off\",\"cage\":\"A1\",\"by\":\"Ines\"}").tell("""
                {"deed":"bird-moved","bird":"HB 26-041","to":"B1","by":"Ines"}
                {"deed":"bird-moved","bird":"HB 25-117","to":"B2","by":"Ines","sure":true}
                """);
        planned();

        assertThat(state(Matter.NESTS)).isEqualTo(State.NOT_NEEDED);
        assertThat(state(Matter.RINGING)).isEqualTo(State.NOT_NEEDED);
    }

    /** Hatched on the 3rd: ringed by day 8, on the 11th (trade facts: look from 5, by 8, last 10). */
    @Test
    void aChickThatIsRingedBeforeSheGoesIsNamed() {
        planned();
        chickHatched("2026-04-08");

        assertThat(said(Matter.RINGING)).isEqualTo("Before you go: chick 1 in A1, about 16 April 2026.");
        assertThat(line(Matter.RINGING).lead()).isEqualTo(new Lead.ToCage("A1"));

        book = book.on(LocalDate.of(2026, 4, 16));
        book.tell("{\"deed\":\"chick-ringed\",\"cage\":\"A1\",\"mark\":\"1\",\"ring\":\"HB 26-050\",\"by\":\"Ines\"}");
        assertThat(state(Matter.RINGING)).isEqualTo(State.NOT_NEEDED);
    }

    @Test
    void aChickThatIsRingedMeanwhileNeedsSomebodyWhoCan() {
        planned();
        chickHatched("2026-04-13");
        assertThat(state(Matter.RINGING)).isEqualTo(State.OPEN);
        assertThat(said(Matter.RINGING)).contains("chick 1 in A1, about 21 April 2026", "Nobody is named");

        book.tell("{\"deed\":\"away-changed\",\"second\":\"Joan\",\"by\":\"Ines\"}");
        assertThat(state(Matter.RINGING)).isEqualTo(State.DONE);
        assertThat(said(Matter.RINGING)).endsWith("Joan can ring.");
    }

    private void chickHatched(String day) {
        book.tell("""
                {"deed":"egg-laid","cage":"A1","mark":"1","on":"2026-04-01","sure":true,"by":"Ines"}
                {"deed":"chick-hatched","cage":"A1","mark":"1","on":"%s","sure":true,"by":"Ines"}
                """.formatted(day));
    }

    @Test
    void whatCannotBeSeenIsTickedByHandThroughTheRecord() {
        planned();
        Set<Matter> byHand = EnumSet.of(
                Matter.SHOPPING, Matter.KEYS, Matter.HEAT_PLAN, Matter.NIGHT_LIGHT, Matter.ROUND, Matter.QUARANTINE);
        assertThat(open()).containsAll(byHand);

        byHand.forEach(
                matter -> book.tell("{\"deed\":\"task-done\",\"task\":\"" + task(matter) + "\",\"by\":\"Ines\"}"));

        assertThat(open()).doesNotContainAnyElementsOf(byHand);
        assertThat(task(Matter.KEYS)).isEqualTo("2026-04-20/A1/ready-keys");
    }

    @Test
    void whatIsNotNeededInThisRoomIsSaidSo() {
        planned();
        book.tell("{\"deed\":\"task-not-done\",\"task\":\"" + task(Matter.NIGHT_LIGHT)
                + "\",\"why\":\"the street lamp does\",\"by\":\"Ines\"}");

        assertThat(state(Matter.NIGHT_LIGHT)).isEqualTo(State.NOT_NEEDED);
    }

    @Test
    void aTickStaysWhenTheDaysAreChangedAndNotForOtherDays() {
        planned();
        book.tell("{\"deed\":\"task-done\",\"task\":\"" + task(Matter.KEYS) + "\",\"by\":\"Ines\"}")
                .tell("{\"deed\":\"away-changed\",\"from\":\"2026-04-21\",\"by\":\"Ines\"}");
        assertThat(state(Matter.KEYS)).isEqualTo(State.DONE);

        book.tell("{\"deed\":\"away-planned\",\"from\":\"2026-06-01\",\"to\":\"2026-06-07\",\"sitter\":\"Joan\","
                + "\"by\":\"Ines\"}");
        Room room = book.desk().room();
        Ready next = Ready.of(room, DAY, room.absences().get(1));
        assertThat(next.lines().stream()
                        .filter(line -> line.matter() == Matter.KEYS)
                        .map(Ready.Line::state))
                .containsExactly(State.OPEN);
    }

    @Test
    void birdsNewInAFlightAndNewBirdsAreToldOf() {
        planned();
        book = book.on(LocalDate.of(2026, 4, 19));
        book.tell("{\"deed\":\"bird-moved\",\"bird\":\"HB 24-006\",\"to\":\"B2\",\"by\":\"Ines\"}");

        assertThat(said(Matter.FLIGHT)).startsWith("In B2, for less than 3 days when you go.");
        assertThat(said(Matter.QUARANTINE)).startsWith("In B3. Show Tomas");

        book = book.on(LocalDate.of(2026, 4, 22));
        assertThat(state(Matter.FLIGHT)).isEqualTo(State.NOT_NEEDED);
    }

    @Test
    void whileSheIsAwayNothingSpeaksOfGoingOrAsksToShowAnything() {
        planned();
        chickHatched("2026-04-13");
        book = book.on(LocalDate.of(2026, 4, 22));
        book.tell("{\"deed\":\"bird-moved\",\"bird\":\"HB 24-006\",\"to\":\"B2\",\"by\":\"Ines\"}");

        assertThat(ready().lines().stream().map(line -> WORDS.say(line.text()))).allSatisfy(text -> assertThat(text)
                .doesNotContainIgnoringCase("you go")
                .doesNotContain("Show ", "too late", "look on", "Look whether"));
        assertThat(said(Matter.FLIGHT)).startsWith("In B2, for less than 3 days. Ask Tomas");
        assertThat(said(Matter.NESTS)).startsWith("Not clear: A1.");
        assertThat(state(Matter.ROUND)).isEqualTo(State.NOT_NEEDED);
        assertThat(WORDS.say("handover.ready-away", 2L, 17)).isEqualTo("2 of 17 still to see to");
    }

    @Test
    void whileSheIsAwayTheNextDaysAwayAreNotRemindedOf() {
        planned();
        book.tell("{\"deed\":\"away-planned\",\"from\":\"2026-04-30\",\"to\":\"2026-05-03\",\"sitter\":\"Tomas\","
                + "\"by\":\"Ines\"}");

        assertThat(reminded(LocalDate.of(2026, 4, 27))).isEmpty();
        assertThat(reminded(LocalDate.of(2026, 4, 29))).hasSize(1);
    }

    private List<Task> reminded(LocalDate day) {
        return DailyList.of(book.desk().room(), day, Audience.OWNER).stream()
                .filter(task -> task.kind() == Kind.AWAY)
                .toList();
    }

    @Test
    void whatTheCagesAreGivenIsSetForEachOrNamed() {
        planned();
        assertThat(said(Matter.ROUTINES)).isEqualTo("Not set for A1, A3, B1, B2, B3: seed and water only.");
        assertThat(said(Matter.SHOPPING)).startsWith("For 9 days: 9 \u00d7 1 scoop soft food.");

        Stream.of("A1", "A3", "B1", "B2", "B3")
                .forEach(
                        cage -> book.tell(
                                "{\"deed\":\"routine-set\",\"cage\":\"" + cage
                                        + "\",\"feed\":[{\"what\":\"seed\",\"amount\":\"2 scoops\",\"when\":\"morning\"}],\"by\":\"Ines\"}"));
        assertThat(state(Matter.ROUTINES)).isEqualTo(State.DONE);
        assertThat(said(Matter.SHOPPING)).contains("90 scoops seed");
    }

    @Test
    void theSittersMinutesAreReckonedFromTheSittersList() {
        planned();

        Effort effort = ready().effort();

        assertThat(effort.morning()).isEqualTo(30);
        assertThat(effort.evening()).isEqualTo(10);
        assertThat(WORDS.say(effort.words()))
                .isEqualTo("about 40 minutes a day, 30 in the morning and 10 in the evening");
    }

    @Test
    void aRehearsedDayIsTheVeryListThatTheSitterMeets() {
        planned();
        LocalDate away = LocalDate.of(2026, 4, 23);
        List<Task> rehearsed = rehearsed(away);

        book = book.on(away);

        assertThat(rehearsed).isEqualTo(DailyList.of(book.desk().room(), away, Audience.SITTER));
    }

    @Test
    void looksIntoANestComeEverySecondDayInARehearsalAsIfEachWereDone() {
        planned();
        chickHatched("2026-04-13");
        book.tell("""
                {"deed":"nest-looked-at","cage":"A1","chicks":1,"on":"2026-04-14","by":"Ines"}
                {"deed":"routine-set","cage":"A1","feed":[],"allowed":["look-in"],"by":"Ines"}
                """);

        List<LocalDate> looks = LocalDate.of(2026, 4, 20)
                .datesUntil(LocalDate.of(2026, 4, 29))
                .filter(day -> rehearsed(day).stream().anyMatch(task -> task.kind() == Kind.NEST_LOOK))
                .toList();

        assertThat(looks)
                .containsExactly(
                        LocalDate.of(2026, 4, 20),
                        LocalDate.of(2026, 4, 22),
                        LocalDate.of(2026, 4, 24),
                        LocalDate.of(2026, 4, 26),
                        LocalDate.of(2026, 4, 28));
        assertThat(rehearsed(LocalDate.of(2026, 4, 24))).noneMatch(Task::late);
    }

    @Test
    void whereTheSitterMayLookInThePackNeverSaysThatTheBoxStaysShutAllTheTime() {
        planned();
        chickHatched("2026-04-13");
        book.tell("{\"deed\":\"routine-set\",\"cage\":\"A1\",\"feed\":[],\"allowed\":[],\"by\":\"Ines\"}");
        assertThat(packSaysOf("A1")).contains("A1: chicks. Leave the box shut. Do both old birds eat?");

        book.tell("{\"deed\":\"routine-set\",\"cage\":\"A1\",\"feed\":[],\"allowed\":[\"look-in\"],\"by\":\"Ines\"}");

        assertThat(packSaysOf("A1"))
                .contains("A1: chicks. Look in the box on the days that say so. Do both old birds eat?");
    }

    private List<String> packSaysOf(String cage) {
        Room room = book.desk().room();
        return Pack.of(room, book.desk().today(), room.absences().get(0)).door().watch().stream()
                .map(WORDS::say)
                .filter(said -> said.startsWith(cage))
                .toList();
    }

    private List<Task> rehearsed(LocalDate day) {
        return Rehearsal.of(book.desk().room(), book.desk().today(), day);
    }

    private Ready ready() {
        Room room = book.desk().room();
        Absence absence = room.absences().get(0);
        return Ready.of(room, book.desk().today(), absence);
    }

    private Ready.Line line(Matter matter) {
        return ready().lines().stream()
                .filter(line -> line.matter() == matter)
                .findFirst()
                .orElseThrow();
    }

    private State state(Matter matter) {
        return line(matter).state();
    }

    private String said(Matter matter) {
        return WORDS.say(line(matter).text());
    }

    private String task(Matter matter) {
        return ((Lead.ByHand) line(matter).lead()).task();
    }

    private List<Matter> open() {
        return ready().lines().stream()
                .filter(line -> line.state() == State.OPEN)
                .map(Ready.Line::matter)
                .toList();
    }
}
