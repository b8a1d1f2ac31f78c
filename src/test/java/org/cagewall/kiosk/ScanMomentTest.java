package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.HandClock;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.room.care.How;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A scan is a visit: only a check while the card was read just now is told as a scan. */
class ScanMomentTest {

    @TempDir
    Path folder;

    private final HandClock clock = new HandClock();
    private Desk desk;
    private Layers stage;
    private Painted painted;

    @BeforeEach
    void open() {
        TestDesk.furnished(folder).close();
        desk = Desk.open(DataFolder.open(folder), Lanes.inline(), new Clocks(clock, Optional.of(TestDesk.TODAY)));
        painted = Painted.screen(() -> {
            stage = new Layers(Words.english());
            Kiosk.on(stage, desk, Words.english()).pen().takenBy("Ines");
            return stage;
        });
        painted.after(() -> stage.go(Destination.Cage.byScan("A1")));
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aCheckRightAfterTheScanIsTold() {
        clock.pass(Duration.ofMinutes(4));

        painted.press("all-well");

        assertThat(how()).contains(How.SCAN);
    }

    @Test
    void aCheckOnAPageThatWasLeftOpenIsNoScan() {
        clock.pass(Duration.ofMinutes(6));

        painted.press("all-well");

        assertThat(how()).contains(How.HAND);
    }

    @Test
    void aCheckAfterGoingAwayAndComingBackIsNoScan() {
        painted.press("nav.today").after(stage::escape).press("all-well");

        assertThat(stage.here()).isEqualTo(Destination.Cage.byHand("A1"));
        assertThat(how()).contains(How.HAND);
    }

    /** The page is made anew with another width; its card was not read anew. */
    @Test
    void aPageThatIsMadeAnewWithoutTheSmallViewIsNoScan() {
        painted.press("scan").press("small-on").after(() -> stage.go(Destination.Cage.byScan("A2")));
        clock.pass(Duration.ofMinutes(6));

        painted.press("small-away").press("all-well");

        assertThat(stage.here()).isEqualTo(Destination.Cage.byHand("A2"));
        assertThat(how()).contains(How.HAND);
    }

    private Optional<How> how() {
        return TestDesk.newest(desk, 1).get(0).how();
    }
}
