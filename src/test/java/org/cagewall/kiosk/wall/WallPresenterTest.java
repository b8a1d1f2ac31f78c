package org.cagewall.kiosk.wall;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.kit.TileFace;
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
    void aRowThatNobodyWalkedShowsAtEachOfItsCages() {
        inesIsAway();
        book.tell("""
                {"deed":"task-not-done","task":"2026-04-14/A1/evening-row","why":"no time","by":"Tomas"}
                """);

        assertThat(List.of("A1", "A2", "A3")).allMatch(cage -> tile(cage).foot().equals("not seen tonight"));
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

        @Override
        public void back() {}
    }
}
