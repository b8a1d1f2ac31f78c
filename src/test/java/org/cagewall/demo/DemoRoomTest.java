package org.cagewall.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.ChickDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.PartingDeed;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.Outcome;
import org.cagewall.handover.Review;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartedFor;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The invented birdroom is one that the record takes, on any day of any year. */
class DemoRoomTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"2026-04-14", "2024-02-29"})
    void theRecordTakesTheDemoRoomAndReadsItTheSameFromDisk(LocalDate today) {
        assertThatItIsReadTheSameFromDisk(today);
    }

    @Tag("slow")
    @ParameterizedTest
    @ValueSource(strings = {"2026-01-01", "2027-03-01", "2030-12-31"})
    void theRecordTakesTheDemoRoomOnOtherDaysAsWell(LocalDate today) {
        assertThatItIsReadTheSameFromDisk(today);
    }

    private void assertThatItIsReadTheSameFromDisk(LocalDate today) {
        Desk desk = opened(today);
        Room room = recorded(desk, DemoRoom.lines(today));
        desk.close();

        try (Desk again = opened(today)) {
            assertThat(again.room()).isEqualTo(room);
        }
    }

    @Test
    void theDemoRoomIsTheSameEachTimeItIsMade() {
        assertThat(DemoRoom.lines(TODAY)).isEqualTo(DemoRoom.lines(TODAY));
        assertThat(DemoRoom.lines(TODAY)).allSatisfy(line -> assertThat(Lines.read(Lines.write(line), TODAY))
                .isEqualTo(new Lines.Understood(line, Optional.empty())));
    }

    @Test
    void theDemoRoomHoldsWhatIsPromised() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));

            assertThat(room.walls()).hasSize(2);
            assertThat(room.walk()).hasSize(27).allMatch(cage -> cage.place().isPresent());
            assertThat(room.walk().filter(cage -> cage.use() == Use.FLIGHT)).hasSize(2);
            assertThat(room.walk().filter(cage -> cage.use() == Use.QUARANTINE)).hasSize(1);
            assertThat(room.walk().mapToInt(room::headsIn).sum()).isBetween(58, 62);
            assertThat(room.cages().stream().mapToInt(Cage::flock).sum()).isEqualTo(6);
            assertThat(room.people())
                    .extracting(person -> person.role())
                    .containsExactly(Role.OWNER, Role.KEEPER, Role.SITTER);
            assertThat(room.cages()).allMatch(cage -> !cage.routine().feed().isEmpty());
        }
    }

    @Test
    void pairsOfTheDemoRoomStandAtEveryStageThatCanBeRecorded() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));

            assertThat(pair(room, "A5").rounds()).isEmpty();
            assertThat(cage(room, "A5").box().hanging()).isEmpty();
            assertThat(cage(room, "A2").box().isOn()).isTrue();
            assertThat(pair(room, "A2").rounds()).isEmpty();
            assertThat(pair(room, "A3").eggs()).isEqualTo(1);
            assertThat(pair(room, "A1").eggs()).isEqualTo(5);
            assertThat(pair(room, "A4").openRound())
                    .hasValueSatisfying(round -> assertThat(round.number()).isEqualTo(2));
            assertThat(cage(room, "B1").box().isTurned()).isTrue();
            assertThat(cage(room, "B2").box().off()).isPresent();
            assertThat(room.together(pair(room, "B2"))).isTrue();
            assertThat(room.cockOut(pair(room, "B3"))).isPresent();
            assertThat(room.headsIn(cage(room, "B4"))).isEqualTo(1);
            assertThat(pair(room, "B4").eggs()).isEqualTo(4);
            assertThat(room.nest(cage(room, "B6")).chicksInBox()).hasSize(5);
            assertThat(room.nest(cage(room, "C4")).chicks()).hasSize(3);
            assertThat(room.nest(cage(room, "C4")).eggs()).hasSize(3);
            assertThat(room.nest(cage(room, "C2")).eggs())
                    .extracting(egg -> egg.name(cage(room, "C2").id()))
                    .contains("A");
            assertThat(pair(room, "B1").parting()).isPresent();
            assertThat(room.plans()).hasSize(1);
        }
    }

    @Test
    void theOwnerIsAtHomeWasAwayForAFewDaysAndLeavesInSomeWeeks() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));

            assertThat(room.absenceOn(TODAY)).isEmpty();
            assertThat(room.absenceAfter(TODAY)).hasValueSatisfying(absence -> {
                assertThat(absence.from()).isBetween(TODAY.plusWeeks(3), TODAY.plusWeeks(8));
                assertThat(absence.to()).isEqualTo(absence.from().plusDays(13));
                assertThat(absence.vet().orElseThrow()).contains("01632 960190");
            });
            assertThat(room.absenceBefore(TODAY)).hasValueSatisfying(absence -> {
                assertThat(absence.from().datesUntil(absence.last().plusDays(1)))
                        .hasSizeBetween(3, 7);
                assertThat(absence.ended()).contains(absence.to().plusDays(1));
            });
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {DemoRoom.LEFT, DemoRoom.BACK + 1})
    void theSitterHadNoMoreThanThreeNestsToLeaveInPeace(int day) {
        LocalDate then = TODAY.minusDays(day);
        try (Desk desk = opened(then)) {
            Room room = recorded(
                    desk,
                    lines().filter(line -> !line.told().on().isAfter(then)).toList());

            assertThat(room.cages().stream()
                            .map(room::nest)
                            .filter(nest -> !nest.eggs().isEmpty()
                                    || !nest.chicksInBox().isEmpty()))
                    .hasSizeBetween(2, 3);
        }
    }

    @Test
    void theReviewShowsTheSittersDays() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));
            Absence absence = room.absenceBefore(TODAY).orElseThrow();
            Review review = Review.of(room, log(desk), absence.from(), absence.last());

            assertThat(review.different()).hasSizeBetween(2, 3);
            assertThat(review.notDone()).hasSizeBetween(2, 8);
            assertThat(review.unvisited()).singleElement().satisfies(missed -> assertThat(missed.cage())
                    .isEqualTo("E2"));
            assertThat(review.phoned()).hasSize(2);
            assertThat(log(desk)).filteredOn(LogEntry::isStruck).hasSize(1);
        }
    }

    @Test
    void nothingIsRecordedByTheOwnerFromAwayAndTheFriendComesInOneRhythm() {
        assertThat(lines().filter(line -> line.told().by().equals(Optional.of(DemoRoom.OWNER)))
                        .map(line -> daysAgo(line)))
                .noneMatch(day -> day <= DemoRoom.LEFT && day > DemoRoom.BACK);
        List<Long> visits = lines().filter(line -> line.told().by().equals(Optional.of(DemoRoom.KEEPER)))
                .map(line -> daysAgo(line))
                .distinct()
                .toList();

        assertThat(visits).hasSizeGreaterThan(2).first().isEqualTo((long) DemoRoom.LEFT);
        for (int i = 1; i < visits.size(); i++) {
            assertThat(visits.get(i - 1) - visits.get(i)).isEqualTo(2);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"2026-04-14", "2026-01-15", "2026-03-01"})
    void aChickThatIsRingedLaterWearsAHigherNumber(LocalDate today) {
        List<Line> ringed = DemoRoom.lines(today).stream()
                .filter(line -> line.deed() instanceof ChickDeed.ChickRinged)
                .toList();
        assertThat(ringed).hasSizeGreaterThan(10);
        assertThat(ringed).extracting(line -> line.told().on()).isSorted();
        assertThat(ringed)
                .extracting(line -> ((ChickDeed.ChickRinged) line.deed()).ring())
                .isSorted()
                .doesNotHaveDuplicates()
                .allMatch(ring -> ring.startsWith(DemoBirds.OWN_CODE + " "));
    }

    @Test
    void boughtBirdsWearTheirBreedersCodeAndThoseBredHereTheOwners() {
        List<BirdDeed.BirdAdded> birds =
                deeds(BirdDeed.BirdAdded.class).map(Map.Entry::getValue).toList();

        assertThat(birds).filteredOn(bird -> bird.origin().isPresent()).isNotEmpty();
        assertThat(birds).allSatisfy(bird -> assertThat(bird.bird().startsWith(DemoBirds.OWN_CODE + " "))
                .as(bird.bird())
                .isEqualTo(bird.origin().isEmpty()));
    }

    /**
     * Green is dominant over blue, and a young bird has of each parent one of its two dark factors: Mendel's rules, as
     * every book on colour breeding has them; from memory.
     */
    @Test
    void weanedYoungHaveColoursThatTheirParentsCanGive() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));
            List<Bird> young = room.birds().stream()
                    .filter(bird -> bird.father().isPresent())
                    .toList();

            assertThat(young).hasSize(4).allSatisfy(bird -> {
                String colour = bird.colour().orElseThrow();
                String father = colourOf(room, bird.father());
                String mother = colourOf(room, bird.mother());
                assertThat(isGreen(colour)).isIn(false, isGreen(father) || isGreen(mother));
                assertThat(dark(colour))
                        .isBetween(
                                leastGiven(dark(father)) + leastGiven(dark(mother)),
                                mostGiven(dark(father)) + mostGiven(dark(mother)));
            });
        }
    }

    private static String colourOf(Room room, Optional<Long> parent) {
        return room.bird(parent.orElseThrow()).flatMap(Bird::colour).orElseThrow();
    }

    private static final List<String> GREENS = List.of("light green", "dark green", "olive");
    private static final List<String> BLUES = List.of("skyblue", "cobalt", "mauve");

    private static boolean isGreen(String colour) {
        return GREENS.contains(colour);
    }

    private static int dark(String colour) {
        int dark = Math.max(GREENS.indexOf(colour), BLUES.indexOf(colour));
        assertThat(dark).as(colour).isNotNegative();
        return dark;
    }

    private static int leastGiven(int dark) {
        return dark == 2 ? 1 : 0;
    }

    private static int mostGiven(int dark) {
        return dark == 0 ? 0 : 1;
    }

    @Test
    void nobodyPartsForTheEndOfTheSeasonWhileOthersArePairedUp() {
        LocalDate paired = deeds(NestDeed.PairedUp.class)
                .map(Map.Entry::getKey)
                .max(Comparator.naturalOrder())
                .orElseThrow();

        assertThat(paired).isAfter(TODAY.minusDays(14));
        assertThat(deeds(PartingDeed.PartingBegun.class))
                .isNotEmpty()
                .noneMatch(parting -> parting.getValue().reason() == PartedFor.SEASON
                        && !parting.getKey().isAfter(paired.plusWeeks(4)));
    }

    @Test
    void oneThingDifferentWaitsToBeReadFromTheEveningOnWhichTheSitterPractised() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));

            assertThat(room.visits()).extracting(Visit::how).contains(How.SCAN, How.HAND);
            assertThat(room.unread()).singleElement().satisfies(visit -> {
                assertThat(visit.day()).isEqualTo(TODAY.minusDays(1));
                assertThat(visit.person()).isEqualTo(DemoRoom.SITTER);
                assertThat(visit.signs()).isNotEmpty();
            });
        }
    }

    private static List<LogEntry> log(Desk desk) {
        List<LogEntry> log = new ArrayList<>();
        desk.log(LogQuery.newest(2000), answer -> answer.then(log::addAll, why -> {}, code -> {}));
        return log;
    }

    private static Stream<Line> lines() {
        return DemoRoom.lines(TODAY).stream();
    }

    private static long daysAgo(Line line) {
        return ChronoUnit.DAYS.between(line.told().on(), TODAY);
    }

    private static <D extends Deed> Stream<Map.Entry<LocalDate, D>> deeds(Class<D> kind) {
        return lines().filter(line -> kind.isInstance(line.deed()))
                .map(line -> Map.entry(line.told().on(), kind.cast(line.deed())));
    }

    @Test
    void mostCardsArePrintedAndTwoOfThemAreOutOfDate() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));

            assertThat(room.cages()).filteredOn(cage -> cage.card().isPresent()).hasSizeGreaterThan(20);
            assertThat(room.cages().stream()
                            .filter(cage -> CardFaces.isOutOfDate(room, cage))
                            .map(Cage::name))
                    .containsExactly("A3", "C1");
        }
    }

    private Desk opened(LocalDate today) {
        Clock clock = Clock.fixed(Instant.parse("2026-04-14T09:00:00Z"), ZoneOffset.UTC);
        return Desk.open(
                DataFolder.open(folder.resolve("demo")), Lanes.inline(), new Clocks(clock, Optional.of(today)));
    }

    private static Room recorded(Desk desk, List<Line> lines) {
        desk.record(lines, outcome -> assertThat(outcome).isInstanceOf(Outcome.Done.class));
        return desk.room();
    }

    private static Cage cage(Room room, String name) {
        return room.cage(name).orElseThrow();
    }

    private static Pair pair(Room room, String cage) {
        return room.pairIn(cage(room, cage)).orElseThrow();
    }
}
