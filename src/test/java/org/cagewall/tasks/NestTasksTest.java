package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.almanac.NestSketch;
import org.cagewall.room.Room;
import org.cagewall.room.care.Permission;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** What the nests ask for, day by day, by the timetable in {@code species/budgerigar.txt}. */
class NestTasksTest {

    private static final Words WORDS = Words.english();

    /** The first egg was laid on the first of May, four more two days apart: she sits from the third on. */
    private static final LocalDate FIRST = LocalDate.of(2026, 5, 1);

    private static final LocalDate SAT = FIRST.plusDays(2);

    private final NestSketch sketch = new NestSketch();
    private final NestSketch.Home home = home("A1");

    @Test
    void aNestIsCandledOnceForTheFirstEggsAndOnceWhenTheLastIsDue() {
        home.round().eggs(5, FIRST, 2);

        assertThat(kinds(SAT.plusDays(1))).isEmpty();
        assertThat(task(SAT.plusDays(2), Kind.CANDLE).why().key()).isEqualTo("tasks.why-soon");
        assertThat(task(SAT.plusDays(4), Kind.CANDLE).id()).isEqualTo("2026-05-08/A1/candle");
        assertThat(task(SAT.plusDays(4), Kind.CANDLE).late()).isFalse();
        assertThat(task(SAT.plusDays(8), Kind.CANDLE).late()).isTrue();
        assertThat(WORDS.say(task(SAT.plusDays(8), Kind.CANDLE).why()))
                .isEqualTo("It was to be done by 10 May 2026, 1 day ago");
    }

    @Test
    void aTaskIsGoneOnceWhatItAsksForWasRecorded() {
        NestSketch.Clutch clutch = home.round().eggs(2, FIRST, 2);
        assertThat(kinds(SAT.plusDays(5))).contains(Kind.CANDLE);

        clutch.egg(1).candled(EggFinding.FULL, SAT.plusDays(5));
        clutch.egg(2).candled(EggFinding.FULL, SAT.plusDays(5));
        assertThat(kinds(SAT.plusDays(5))).doesNotContain(Kind.CANDLE);
    }

    @Test
    void chicksAreRingedFromDayFiveAndTheRingIsLookedForTheDayAfter() {
        LocalDate hatched = SAT.plusDays(18);
        NestSketch.Clutch clutch = home.round().eggs(1, FIRST, 2);
        clutch.egg(1).hatched(hatched);

        assertThat(kinds(hatched.plusDays(2))).doesNotContain(Kind.RING);
        Task soon = task(hatched.plusDays(3), Kind.RING);
        assertThat(WORDS.say(soon.words())).isEqualTo("Ring chick 1");
        assertThat(WORDS.say(soon.why())).startsWith("Soon: between");
        assertThat(soon.due()).isEqualTo(hatched.plusDays(8));
        assertThat(task(hatched.plusDays(10), Kind.RING).late()).isFalse();
        assertThat(task(hatched.plusDays(11), Kind.RING).late()).isTrue();

        clutch.egg(1).ringed(hatched.plusDays(8));
        assertThat(kinds(hatched.plusDays(8))).doesNotContain(Kind.RING);
        assertThat(task(hatched.plusDays(9), Kind.RING_CHECK).due()).isEqualTo(hatched.plusDays(9));
    }

    @Test
    void aRingThatNoFootWouldTakeAnyMoreIsNotAskedFor() {
        LocalDate hatched = SAT.plusDays(18);
        home.round().eggs(1, FIRST, 2).egg(1).hatched(hatched);

        assertThat(task(hatched.plusDays(15), Kind.RING).lateBy()).isEqualTo(5);
        assertThat(kinds(hatched.plusDays(16))).doesNotContain(Kind.RING);
    }

    @Test
    void aMissedRingIsSaidForTwoWeeksWithoutBeingLateAndLapses() {
        LocalDate hatched = SAT.plusDays(18);
        home.round().eggs(1, FIRST, 2).egg(1).hatched(hatched);

        assertThat(kinds(hatched.plusDays(15))).doesNotContain(Kind.RING_MISSED);
        Task missed = task(hatched.plusDays(20), Kind.RING_MISSED);
        assertThat(WORDS.say(missed.words())).isEqualTo("Too old for a closed ring: chick 1");
        assertThat(missed.late()).isFalse();
        assertThat(kinds(hatched.plusDays(30))).doesNotContain(Kind.RING_MISSED);
    }

    /** The first look is open, the second from day nine; sat until day 21 at the latest. */
    @Test
    void aLookAgainstTheLightLapsesWhenTheEggsHaveHadTheirTime() {
        home.round().eggs(2, FIRST, 2);

        assertThat(task(SAT.plusDays(21), Kind.CANDLE).late()).isTrue();
        assertThat(kinds(SAT.plusDays(22))).doesNotContain(Kind.CANDLE);
        assertThat(kinds(SAT.plusDays(22))).contains(Kind.HATCH);
    }

    /** Latest ring on day 10, asked for to day 15. */
    @Test
    void aReminderThatNobodyCanActOnAnyMoreIsKeptInThePast() {
        LocalDate hatched = SAT.plusDays(18);
        NestSketch.Clutch clutch = home.round().eggs(1, FIRST, 2);
        clutch.egg(1).hatched(hatched);

        assertThat(lapsed(hatched.plusDays(15))).noneMatch(each -> each.kind() == Kind.RING);
        Lapsed ring = lapsed(hatched.plusDays(60)).stream()
                .filter(each -> each.kind() == Kind.RING)
                .findFirst()
                .orElseThrow();
        assertThat(ring.since()).isEqualTo(hatched.plusDays(16));
        assertThat(WORDS.say(ring.words())).isEqualTo("Ring chick 1");
        assertThat(ring.window().latest()).isEqualTo(hatched.plusDays(10));

        clutch.egg(1).ringed(hatched.plusDays(8));
        assertThat(lapsed(hatched.plusDays(60))).noneMatch(each -> each.kind() == Kind.RING);
    }

    @Test
    void aLookAgainstTheLightThatWasMissedIsKeptInThePastThoughTheEggHatchedLater() {
        NestSketch.Clutch clutch = home.round().eggs(1, FIRST, 2);
        clutch.egg(1).hatched(SAT.plusDays(25));

        assertThat(lapsed(SAT.plusDays(40)).stream().map(Lapsed::kind)).contains(Kind.CANDLE);
    }

    private List<Lapsed> lapsed(LocalDate today) {
        Room room = sketch.room();
        return Lapsed.of(room, room.cage("A1").orElseThrow(), today);
    }

    @Test
    void aSecondLookAtFullEggsIsNeverLate() {
        NestSketch.Clutch clutch = home.round().eggs(2, FIRST, 2);
        clutch.egg(1).candled(EggFinding.FULL, SAT.plusDays(5));
        clutch.egg(2).candled(EggFinding.FULL, SAT.plusDays(5));

        assertThat(task(SAT.plusDays(12), Kind.CANDLE).late()).isFalse();
        for (int day = 13; day < 40; day++) {
            assertThat(kinds(SAT.plusDays(day))).doesNotContain(Kind.CANDLE);
        }
    }

    @Test
    void noReminderOfANestThatNobodyAnswersIsLateForMonthsButWhatCanStillBeDone() {
        home.round().eggs(3, FIRST, 2).egg(1).hatched(SAT.plusDays(18));

        for (int day = 20; day < 140; day++) {
            assertThat(nests(SAT.plusDays(day)))
                    .filteredOn(task -> task.kind() != Kind.WEAN)
                    .allMatch(task -> task.lateBy() <= 30);
        }
    }

    @Test
    void aBoxWithChicksIsLookedIntoEverySecondDay() {
        LocalDate hatched = SAT.plusDays(18);
        home.round().eggs(1, FIRST, 2).egg(1).hatched(hatched);
        assertThat(kinds(hatched.plusDays(2))).contains(Kind.NEST_LOOK);

        home.nestLook(hatched.plusDays(2));
        assertThat(kinds(hatched.plusDays(3))).doesNotContain(Kind.NEST_LOOK);
        assertThat(kinds(hatched.plusDays(4))).contains(Kind.NEST_LOOK);
    }

    @Test
    void anEggThatIsOverdueIsSaidAndIsNotCalledLateBefore() {
        home.round().eggs(2, FIRST, 2);

        Task near = task(SAT.plusDays(18), Kind.HATCH);
        assertThat(WORDS.say(near.words())).isEqualTo("About to hatch: egg 1, 2");
        assertThat(task(SAT.plusDays(21), Kind.HATCH).late()).isFalse();
        Task overdue = task(FIRST.plusDays(25), Kind.HATCH);
        assertThat(WORDS.say(overdue.words())).startsWith("Overdue: egg 1");
        assertThat(overdue.late()).isTrue();
    }

    @Test
    void aHenWhoseNextEggDoesNotComeIsLookedAt() {
        home.round().eggs(2, FIRST, 2);

        assertThat(kinds(FIRST.plusDays(6))).doesNotContain(Kind.EGG_GAP);
        Task gap = task(FIRST.plusDays(7), Kind.EGG_GAP);
        assertThat(WORDS.say(gap.how().get(0))).contains("Phone the vet now").doesNotContain("drop");
    }

    @Test
    void clearEggsAreNotNaggedAbout() {
        NestSketch.Clutch clutch = home.round().eggs(3, FIRST, 2);
        clutch.egg(1).candled(EggFinding.CLEAR, SAT.plusDays(7));
        clutch.egg(2).candled(EggFinding.FULL, SAT.plusDays(7));
        clutch.egg(3).candled(EggFinding.FULL, SAT.plusDays(9));
        for (int day = 7; day < 18; day++) {
            assertThat(kinds(SAT.plusDays(day))).as("day " + day).doesNotContain(Kind.CLEAR_EGGS);
        }

        clutch.egg(2).hatched(SAT.plusDays(18));
        clutch.egg(3).hatched(SAT.plusDays(20));
        Task offered = task(SAT.plusDays(21), Kind.CLEAR_EGGS);
        assertThat(WORDS.say(offered.words())).isEqualTo("May come out: egg 1");
        assertThat(task(SAT.plusDays(60), Kind.CLEAR_EGGS).late()).isFalse();
    }

    @Test
    void aPairIsPartedStageByStage() {
        LocalDate turned = FIRST.plusDays(10);
        home.parting(turned.minusDays(1)).box(BoxStep.TURNED, turned);

        assertThat(task(turned.plusDays(2), Kind.BOX_OFF).due()).isEqualTo(turned.plusDays(2));
        assertThat(kinds(turned.plusDays(2))).doesNotContain(Kind.BOX_TURNED, Kind.HEN_OUT);

        home.box(BoxStep.OFF, turned.plusDays(2));
        assertThat(task(turned.plusDays(4), Kind.COCK_OUT).due()).isEqualTo(turned.plusDays(4));

        home.cockOut(turned.plusDays(4));
        assertThat(task(turned.plusDays(18), Kind.HEN_OUT).due()).isEqualTo(turned.plusDays(18));
    }

    @Test
    void aTaskShowsAsDoneOnTheDayOnWhichItsDeedWasRecordedAndIsGoneTheDayAfter() {
        NestSketch.Clutch clutch = home.round().eggs(2, FIRST, 2);
        clutch.egg(1).candled(EggFinding.FULL, SAT.plusDays(5));
        clutch.egg(2).candled(EggFinding.CLEAR, SAT.plusDays(5));
        assertThat(done(SAT.plusDays(5))).containsExactly("2026-05-08/A1/candle");
        assertThat(done(SAT.plusDays(6))).isEmpty();

        LocalDate hatched = SAT.plusDays(18);
        clutch.egg(1).hatched(hatched);
        assertThat(done(hatched)).containsExactly(hatched + "/A1/hatch");

        clutch.egg(1).ringed(hatched.plusDays(7));
        assertThat(done(hatched.plusDays(7)))
                .as("the day on which it was expected stays in its name")
                .containsExactly(hatched.plusDays(8) + "/A1/ring");
    }

    @Test
    void eachStageOfAPartingShowsAsDoneOnItsDay() {
        LocalDate turned = FIRST.plusDays(10);
        home.parting(turned.minusDays(1)).box(BoxStep.TURNED, turned);
        home.box(BoxStep.OFF, turned.plusDays(3));
        assertThat(done(turned.plusDays(3))).containsExactly(turned.plusDays(2) + "/A1/box-off");

        home.cockOut(turned.plusDays(5));
        assertThat(done(turned.plusDays(5))).containsExactly(turned.plusDays(5) + "/A1/cock-out");

        home.henOut(turned.plusDays(20));
        assertThat(done(turned.plusDays(20))).containsExactly(turned.plusDays(19) + "/A1/hen-out");
    }

    @Test
    void anEggThatEndsTheWaitingShowsItAsDoneOnItsDay() {
        NestSketch.Home late = home("A2");
        LocalDate first = FIRST.minusDays(10).plusDays(23);
        NestSketch.Clutch clutch = late.round();
        clutch.egg(first);
        assertThat(done(first))
                .as("two days after the last of the days expected")
                .containsExactly("2026-05-01/A2/first-egg");

        clutch.egg(first.plusDays(6));
        assertThat(done(first.plusDays(6)))
                .as("the second came after six days, and with it she sits")
                .containsExactlyInAnyOrder(first.plusDays(2) + "/A2/egg-gap", first.plusDays(5) + "/A2/unsat");
        assertThat(done(first.plusDays(7))).isEmpty();
    }

    @Test
    void aFirstEggThatIsLateIsAskedAboutAndOneInTimeIsNot() {
        LocalDate latest = FIRST.minusDays(10).plusDays(21);

        assertThat(kinds(latest)).doesNotContain(Kind.FIRST_EGG);
        Task late = task(latest.plusDays(1), Kind.FIRST_EGG);
        assertThat(late.late()).isTrue();
        assertThat(WORDS.say(late.words())).isEqualTo("No egg yet");
    }

    @Test
    void anEggOnWhichNobodySitsIsSaidFromDayFiveAndNoMoreOnceSheSits() {
        NestSketch.Clutch clutch = home.round();
        clutch.egg(FIRST);

        assertThat(kinds(FIRST.plusDays(4))).doesNotContain(Kind.UNSAT);
        Task unsat = task(FIRST.plusDays(5), Kind.UNSAT);
        assertThat(WORDS.say(unsat.words())).isEqualTo("Lying unsat: egg 1");
        assertThat(unsat.late()).isFalse();
        assertThat(task(FIRST.plusDays(8), Kind.UNSAT).late())
                .as("after a week it is stale")
                .isTrue();

        clutch.sitting(FIRST.plusDays(9));
        assertThat(kinds(FIRST.plusDays(9))).as("she was seen to sit").doesNotContain(Kind.UNSAT);
        assertThat(done(FIRST.plusDays(9))).contains(FIRST.plusDays(5) + "/A1/unsat");
        assertThat(kinds(FIRST.plusDays(12))).doesNotContain(Kind.UNSAT);
    }

    @Test
    void anUnsatEggThatIsTakenOutOrMovedShowsAsDoneWhereItLay() {
        NestSketch.Home other = home("A2");
        NestSketch.Clutch clutch = home.round();
        clutch.egg(FIRST).moved(other, FIRST.plusDays(6));
        assertThat(done(FIRST.plusDays(6))).contains(FIRST.plusDays(5) + "/A1/unsat");

        home("A3").round().egg(FIRST).removed(WhyRemoved.OTHER, FIRST.plusDays(7));
        assertThat(done(FIRST.plusDays(7))).contains(FIRST.plusDays(5) + "/A3/unsat");
    }

    @Test
    void backsAreLookedAtOnceFromDayTwentyFiveAndAQuickLookDoesNotAskAgain() {
        LocalDate hatched = SAT.plusDays(18);
        home.round().eggs(1, FIRST, 2).egg(1).hatched(hatched);
        home.quickLook(hatched.plusDays(24));

        assertThat(kinds(hatched.plusDays(24))).doesNotContain(Kind.BACKS);
        assertThat(task(hatched.plusDays(25), Kind.BACKS).due()).isEqualTo(hatched.plusDays(25));
        home.quickLook(hatched.plusDays(26));
        assertThat(kinds(hatched.plusDays(26))).as("nobody minded them").contains(Kind.BACKS);
        assertThat(task(hatched.plusDays(29), Kind.BACKS).late()).isTrue();

        home.nestLook(hatched.plusDays(28));
        assertThat(done(hatched.plusDays(28)))
                .containsExactlyInAnyOrder(hatched.plusDays(25) + "/A1/backs", hatched.plusDays(28) + "/A1/nest-look");
        home.quickLook(hatched.plusDays(30));
        assertThat(kinds(hatched.plusDays(30))).doesNotContain(Kind.BACKS);
    }

    @Test
    void aLookThatWasOnlyTickedOffIsAskedForAgainTwoDaysLater() {
        LocalDate hatched = SAT.plusDays(18);
        home.round().eggs(1, FIRST, 2).egg(1).hatched(hatched);
        String id = hatched.plusDays(2) + "/A1/nest-look";
        sketch.ticked(id, hatched.plusDays(3));

        assertThat(done(hatched.plusDays(3))).containsExactly(id);
        assertThat(kinds(hatched.plusDays(4))).doesNotContain(Kind.NEST_LOOK);
        Task again = task(hatched.plusDays(6), Kind.NEST_LOOK);
        assertThat(again.id()).isEqualTo(hatched.plusDays(5) + "/A1/nest-look");

        sketch.ticked(again.id(), hatched.plusDays(6));
        assertThat(kinds(hatched.plusDays(7))).doesNotContain(Kind.NEST_LOOK);
        assertThat(kinds(hatched.plusDays(8))).contains(Kind.NEST_LOOK);
    }

    @Test
    void theNextRoundShowsAsDoneOnTheDayOfItsFirstEgg() {
        home.round().eggs(1, FIRST, 2).egg(1).hatched(SAT.plusDays(18));
        home.round().egg(FIRST.plusDays(48));

        assertThat(done(FIRST.plusDays(48))).containsExactly(FIRST.plusDays(50) + "/A1/next-round");
    }

    @Test
    void theNextRoundIsToldOfWhileItMayBegin() {
        NestSketch.Clutch clutch = home.round().eggs(1, FIRST, 2);
        clutch.egg(1).hatched(SAT.plusDays(18));

        assertThat(kinds(FIRST.plusDays(42))).doesNotContain(Kind.NEXT_ROUND);
        assertThat(task(FIRST.plusDays(45), Kind.NEXT_ROUND).due()).isEqualTo(FIRST.plusDays(50));
        assertThat(task(FIRST.plusDays(60), Kind.NEXT_ROUND).late()).isFalse();
        assertThat(kinds(FIRST.plusDays(61))).doesNotContain(Kind.NEXT_ROUND);
    }

    @Test
    void whatIsLateComesFirstAndWhatIsSoonLast() {
        home.round().eggs(5, FIRST, 2);
        LocalDate hatched = SAT.plusDays(3);
        home("A2").round().eggs(1, hatched.minusDays(18), 2).egg(1).hatched(hatched);

        List<Task> tasks = nests(SAT.plusDays(8));
        assertThat(tasks.get(0).late()).isTrue();
        assertThat(tasks.get(tasks.size() - 1).late()).isFalse();
    }

    @Test
    void theSitterLooksIntoABoxOnlyWhereTheOwnerAllowedItAndIsToldSoInPlainSentences() {
        LocalDate hatched = SAT.plusDays(18);
        home.round().eggs(1, FIRST, 2).egg(1).hatched(hatched);
        assertThat(sitters(hatched.plusDays(2))).isEmpty();

        home.allowed(Permission.LOOK_IN);
        assertThat(sitters(hatched.plusDays(1))).isEmpty();
        List<Task> looks = sitters(hatched.plusDays(3));
        assertThat(looks)
                .singleElement()
                .matches(task -> task.kind() == Kind.NEST_LOOK)
                .matches(task -> task.id().equals(hatched.plusDays(2) + "/A1/nest-look"));
        Task look = looks.get(0);
        Stream.of(look.how().stream(), look.brief().stream(), Stream.of(look.words(), look.why()))
                .flatMap(messages -> messages)
                .flatMap(message -> ReadingGrade.sentences(WORDS.say(message)).stream())
                .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                        .as(sentence)
                        .isLessThanOrEqualTo(6));

        home.nestLook(hatched.plusDays(3));
        assertThat(sitters(hatched.plusDays(3)))
                .as("done that day")
                .singleElement()
                .matches(task -> task.state() == Task.State.DONE && task.id().equals(look.id()));
        assertThat(DailyList.of(sketch.room(), hatched.plusDays(3), Audience.SITTER).stream()
                        .filter(task -> task.kind() == Kind.MORNING)
                        .flatMap(task -> task.how().stream())
                        .map(WORDS::say))
                .as("once is enough")
                .contains("Leave the nest box shut, a bird may be inside.")
                .doesNotContain("You may look in the nest box once.");
        assertThat(sitters(hatched.plusDays(4))).isEmpty();
    }

    @Test
    void theBoxIsLeftShutOnEveryDayOnWhichNoChickIsDueALook() {
        LocalDate hatched = SAT.plusDays(18);
        home.allowed(Permission.LOOK_IN);
        home.round().eggs(2, FIRST, 2).egg(1).hatched(hatched);

        for (int day = -10; day < 30; day++) {
            LocalDate date = hatched.plusDays(day);
            boolean due = !sitters(date).isEmpty();
            List<String> how = DailyList.of(sketch.room(), date, Audience.SITTER).stream()
                    .filter(task -> task.kind() == Kind.MORNING)
                    .flatMap(task -> task.how().stream())
                    .map(WORDS::say)
                    .toList();
            assertThat(how.contains("You may look in the nest box once."))
                    .as("day %d", day)
                    .isEqualTo(due);
            assertThat(how.contains("Leave the nest box shut, a bird may be inside."))
                    .isEqualTo(!due);
            assertThat(DailyList.looksIn(sketch.room(), date, "A1")).isEqualTo(due);
        }
    }

    @Test
    void aChickThatHatchesWhileTheOwnerIsAwayIsReckonedWith() {
        home.allowed(Permission.LOOK_IN);
        home.round().eggs(1, FIRST, 2);
        LocalDate leaves = SAT.plusDays(10);
        LocalDate hatched = SAT.plusDays(18);
        assertThat(sitters(hatched.plusDays(8))).as("nobody is away").isEmpty();

        sketch.away(leaves, hatched.plusDays(60));

        assertThat(sitters(SAT.plusDays(17))).isEmpty();
        assertThat(sitters(hatched.plusDays(8))).singleElement().matches(task -> task.kind() == Kind.NEST_LOOK);
        assertThat(seen(hatched.plusDays(40)))
                .as("by then it may have left the box")
                .isNotEqualTo(seen(hatched.plusDays(8)));
    }

    private String seen(LocalDate day) {
        return DailyList.of(sketch.room(), day, Audience.SITTER).stream()
                .filter(task -> task.kind() == Kind.MORNING)
                .flatMap(task -> task.see().stream())
                .map(WORDS::say)
                .findFirst()
                .orElse("");
    }

    @Test
    void theSitterIsAskedForNothingElseOfANestWhateverIsAllowed() {
        home.allowed(Permission.LOOK_IN);
        NestSketch.Clutch clutch = home.round().eggs(5, FIRST, 2);
        clutch.egg(1).hatched(SAT.plusDays(18));
        clutch.egg(2).candled(EggFinding.CLEAR, SAT.plusDays(6));
        for (int day = 0; day < 90; day++) {
            assertThat(sitters(FIRST.plusDays(day)).stream().map(Task::kind))
                    .as("day %d", day)
                    .isSubsetOf(Kind.NEST_LOOK);
        }
    }

    private List<Task> sitters(LocalDate day) {
        return DailyList.of(sketch.room(), day, Audience.SITTER).stream()
                .filter(task -> task.kind().isOfANest())
                .toList();
    }

    private NestSketch.Home home(String name) {
        return sketch.home(name, FIRST.minusDays(12)).box(BoxStep.ON, FIRST.minusDays(10));
    }

    private List<Kind> kinds(LocalDate day) {
        return nests(day).stream().filter(Task::isOpen).map(Task::kind).toList();
    }

    private Task task(LocalDate day, Kind kind) {
        List<Task> found = nests(day).stream()
                .filter(task -> task.isOpen() && task.kind() == kind)
                .toList();
        assertThat(found).as("%s on %s", kind, day).hasSize(1);
        return found.get(0);
    }

    private List<String> done(LocalDate day) {
        return nests(day).stream()
                .filter(task -> task.state() == Task.State.DONE)
                .map(Task::id)
                .toList();
    }

    private List<Task> nests(LocalDate day) {
        Room room = sketch.room();
        return DailyList.of(room, day, Audience.OWNER).stream()
                .filter(task -> task.kind().isOfANest())
                .toList();
    }
}
