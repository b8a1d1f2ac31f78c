package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.theme.TextSize;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A nest's page and every sheet on it: whole words, targets for wet fingers, names, in any size of letters. */
class NestPageFitsTest {

    /** What a title bar of 30 leaves of a screen 800 high. */
    private static final int BELOW_A_TITLE_BAR = 770;

    @TempDir
    Path folder;

    private Birdroom room;

    @BeforeEach
    void open() {
        room = Nests.room(folder);
    }

    @AfterEach
    void close() {
        room.close();
    }

    @Test
    void aHenThatSits() {
        Nests.sitting(room);

        fits("A1", "nest-sitting");
        fits("A1", "nest-candle", "do.candle", "candle.4");
        fits("A1", "nest-egg", "egg.3");
        fits("A1", "nest-egg-out", "do.egg-out");
        fits("A1", "nest-move", "do.move-egg", "choose.1");
        fits("A1", "nest-part", "do.part");
        fits("A1", "nest-more", "do.more");
        Nests.page(room, "Tomas", "A1").png("nest-sitter").assertFit();
    }

    @Test
    void aCardOutOfDateFitsBelowATitleBar() {
        Nests.sitting(room);

        Painted page = Nests.page(room, TextSize.NORMAL, BELOW_A_TITLE_BAR, "Ines", "A1")
                .png("nest-title-bar");

        assertThat(page.names()).contains("pencilled");
        page.assertFit();
    }

    @Test
    void chicksOfOneRoundBesideTheEggsOfTheNext() {
        Nests.twoRounds(room);

        fits("Z1", "nest-two-rounds");
        fits("Z1", "nest-look", "do.nest-look");
        fits("Z1", "nest-chick", "chick.1.2");
        fits("Z1", "nest-ring", "do.ring");
        fits("Z1", "nest-wean", "do.wean", "choose.1");
    }

    @Test
    void aPairBeingParted() {
        Nests.twoRounds(room);
        room.tell(Nests.at("Z1", 1, "parting-begun", "\"reason\":\"rounds\"").strip());

        fits("Z1", "nest-parting");
        fits("Z1", "nest-stage", "stage.box-turned", "answer.skip");
        fits("Z1", "nest-evidence", "do.evidence");
    }

    @Test
    void aBoxOfWhichNothingIsKnown() {
        room.tell(Nests.ago(24, "box-on", "").strip());

        fits("A1", "nest-box-on");
        fits("A1", "nest-found", "do.eggs-found", "eggs.more", "ago.more", "chicks.more");
        fits("A1", "nest-treat", "do.more", "pick.treat", "pick.HB 25-117");
        fits("A1", "nest-not-agreeing", "do.not-agreeing");
    }

    private void fits(String cage, String picture, String... presses) {
        for (TextSize size : new TextSize[] {TextSize.NORMAL, TextSize.LARGEST}) {
            Painted page = Nests.page(room, size, "Ines", cage);
            for (String press : presses) {
                page.press(press);
            }
            page.png(size == TextSize.NORMAL ? picture : picture + "-largest").assertFit();
        }
    }
}
