package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.cagewall.almanac.Almanac;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.room.Cage;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a cage's page offers at each stage of breeding, read from a real record. */
class ActionsTest {

    @TempDir
    Path folder;

    private Birdroom room;

    @BeforeEach
    void open() {
        room = Nests.room(folder.resolve("room"));
    }

    @AfterEach
    void close() {
        room.close();
    }

    @Test
    void anEmptyCageIsOfferedBirds() {
        assertThat(offered("A3")).startsWith("pair-up", "put-in", "cleaned", "change-use");
    }

    @Test
    void aPairWithoutABoxIsOfferedOne() {
        assertThat(offered("A1")).startsWith("box-on").contains("look-over", "treat", "not-agreeing", "take-out");
    }

    @Test
    void aBoxIsWaitingForItsFirstEgg() {
        room.tell(Nests.ago(3, "box-on", "").strip());

        assertThat(offered("A1")).startsWith("egg", "floor-egg").contains("box-off", "not-agreeing");
    }

    @Test
    void aLayingHenIsOfferedTheNextEgg() {
        room.tell((Nests.ago(20, "box-on", "") + Nests.ago(2, "egg-laid", "") + Nests.ago(0, "egg-laid", "")).strip());

        assertThat(offered("A1")).contains("egg", "broken", "floor-egg", "move-egg", "sitting");
    }

    @Test
    void aSittingHenIsNotOfferedWhatOnlyChicksDo() {
        Nests.sitting(room);

        assertThat(offered("A1"))
                .contains("candle", "hatched", "egg-out", "move-egg")
                .doesNotContain("wean", "nest-look", "left-box", "died");
    }

    @Test
    void theYoungOfTheLastRoundAreWeanedWhileTheNextIsSatOn() {
        Nests.twoRounds(room);
        for (String mark : List.of("2", "3", "4")) {
            room.tell(Nests.at("Z1", 0, "chick-left-box", "\"mark\":\"" + mark + "\",\"round\":\"1\"")
                    .strip());
        }

        assertThat(offered("Z1")).contains("egg", "wean");
    }

    @Test
    void chicksInTheBoxAreLookedAt() {
        Nests.twoRounds(room);

        assertThat(offered("Z1")).contains("nest-look", "egg", "left-box", "died");
    }

    @Test
    void aPairBeingPartedIsOfferedItsStages() {
        Nests.sitting(room);
        room.tell(Nests.ago(0, "parting-begun", "\"reason\":\"season\"").strip());

        assertThat(offered("A1")).contains("box-turned", "cock-out", "hen-out", "look-over", "treat");
        assertThat(actions("A1").others(Role.OWNER)).contains("floor-egg");
    }

    @Test
    void aSitterRecordsNoNest() {
        Nests.sitting(room);

        assertThat(actions("A1").likeliest(Role.SITTER)).containsExactly("count", "note", "floor-egg", "loose");
        assertThat(actions("A1").others(Role.SITTER)).isEmpty();
    }

    /** Every cage of the demo birdroom, at whatever stage it is. */
    @Nested
    class OfAWholeBirdroom {

        private Desk desk;

        @BeforeEach
        void openTheDemo() {
            desk = TestDesk.demo(folder.resolve("demo"));
        }

        @AfterEach
        void closeTheDemo() {
            desk.close();
        }

        @Test
        void atMostSixAreLargeAndNothingIsOfferedTwice() {
            Room demo = desk.room();
            assertThat(demo.cages()).isNotEmpty().allSatisfy(cage -> {
                Actions actions = ActionsTest.of(demo, cage);
                List<String> large = actions.likeliest(Role.OWNER);
                assertThat(large).hasSizeLessThanOrEqualTo(6).doesNotHaveDuplicates();
                assertThat(actions.others(Role.OWNER)).doesNotContainAnyElementsOf(large);
                assertThat(actions.due(Role.OWNER)).isPresent().get().isIn(large);
            });
        }

        @Test
        void whatANestIsDueCanBeTouched() {
            assertThat(here("B6").due(Role.OWNER)).contains("ring-on");
            assertThat(here("A1").due(Role.OWNER)).contains("candle");
            assertThat(here("C4").likeliest(Role.OWNER)).contains("candle", "wean");
            assertThat(here("B1").likeliest(Role.OWNER)).contains("box-off", "wean", "cock-out", "hen-out");
        }

        private Actions here(String cage) {
            return ActionsTest.of(desk.room(), desk.room().cage(cage).orElseThrow());
        }
    }

    private List<String> offered(String cage) {
        return actions(cage).likeliest(Role.OWNER);
    }

    private Actions actions(String cage) {
        return of(room.room(), room.room().cage(cage).orElseThrow());
    }

    private static Actions of(Room room, Cage cage) {
        return new Actions(room, cage, Almanac.of(room).nest(cage), Birdroom.TODAY);
    }
}
