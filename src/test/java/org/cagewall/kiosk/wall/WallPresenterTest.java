package org.cagewall.kiosk.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.kit.wall.TileFace;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.junit.jupiter.api.Test;

/** What the wall says of each cage. */
class WallPresenterTest extends WithDaybook {

    @Test
    void whatWasNotDoneTodayShowsOnTheWall() {
        inesIsAway();
        book.tell("""
                {"deed":"task-not-done","task":"2026-04-14/A1/morning","why":"could not open","by":"Tomas"}
                """);

        assertThat(tile("A1").foot()).isEqualTo("not fed today");
        assertThat(tile("A1").state()).isEqualTo(TileFace.State.LATE);
        assertThat(tile("A2").foot()).doesNotContain("not fed");
    }

    @Test
    void aSmallThingReportedLaterHidesNoGraveOne() {
        book.tell("""
                {"deed":"check","cage":"A2","answer":"different","how":"hand","signs":["bleeding"],"by":"Tomas"}
                {"deed":"check","cage":"A2","answer":"different","how":"hand","signs":["other"],"note":"sings","by":"Tomas"}
                {"deed":"check","cage":"B1","answer":"different","how":"hand","signs":["egg-on-floor"],"by":"Tomas"}
                {"deed":"check","cage":"B1","answer":"different","how":"hand","signs":["other"],"note":"sings","by":"Tomas"}
                """);

        assertThat(tile("A2").foot()).startsWith("bleeding");
        assertThat(tile("B1").foot()).startsWith("egg on the floor");
    }

    @Test
    void whatWasReportedOnAnEarlierDayShowsItsDayHoweverLongTheSign() {
        book.tell("""
                {"deed":"check","cage":"A2","answer":"different","how":"hand","signs":["dish-empty"],"on":"2026-04-13","by":"Tomas"}
                """);

        assertThat(tile("A2").big()).isEqualTo("Different 13 Apr");
        assertThat(tile("A2").foot()).isEqualTo("dish was empty");
    }

    @Test
    void aRowThatNobodyWalkedShowsAtEachOfItsCages() {
        inesIsAway();
        book.tell("""
                {"deed":"task-not-done","task":"2026-04-14/A1/evening-row","why":"no time","by":"Tomas"}
                """);

        assertThat(List.of("A1", "A2", "A3")).allMatch(cage -> tile(cage).foot().equals("not seen tonight"));
    }

    /** Sat from 12 March, 21 days at the latest: late from 3 April on. */
    @Test
    void anOverdueHatchGoesBeforeTheNextEggThatNeverCame() {
        pairInA2();
        book.tell("""
                {"deed":"egg-laid","cage":"A2","on":"2026-03-10","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-03-12","by":"Ines"}
                """);

        assertThat(tile("A2").foot()).isEqualTo("hatch late 12 d");
        assertThat(tile("A2").state()).isEqualTo(TileFace.State.LATE);
    }

    /** 21 days after the box was put on at the latest, which was 22 March. */
    @Test
    void aFirstEggThatIsLateShowsOnTheWall() {
        pairInA2();

        assertThat(tile("A2").foot()).isEqualTo("no egg, late");
        assertThat(tile("A2").state()).isEqualTo(TileFace.State.LATE);
    }

    @Test
    void aChickThatMissedItsRingShowsOnTheWall() {
        pairInA2();
        book.tell("""
                {"deed":"egg-laid","cage":"A2","on":"2026-03-08","by":"Ines"}
                {"deed":"chick-hatched","cage":"A2","mark":"1","on":"2026-03-27","by":"Ines"}
                {"deed":"nest-looked-at","cage":"A2","on":"2026-04-13","by":"Ines"}
                """);

        assertThat(tile("A2").foot()).isEqualTo("ring 1 missed");
        assertThat(tile("A2").state()).isEqualTo(TileFace.State.DUE);
    }

    /** Hatched on 1 March: feeds itself from day 38 to day 56 (species/budgerigar.txt), which is 26 April. */
    @Test
    void weaningThatIsDueGoesBeforeAnEggThatDidNotCome() {
        book.tell("""
                {"deed":"paired-up","cage":"A2","cock":"HB 24-006","hen":"HB 25-118","on":"2026-01-20","by":"Ines","sure":true}
                {"deed":"box-on","cage":"A2","on":"2026-01-20","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-02-10","by":"Ines"}
                {"deed":"chick-hatched","cage":"A2","mark":"1","on":"2026-03-01","by":"Ines"}
                {"deed":"chick-left-box","cage":"A2","mark":"1","on":"2026-04-02","by":"Ines"}
                {"deed":"round-begun","cage":"A2","on":"2026-04-03","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-05","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-07","by":"Ines"}
                """);

        assertThat(tile("A2").foot()).isEqualTo("wean by 26 Apr");
    }

    /** The hen rests a fortnight after the cock is out (species/budgerigar.txt), and goes on the morning her page says. */
    @Test
    void theWallSaysTheMorningOnWhichTheHenGoesToTheFlight() {
        pairInA2();
        book.tell("""
                {"deed":"parting-begun","cage":"A2","reason":"no-eggs","on":"2026-04-06","by":"Ines"}
                {"deed":"box-off","cage":"A2","on":"2026-04-08","by":"Ines"}
                {"deed":"bird-moved","bird":"HB 24-006","to":"B1","on":"2026-04-10","by":"Ines"}
                """);

        assertThat(tile("A2").foot()).isEqualTo("flight 24 Apr");
    }

    @Test
    void aDeedThatNeedsALookIntoTheCageCountsAsSeenToday() {
        pairInA2();
        assertThat(subtitle()).contains("0 of 5 cages");

        book.tell("""
                {"deed":"egg-laid","cage":"A2","on":"2026-04-14","by":"Ines"}
                """);

        assertThat(subtitle()).contains("1 of 5 cages");
        assertThat(book.desk().room().visits()).isEmpty();
    }

    @Test
    void aNewCardHidesNoDate() {
        pairInA2();
        book.tell("""
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-12","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-14","by":"Ines"}
                """);

        assertThat(tile("A2").foot()).isEqualTo("next 16 Apr");
        assertThat(tile("A2").small()).contains("new card");
    }

    @Test
    void aCageWhoseBirdIsAtAShowSaysAtWhichShow() {
        book.tell("""
                {"deed":"bird-out","bird":"HB 24-006","where":"show","place":"Valley Show","on":"2026-04-13","by":"Ines"}
                """);

        assertThat(tile("B1").foot()).isEqualTo("at a show: Valley Show");
    }

    private void pairInA2() {
        book.tell("""
                {"deed":"paired-up","cage":"A2","cock":"HB 24-006","hen":"HB 25-118","on":"2026-03-01","by":"Ines"}
                {"deed":"box-on","cage":"A2","on":"2026-03-01","by":"Ines"}
                """);
    }

    private String subtitle() {
        List<WallState> shown = new ArrayList<>();
        new WallPresenter(book.desk(), new Nowhere(), WORDS, 8, shown::add);
        return shown.get(0).subtitle();
    }

    private TileFace tile(String cage) {
        List<WallState> shown = new ArrayList<>();
        new WallPresenter(book.desk(), new Nowhere(), WORDS, 8, shown::add);
        return shown.get(0).tiles().stream()
                .map(WallState.Tile::face)
                .filter(face -> face.name().equals(cage))
                .findFirst()
                .orElseThrow();
    }

    private static final class Nowhere implements Navigator {
        @Override
        public void go(Destination destination) {}
    }
}
