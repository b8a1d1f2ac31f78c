package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where a reminder stays that nobody answered and nobody can act on any more. */
class LapsedTest {

    @TempDir
    Path folder;

    private Birdroom room;

    @BeforeEach
    void fiveEggsThatNobodyHeldAgainstTheLight() {
        room = Nests.room(folder.resolve("birds"));
        Nests.clutch(room, 30);
    }

    @AfterEach
    void close() {
        room.close();
    }

    @Test
    void aLookAgainstTheLightThatLapsedStandsInThePastOfItsCage() {
        Painted page = Nests.page(room, "Ines", "A1");

        assertThat(page.all().stream()
                        .filter(part -> part.getName() != null && part.getName().startsWith("lapsed."))
                        .map(part -> part.getAccessibleContext().getAccessibleName()))
                .anySatisfy(said -> assertThat(said).contains("Candle egg").contains("asked for no more"));
        page.assertFit();
    }

    @Test
    void aSitterSeesNothingOfIt() {
        assertThat(Nests.page(room, "Tomas", "A1").names()).noneMatch(name -> name.startsWith("lapsed."));
    }
}
