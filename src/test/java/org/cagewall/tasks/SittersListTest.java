package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Keeps;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.tasks.RoomSketch.CageSketch;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the sitter is asked to do, and what never. */
class SittersListTest {

    private static final Words WORDS = Words.english();

    /** Words of what takes a keeper's hand: a box opened, a bird caught, a medicine given. */
    private static final Pattern KEEPERS_WORK = Pattern.compile(
            "look in the|open|lift|catch|caught|hold|medicine|treat|dose|drop|drops|spot-on|candle|ring");

    @Test
    void inTheMorningTheSitterFeedsWatersLooksAndCounts() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.COCK).bird(Sex.HEN);

        Task task = morning(sketch.room()).get(0);

        assertThat(task.id()).isEqualTo("2026-04-14/A1/morning");
        assertThat(said(task.how()))
                .containsExactly(
                        "Tip the husks out into the bin, with your mask on. Do not blow.",
                        "Then fill the seed dish.",
                        "Rinse the water dish and fill it.",
                        "Look at each bird.",
                        "Count them: does the number match?");
        assertThat(seen(task)).isEqualTo("2 birds");
        assertThat(task.state()).isEqualTo(Task.State.OPEN);
    }

    @Test
    void aPairWithABoxShowsOneBirdOrTwoSinceTheHenMayBeInside() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 4);
        sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.COCK).bird(Sex.HEN).box(BoxStep.ON);
        sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.COCK).bird(Sex.HEN).box(BoxStep.TURNED);
        sketch.cage("A3", 1, 3, Use.BREEDING).bird(Sex.HEN).box(BoxStep.ON);
        sketch.cage("A4", 1, 4, Use.BREEDING).bird(Sex.COCK).box(BoxStep.ON);

        List<Task> tasks = morning(sketch.room());

        assertThat(tasks.stream().map(SittersListTest::seen))
                .containsExactly(
                        "1 or 2 birds, box shut",
                        "2 birds, box turned",
                        "1 bird, or none, box shut",
                        "1 cock, box shut");
        assertThat(said(tasks.get(0).how())).contains("Leave the nest box shut, a bird may be inside.");
    }

    @Test
    void whatShouldBeSeenIsSaidInPlainWords() {
        RoomSketch sketch = new RoomSketch().wall("North", 2, 6);
        sketch.cage("A1", 1, 1, Use.STOCK).bird(Sex.HEN);
        sketch.cage("A2", 1, 2, Use.STOCK).bird(Sex.COCK);
        sketch.cage("A3", 1, 3, Use.STOCK)
                .bird(Sex.HEN)
                .bird(Sex.HEN)
                .keeps(Keeps.HENS)
                .flock(2);
        sketch.cage("A4", 1, 4, Use.STOCK);
        sketch.cage("A5", 1, 5, Use.FLIGHT).flock(14);
        sketch.cage("A6", 1, 6, Use.NURSERY)
                .bird(Sex.UNKNOWN, "2026-03-01")
                .bird(Sex.UNKNOWN, "2026-03-03")
                .bird(Sex.COCK, "2024")
                .flock(2);
        sketch.cage("B1", 2, 1, Use.NURSERY).bird(Sex.UNKNOWN, "2026-03-01").bird(Sex.UNKNOWN, "2026");
        sketch.cage("B2", 2, 2, Use.STOCK).bird(Sex.UNKNOWN);

        assertThat(morning(sketch.room()).stream().map(task -> task.cage().orElseThrow() + ": " + seen(task)))
                .containsExactly(
                        "A1: 1 hen",
                        "A2: 1 cock",
                        "A3: 4 hens",
                        "A6: 5 birds, some young",
                        "B1: 2 young birds",
                        "B2: 1 bird",
                        "A5: 14 birds");
    }

    @Test
    void anEmptyCageAsksForNothingAndItsRowSaysHowManyThereAre() {
        RoomSketch sketch = new RoomSketch().wall("North", 2, 4);
        sketch.cage("A1", 1, 1, Use.STOCK).bird(Sex.HEN);
        sketch.cage("A2", 1, 2, Use.STOCK);
        sketch.cage("A3", 1, 3, Use.BREEDING);
        sketch.cage("A4", 1, 4, Use.FLIGHT);
        sketch.cage("B1", 2, 1, Use.STOCK);

        List<Task> tasks = DailyList.of(sketch.room(), DAY, Audience.SITTER);

        assertThat(tasks.stream().map(Task::id)).containsExactly("2026-04-14/A1/morning", "2026-04-14/A1/evening-row");
        assertThat(WORDS.say(tasks.get(1).words())).isEqualTo("Walk past A1 to A4, 3 empty");
        assertThat(DailyList.of(sketch.room(), DAY, Audience.OWNER).stream().filter(task -> task.kind() == Kind.CHECK))
                .as("the owner counts no birds where there are none")
                .singleElement()
                .matches(task -> task.cage().orElseThrow().equals("A1"));
    }

    @Test
    void softFoodIsGivenOnlyWhereTheOwnerSaysSoAndComesOutInTheEvening() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 3);
        sketch.cage("A1", 1, 1, Use.BREEDING)
                .bird(Sex.HEN)
                .feed(
                        new FeedLine("seed", "2 scoops", DayPart.MORNING),
                        new FeedLine("soft food", "1 scoop", DayPart.MORNING),
                        new FeedLine("greens", "a leaf", DayPart.EVENING));
        sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.HEN);
        sketch.cage("A3", 1, 3, Use.BREEDING).bird(Sex.HEN).allowed(Permission.SOFT_FOOD);

        List<Task> tasks = DailyList.of(sketch.room(), DAY, Audience.SITTER);

        assertThat(said(tasks.get(0).how()))
                .contains("Put in the seed dish: seed, 2 scoops.", "Give soft food: 1 scoop.")
                .doesNotContain("Give greens: a leaf.");
        assertThat(said(tasks.get(1).how())).noneMatch(sentence -> sentence.contains("soft food"));
        assertThat(said(tasks.get(2).how())).contains("You may give a bit of soft food.");
        assertThat(tasks.stream().skip(3).map(Task::id))
                .containsExactly(
                        "2026-04-14/A1/evening-food", "2026-04-14/A3/evening-food", "2026-04-14/A1/evening-row");
        assertThat(said(tasks.get(3).how()))
                .containsExactly("Take out what is left of the soft food.", "Give greens: a leaf.");
    }

    @Test
    void aWeaningCageSaysThatABrightChickOnTheFloorIsFine() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2);
        sketch.cage("A1", 1, 1, Use.NURSERY).flock(3);
        sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.HEN);

        List<Task> tasks = morning(sketch.room());

        assertThat(said(tasks.get(0).how())).contains("A lively chick on the floor is fine here.");
        assertThat(said(tasks.get(1).how())).noneMatch(sentence -> sentence.contains("chick"));
    }

    @Test
    void aCageLeftInPeaceIsOnlyLookedAtAndTheNewOrSickBirdsComeLastOfAll() {
        RoomSketch sketch = new RoomSketch().wall("North", 2, 2);
        CageSketch alone = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN).box(BoxStep.ON);
        sketch.cage("A2", 1, 2, Use.QUARANTINE).flock(2);
        sketch.cage("B1", 2, 1, Use.FLIGHT).flock(9);
        sketch.cage("B2", 2, 2, Use.BREEDING).bird(Sex.HEN);
        sketch.away(DAY.minusDays(2), DAY.plusDays(3), alone);

        List<Task> tasks = morning(sketch.room());

        assertThat(tasks.stream().map(task -> task.cage().orElseThrow())).containsExactly("B2", "B1", "A1", "A2");
        assertThat(said(tasks.get(2).how()))
                .containsExactly(
                        "Look from a step away.",
                        "Do not put a hand in.",
                        "Is a dish low? Phone now. No answer? Then fill it, with a slow hand.");
        assertThat(said(tasks.get(3).how())).contains("Wash your hands when you are done here.");
    }

    @Test
    void noHandGoesFromTheNewOrSickBirdsToAHealthyOne() {
        RoomSketch sketch = new RoomSketch().wall("North", 2, 2);
        FeedLine greens = new FeedLine("greens", "a leaf", DayPart.EVENING);
        sketch.cage("A1", 1, 1, Use.HOSPITAL).flock(2).feed(greens);
        sketch.cage("A2", 1, 2, Use.STOCK).flock(2).feed(greens);
        sketch.cage("B1", 2, 1, Use.FLIGHT).flock(9).feed(greens);

        assertThat(DailyList.of(sketch.room(), DAY, Audience.SITTER).stream()
                        .filter(task -> task.kind() == Kind.MORNING || task.kind() == Kind.EVENING_FOOD)
                        .map(task -> task.cage().orElseThrow()))
                .as("morning and evening")
                .containsExactly("A2", "B1", "A1", "A2", "B1", "A1");
    }

    @Test
    void whoeverOnlyLookedHasNotFedThem() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 4).away(DAY, DAY.plusDays(2));
        CageSketch owner = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        CageSketch friend = sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.HEN);
        CageSketch first = sketch.cage("A3", 1, 3, Use.BREEDING).bird(Sex.HEN);
        CageSketch second = sketch.cage("A4", 1, 4, Use.BREEDING).bird(Sex.HEN);
        sketch.by("Ines").check(owner, DAY, Answer.WELL, DayPart.MORNING);
        sketch.by("Joan").check(friend, DAY, Answer.WELL, DayPart.MORNING);
        sketch.by("Tomas").rowWalked(DAY, DayPart.MORNING, first, second);

        assertThat(morning(sketch.room()).stream().map(Task::state)).containsOnly(Task.State.OPEN);

        sketch.check(first, DAY, Answer.WELL, DayPart.MORNING).done("2026-04-14/A2/morning");

        assertThat(morning(sketch.room()).stream().map(Task::state))
                .containsExactly(Task.State.OPEN, Task.State.DONE, Task.State.DONE, Task.State.OPEN);
    }

    @Test
    void aBirdReportedIsFedAllTheSameAndNobodyHasToSayThatAllIsWell() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        CageSketch cage = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        sketch.check(cage, DAY, Answer.DIFFERENT, DayPart.MORNING);

        Task task = morning(sketch.room()).get(0);
        assertThat(task.state()).isEqualTo(Task.State.OPEN);
        assertThat(said(task.how()))
                .first()
                .isEqualTo("You told of this cage. Does it have food and water now? Then touch Done.");
    }

    @Test
    void aCageLeftInPeaceNamesWhoFeedsIt() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        CageSketch alone = sketch.cage("A1", 1, 1, Use.QUARANTINE).bird(Sex.HEN);
        sketch.feeder("Joan").away(DAY.minusDays(2), DAY.plusDays(3), alone);

        Task task = morning(sketch.room()).get(0);

        assertThat(WORDS.say(task.why())).isEqualTo("Joan feeds these birds. Put no hand in.");
        assertThat(said(task.how()))
                .last()
                .isEqualTo("Is a dish low? Phone Joan now. No answer? Then fill it, with a slow hand.");
    }

    @Test
    void aCageLeftInPeaceIsLookedAtByAnybody() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        CageSketch alone = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        sketch.away(DAY.minusDays(2), DAY.plusDays(3), alone).check(alone, DAY);

        assertThat(morning(sketch.room()).get(0).state()).isEqualTo(Task.State.DONE);
    }

    @Test
    void aLookInTheEveningClosesTheEvening() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2);
        CageSketch first = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        CageSketch second = sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.HEN);
        sketch.check(first, DAY).check(second, DAY.minusDays(1));

        sketch.check(first, DAY, Answer.WELL, DayPart.EVENING);
        assertThat(row(sketch).state()).isEqualTo(Task.State.OPEN);

        sketch.check(second, DAY, Answer.DIFFERENT, DayPart.EVENING);
        assertThat(row(sketch).state()).isEqualTo(Task.State.DONE);
    }

    private static Task row(RoomSketch sketch) {
        return DailyList.of(sketch.room(), DAY, Audience.SITTER).get(2);
    }

    @Test
    void theNewestAnswerHolds() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        CageSketch cage = sketch.cage("A1", 1, 1, Use.BREEDING).bird(Sex.HEN);
        sketch.notDone("2026-04-14/A1/morning", "no time");
        assertThat(morning(sketch.room()).get(0).state()).isEqualTo(Task.State.NOT_DONE);
        assertThat(morning(sketch.room()).get(0).closing().flatMap(Task.Closing::why))
                .contains("no time");

        sketch.check(cage, DAY, Answer.DIFFERENT, DayPart.MORNING).done("2026-04-14/A1/morning");

        Task task = morning(sketch.room()).get(0);
        assertThat(task.state()).isEqualTo(Task.State.DONE);
        assertThat(task.isDifferent()).isTrue();
    }

    @Test
    void aRowIsWalkedUnderItsFirstCage() {
        RoomSketch sketch = new RoomSketch().wall("North", 2, 3);
        sketch.cage("A2", 1, 2, Use.BREEDING).bird(Sex.HEN);
        sketch.cage("A3", 1, 3, Use.BREEDING).bird(Sex.HEN);
        sketch.cage("B1", 2, 1, Use.BREEDING);
        sketch.cage("Yard", Use.FLIGHT).flock(6);

        List<Task> evening = DailyList.of(sketch.room(), DAY, Audience.SITTER).stream()
                .filter(task -> task.part().equals(Optional.of(DayPart.EVENING)))
                .toList();

        assertThat(evening.stream().map(Task::id))
                .containsExactly("2026-04-14/A2/evening-row", "2026-04-14/Yard/evening");
        assertThat(evening.get(0).row()).contains(new Task.WallRow("North", 1, List.of("A2", "A3")));
        assertThat(WORDS.say(evening.get(0).words())).isEqualTo("Walk past A2 to A3");
    }

    static Stream<Integer> seeds() {
        return IntStream.rangeClosed(1, 60).boxed();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void inAnyRoomEachCageHasOneLineAMorningInWalkingOrder(int seed) {
        Room room = any(seed).room();
        List<Task> tasks = DailyList.of(room, DAY, Audience.SITTER);

        List<String> walked =
                morning(room).stream().map(task -> task.cage().orElseThrow()).toList();
        List<String> walk =
                room.walk().filter(cage -> room.isLivedIn(cage)).map(Cage::name).toList();
        assertThat(walked).containsExactlyInAnyOrderElementsOf(walk);
        for (int turn = 0; turn <= 3; turn++) {
            int now = turn;
            List<String> ofThisTurn =
                    walked.stream().filter(name -> turn(room, name) == now).toList();
            assertThat(ofThisTurn).isSortedAccordingTo(Comparator.comparingInt(walk::indexOf));
        }
        assertThat(walked.stream().map(name -> turn(room, name)).toList()).isSorted();

        Set<String> ids = new HashSet<>();
        assertThat(tasks).allMatch(task -> ids.add(task.id()), "its id is its own");
        assertThat(tasks)
                .allMatch(
                        task -> task.id()
                                .equals("2026-04-14/" + task.cage().orElseThrow() + "/"
                                        + task.kind().word()),
                        "its id follows from day, cage and kind");
        assertThat(DailyList.of(any(seed).room(), DAY, Audience.SITTER)).isEqualTo(tasks);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void inAnyRoomTheSitterIsNeverAskedForAKeepersWork(int seed) {
        Room room = any(seed).room();
        for (Task task : DailyList.of(room, DAY, Audience.SITTER)) {
            Cage cage = room.cage(task.cage().orElseThrow()).orElseThrow();
            for (String sentence : sentences(task)) {
                if (!cage.routine().allows(Permission.LOOK_IN)) {
                    assertThat(sentence.toLowerCase(Locale.ROOT).split("[^a-z-]+"))
                            .as("words of: %s", sentence)
                            .noneMatch(word -> KEEPERS_WORK.matcher(word).matches());
                    assertThat(sentence).doesNotContain("in the nest box");
                }
            }
        }
    }

    @Test
    void everySentenceForTheSitterIsPlainEnoughForTheSixthSchoolYear() {
        Set<String> used = new TreeSet<>();
        Stream.concat(
                        seeds().flatMap(seed -> DailyList.of(any(seed).room(), DAY, Audience.SITTER).stream())
                                .flatMap(SittersListTest::messages),
                        Alarms.of(any(1).room(), DAY).rules().stream())
                .distinct()
                .forEach(message -> {
                    used.add(message.key());
                    ReadingGrade.sentences(WORDS.say(message))
                            .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                                    .as("the grade of: %s", sentence)
                                    .isLessThanOrEqualTo(6));
                });

        assertThat(used)
                .as("the rooms drawn bring up every kind of sentence")
                .contains(
                        "tasks.how-alone-dish",
                        "tasks.how-empty-phone",
                        "tasks.how-box-faces-wall",
                        "tasks.how-weaning-phone",
                        "tasks.how-hands",
                        "tasks.how-flight",
                        "tasks.how-give-amount",
                        "tasks.how-dish-amount",
                        "tasks.how-take-out",
                        "tasks.how-soft-food-allowed",
                        "tasks.do-evening",
                        "tasks.do-evening-food",
                        "tasks.see-box-shut",
                        "tasks.see-some-young");
    }

    private static int turn(Room room, String name) {
        Cage cage = room.cage(name).orElseThrow();
        if (cage.use().isSickroom()) {
            return 3;
        }
        if (room.absenceOn(DAY)
                .filter(absence -> absence.leaveAlone().contains(cage.id()))
                .isPresent()) {
            return 2;
        }
        return cage.use() == Use.FLIGHT ? 1 : 0;
    }

    private static Stream<Message> messages(Task task) {
        return Stream.of(
                        task.how().stream(),
                        task.brief().stream(),
                        task.see().stream().map(see -> Message.of("tasks.see-should", see)),
                        task.see().stream(),
                        Stream.of(task.words(), task.why()))
                .flatMap(each -> each);
    }

    private static List<String> sentences(Task task) {
        return messages(task)
                .flatMap(message -> ReadingGrade.sentences(WORDS.say(message)).stream())
                .toList();
    }

    @Test
    void inTheEveningTheBirdsThatSomebodyElseFeedsAreLookedAtFromAStepAwayToo() {
        RoomSketch sketch = new RoomSketch();
        sketch.wall("North", 2, 2);
        CageSketch alone = sketch.cage("A1", 1, 1, Use.QUARANTINE).bird(Sex.HEN, "2024");
        CageSketch mixed = sketch.cage("B1", 2, 1, Use.STOCK).bird(Sex.HEN, "2024");
        sketch.cage("B2", 2, 2, Use.STOCK).bird(Sex.HEN, "2024");
        sketch.away(DAY.minusDays(1), DAY.plusDays(1), alone, mixed);

        List<Task> rows = DailyList.of(sketch.room(), DAY, Audience.SITTER).stream()
                .filter(task -> task.kind() == Kind.EVENING_ROW)
                .toList();

        assertThat(rows.stream().map(Task::id))
                .containsExactly("2026-04-14/A1/evening-row", "2026-04-14/B1/evening-row");
        assertThat(said(rows.get(0).how()))
                .contains("Look from a step away.", "Do not put a hand in.")
                .doesNotContain("Is a dish empty? Fill it. Else do not touch the cages.");
        assertThat(said(rows.get(1).how())).contains("Put no hand into B1.");
    }

    /** A room drawn by chance, the same for the same seed. */
    private static RoomSketch any(int seed) {
        Random chance = new Random(seed);
        RoomSketch sketch = new RoomSketch();
        List<CageSketch> cages = new ArrayList<>();
        int walls = 1 + chance.nextInt(2);
        for (int wall = 1; wall <= walls; wall++) {
            sketch.wall("Wall " + wall, 4, 6);
            for (int row = 1; row <= 4; row++) {
                for (int column = 1; column <= 6; column++) {
                    if (chance.nextInt(4) > 0) {
                        cages.add(furnished(
                                chance,
                                sketch.cage(
                                        "ABCDEFGH".charAt(4 * wall + row - 5) + "" + column,
                                        row,
                                        column,
                                        any(chance, Use.values()))));
                    }
                }
            }
        }
        cages.add(furnished(chance, sketch.cage("Yard", Use.FLIGHT)));
        if (chance.nextBoolean()) {
            sketch.away(DAY.minusDays(3), DAY.plusDays(5), any(chance, cages), any(chance, cages));
        }
        for (int i = 0; i < 10; i++) {
            sketch.check(any(chance, cages), DAY, any(chance, Answer.values()), any(chance, DayPart.values()));
        }
        return sketch;
    }

    private static CageSketch furnished(Random chance, CageSketch cage) {
        int birds = chance.nextInt(4);
        for (int i = 0; i < birds; i++) {
            cage.bird(any(chance, Sex.values()), chance.nextBoolean() ? "2024" : "2026-03-01");
        }
        if (chance.nextInt(3) == 0) {
            cage.flock(chance.nextInt(20));
        }
        if (chance.nextBoolean()) {
            cage.box(any(chance, BoxStep.values()));
        }
        if (chance.nextInt(3) == 0) {
            cage.feed(
                    new FeedLine("seed", "1 scoop", any(chance, DayPart.values())),
                    new FeedLine(
                            chance.nextBoolean() ? "soft food" : "greens", "1 spoon", any(chance, DayPart.values())));
        }
        if (chance.nextInt(3) == 0) {
            cage.allowed(any(chance, Permission.values()));
        }
        return cage;
    }

    private static <T> T any(Random chance, T[] of) {
        return of[chance.nextInt(of.length)];
    }

    private static <T> T any(Random chance, List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }

    private static List<Task> morning(Room room) {
        return DailyList.of(room, DAY, Audience.SITTER).stream()
                .filter(task -> task.kind() == Kind.MORNING)
                .toList();
    }

    private static List<String> said(List<Message> messages) {
        return messages.stream().map(WORDS::say).toList();
    }

    private static String seen(Task task) {
        return WORDS.say(task.see().orElseThrow());
    }
}
