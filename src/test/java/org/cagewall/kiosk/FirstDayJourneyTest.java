package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.Cage;
import org.cagewall.room.FoodKind;
import org.cagewall.room.Keeps;
import org.cagewall.room.Role;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.junit.jupiter.api.Test;

/** An empty room is furnished and its first birds move in, in a real window, read back from the database. */
@RequiresDisplay
class FirstDayJourneyTest extends InAWindow {

    @Override
    void make(Path room) {
        TestDesk.empty(room).close();
    }

    @Test
    void anEmptyRoomIsFurnishedByTouchAndItsFirstBirdsMoveIn() {
        theOwnerAndTheFirstWall();
        aFlightOnAWallOfItsOwn();
        theSitterAndWhatTheSitterMayDo();
        theFirstBirds();
        oneBirdIsFoundAndLookedOver();
        readBack();
    }

    private void theOwnerAndTheFirstWall() {
        live.write("name", "Ines").write("phone", "0555 0142").press("next");
        live.see("wall").write("wall", "North wall").press("rows.fewer").press("next");
        live.picture("first-day-1-fill").press("fill").waitUntil("the wall has its cages", () -> cages() == 12);
    }

    private void aFlightOnAWallOfItsOwn() {
        live.see("tile.B6")
                .press("nav.setup")
                .press("new-wall")
                .write("wall", "Flights")
                .press("rows.fewer")
                .press("rows.fewer");
        live.press("add-wall").waitUntil("the second wall stands", () -> desk.room()
                .wall("Flights")
                .isPresent());
        long wall = desk.room().wall("Flights").orElseThrow().id();
        live.press("place.free-" + wall + "-1-1").press("use.flight").press("use.keeps.hens");
        live.write("cage", "Hen flight").press("add-cage").waitUntil("the flight hangs there", () -> cages() == 13);
        live.picture("first-day-2-walls");
    }

    private void theSitterAndWhatTheSitterMayDo() {
        live.tap("notice.text")
                .press("tab.people")
                .see("add-person")
                .write("name", "Tomas")
                .write("phone", "0555 0163");
        live.press("role.sitter").press("add-person").waitUntil("the sitter is known", () -> desk.room()
                .person("Tomas")
                .isPresent());
        live.press("tab.food").press("cage.A1").press("cage.A2");
        live.press("what.quick.1").press("amount.quick.1").press("add-line").press("allowed.count");
        live.picture("first-day-3-food").press("save").waitUntil("both cages have their food", () -> !feedOf("A2")
                .isEmpty());
    }

    private void theFirstBirds() {
        live.press("nav.birds").press("new-bird");
        live.write("ring", "HB 26-099").press("sex.hen").write("colour", "grey");
        live.press("hatched.quick.2026").press("in.A2").picture("first-day-4-bird");
        live.press("record").waitUntil("the hen is in the book", () -> desk.room()
                .bird("HB 26-099")
                .isPresent());
        live.press("all")
                .press("new-bird")
                .write("ring", "HB 26-041")
                .press("sex.cock")
                .press("in.A1");
        live.press("record").waitUntil("the cock is in the book", () -> desk.room()
                .bird("HB 26-041")
                .isPresent());
    }

    private void oneBirdIsFoundAndLookedOver() {
        live.press("all").see("bird.HB 26-041").write("search", "grey").gone("bird.HB 26-041");
        live.press("bird.HB 26-099").press("do.looked-over").press("condition.watch");
        live.press("weight.4").press("weight.1").write("note", "keel a little sharp");
        live.picture("first-day-5-looked-over")
                .press("record")
                .gone("condition.watch")
                .see("do.move");
    }

    private void readBack() {
        leaveAndReopen();

        assertPerson("Ines", Role.OWNER, "0555 0142");
        assertPerson("Tomas", Role.SITTER, "0555 0163");
        assertThat(desk.room().walk().map(Cage::name))
                .startsWith("A1", "A2", "A3")
                .endsWith("Hen flight");
        Cage flight = desk.room().cage("Hen flight").orElseThrow();
        assertThat(flight.use()).isEqualTo(Use.FLIGHT);
        assertThat(flight.keeps()).contains(Keeps.HENS);
        for (String cage : List.of("A1", "A2")) {
            assertThat(feedOf(cage))
                    .containsExactly(new FeedLine("seed mix", "1 scoop", DayPart.MORNING).as(FoodKind.DISH));
            assertThat(desk.room().cage(cage).orElseThrow().routine().allows(Permission.COUNT))
                    .isTrue();
        }
        assertThat(feedOf("A3")).isEmpty();
        Bird hen = desk.room().bird("HB 26-099").orElseThrow();
        assertThat(hen.sex()).isEqualTo(Sex.HEN);
        assertThat(desk.room().cageName(hen.cage().orElseThrow())).isEqualTo("A2");
        assertThat(TestDesk.newest(desk, 40))
                .filteredOn(entry -> entry.deed().equals("bird-looked-over"))
                .singleElement()
                .satisfies(entry -> {
                    assertThat(entry.by()).isEqualTo("Ines");
                    assertThat(entry.line())
                            .contains("HB 26-099", "\"condition\":\"watch\"", "\"weight\":41", "keel a little sharp");
                });
    }

    private void assertPerson(String name, Role role, String phone) {
        assertThat(desk.room().person(name)).hasValueSatisfying(person -> {
            assertThat(person.role()).isEqualTo(role);
            assertThat(person.phone()).contains(phone);
        });
    }

    private long cages() {
        return desk.room().walk().count();
    }

    private List<FeedLine> feedOf(String cage) {
        return desk.room().cage(cage).orElseThrow().routine().feed();
    }
}
