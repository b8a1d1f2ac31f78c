package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.How;
import org.cagewall.room.LogEntry;
import org.cagewall.room.LogQuery;
import org.cagewall.room.Pair;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.Visit;
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
    void anAbsenceIsUnderWayWithAMixedFortnight() {
        try (Desk desk = opened(TODAY)) {
            Room room = recorded(desk, DemoRoom.lines(TODAY));

            assertThat(room.absenceOn(TODAY)).hasValueSatisfying(absence -> {
                assertThat(absence.from()).isBefore(TODAY);
                assertThat(absence.to()).isEqualTo(absence.from().plusDays(13));
                assertThat(absence.vet().orElseThrow()).contains("01632 960190");
            });
            assertThat(room.visits()).extracting(Visit::how).contains(How.SCAN, How.HAND);
            assertThat(room.unread()).hasSize(2).allMatch(visit -> !visit.signs()
                    .isEmpty());
            assertThat(room.outcomes())
                    .anyMatch(outcome -> outcome.done())
                    .anyMatch(outcome -> !outcome.done() && outcome.why().isPresent());
            Cage nursery = cage(room, "E2");
            assertThat(room.visitsOf(nursery, TODAY.minusDays(2))).isEmpty();
            assertThat(room.visitsOf(nursery, TODAY.minusDays(1))).isNotEmpty();
            List<LogEntry> log = new ArrayList<>();
            desk.log(LogQuery.newest(1000), answer -> answer.then(log::addAll, why -> {}, code -> {}));
            assertThat(log).filteredOn(LogEntry::isStruck).hasSize(1);
            assertThat(log).extracting(LogEntry::deed).contains("phoned", "struck-out", "task-not-done");
        }
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
