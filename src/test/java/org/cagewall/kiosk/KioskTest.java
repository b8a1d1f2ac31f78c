package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javax.swing.AbstractButton;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.kit.wall.Tile;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.junit.jupiter.api.Test;

/** The wall and a cage's page on a real desk, painted without a window. */
class KioskTest extends InAPainting {

    @Test
    void theWallShowsEveryCageInItsPlace() {
        painted.png("wall").assertFit();

        assertThat(painted.names()).contains("tile.A1", "tile.A2", "tile.A3", "tile.A4", "tile.Q1");
    }

    @Test
    void aHighWallIsScrolledAndItsTilesKeepTheirTwoLines() {
        TestDesk.tell(desk, """
                {"deed":"wall-added","wall":"Back wall","rows":5,"columns":4,"by":"Ines"}
                {"deed":"cage-added","cage":"T1","wall":"Back wall","row":1,"column":1,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"T5","wall":"Back wall","row":5,"column":4,"use":"breeding","by":"Ines"}
                """);
        go(new Destination.Today());
        go(new Destination.Wall());

        painted.press("walls.3").png("wall-high").assertFit();
        assertThat(painted.find("tile.T5", Tile.class).getHeight())
                .isGreaterThanOrEqualTo(painted.find("tile.T5", Tile.class).getMinimumSize().height);
        painted.press("wall.down");
    }

    @Test
    void allWellIsOneTouchOnAnOpenPage() {
        go(Destination.Cage.byScan("A1"));
        painted.png("cage").assertFit();

        painted.press("all-well");

        LogEntry check = TestDesk.newest(desk, 1).get(0);
        assertThat(check.answer()).contains(Answer.WELL);
        assertThat(check.how()).contains(How.SCAN);
        painted.png("cage-after").assertFit();
    }

    @Test
    void anEggIsOneTouchAndTakenBackByOneMore() {
        go(Destination.Cage.byHand("A1"));

        painted.press("do.egg");
        assertThat(WORDS.say(TestDesk.newest(desk, 1).get(0).what())).isEqualTo("egg 4 laid");
        painted.press("notice.undo");

        List<LogEntry> log = TestDesk.newest(desk, 2);
        assertThat(log.get(1).isStruck()).isTrue();
        painted.png("cage-undone").assertFit();
    }

    @Test
    void somethingDifferentIsToldBySigns() {
        go(Destination.Cage.byHand("A2"));

        painted.press("different").png("different").assertFit();
        painted.press("signs.puffed-up").press("record");

        assertThat(desk.room().unreadAt(desk.room().cage("A2").orElseThrow()))
                .hasValueSatisfying(visit -> assertThat(visit.signs()).containsExactly("puffed-up"));
    }

    @Test
    void aSitterIsAskedThreeQuestionsAndLedToThePhones() {
        painted.after(() -> kiosk.pen().takenBy("Tomas"));
        go(Destination.Cage.byHand("A2"));

        painted.press("different").press("signs.puffed-up").press("to-questions");
        painted.png("questions").assertFit().press("upright.no").press("record");

        assertThat(desk.room().unreadAt(desk.room().cage("A2").orElseThrow()))
                .hasValueSatisfying(visit -> assertThat(visit.signs()).containsExactly("puffed-up", "not-upright"));
        painted.png("questions-phone").press("phoned").find("phoned.Ines", AbstractButton.class);
    }

    @Test
    void twoBirdsArePairedUpByChoosingThem() {
        go(Destination.Cage.byHand("A3"));
        TestDesk.tell(desk, """
                {"deed":"bird-added","bird":"HB 25-060","sex":"cock","cage":"F2","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-070","sex":"hen","cage":"F1","by":"Ines"}
                """);

        painted.png("cage-empty").assertFit().press("do.pair-up").png("pick").assertFit();
        painted.press("pick.HB 25-060").press("pick.HB 25-070");

        assertThat(desk.room().pairIn(desk.room().cage("A3").orElseThrow())).isPresent();
    }

    @Test
    void aFlightShowsItsBirdsAndIsCounted() {
        go(Destination.Cage.byHand("F1"));
        painted.png("cage-flight").assertFit().press("do.count").png("count").assertFit();
        painted.press("count.9")
                .press("answer.keep")
                .png("count-other")
                .assertFit()
                .press("answer.sure");

        assertThat(desk.room().cage("F1").orElseThrow().counted())
                .hasValueSatisfying(count -> assertThat(count.birds()).isEqualTo(9));
    }

    @Test
    void whoRecordsIsChosenFromTheListOfPeople() {
        painted.press("person").png("who-records").assertFit();
        assertThat(kiosk.pen().holder().orElseThrow().name()).isEqualTo("Ines");
        painted.press("pick.Tomas");

        assertThat(kiosk.pen().holder().orElseThrow().name()).isEqualTo("Tomas");
        go(Destination.Cage.byHand("A1"));
        painted.png("cage-sitter").assertFit();
    }

    @Test
    void whoTakesOverAsTheOwnerIsAskedFirst() {
        painted.after(() -> kiosk.pen().takenBy("Tomas"));
        painted.press("person").press("pick.Ines").png("who-records-owner").assertFit();
        painted.press("answer.no");
        assertThat(kiosk.pen().holder().orElseThrow().name()).isEqualTo("Tomas");

        painted.press("person").press("pick.Ines").press("answer.owner");
        assertThat(kiosk.pen().holder().orElseThrow().name()).isEqualTo("Ines");
    }

    @Test
    void whatIsTheOwnersIsPutAwayWhenASitterTakesOver() {
        go(new Destination.Handover());
        painted.after(() -> kiosk.pen().takenBy("Tomas"));
        assertThat(painted.names()).contains("nav.phone").doesNotContain("tab.going-away", "nav.handover");

        go(Destination.Cage.byHand("A1"));
        painted.after(() -> kiosk.pen().takenBy("Ines"));
        assertThat(painted.names()).contains("all-well");
    }

    private void go(Destination destination) {
        painted.after(() -> kiosk.navigator().go(destination));
    }
}
