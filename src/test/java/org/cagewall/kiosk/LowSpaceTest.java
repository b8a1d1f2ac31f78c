package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicLong;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.junit.jupiter.api.Test;

/** What a person sees of a disk that is nearly full, painted without a window. */
class LowSpaceTest extends InAPainting {

    private static final String TITLE = "The disk is nearly full";

    private final AtomicLong free = new AtomicLong(600_000_000);

    @Override
    Desk desk(Path empty) {
        return TestDesk.furnishedOnADiskWith(empty, () -> OptionalLong.of(free.get()));
    }

    @Test
    void theOwnerIsToldOnceADayThatTheDiskIsNearlyFull() {
        look();
        assertThat(painted.texts()).as("600 MB are enough").doesNotContain(TITLE);

        free.set(312_000_000);
        look();
        painted.png("space-low").assertFit();
        assertThat(painted.texts()).contains(TITLE);
        assertThat(String.join(" ", painted.texts())).contains("Only 312 MB are left on the disk");

        painted.press("answer.ok");
        look();
        assertThat(painted.texts()).as("was told").doesNotContain(TITLE);
    }

    @Test
    void whoTakesOverIsToldTooAndASitterInOtherWords() {
        free.set(312_000_000);
        look();
        painted.press("answer.ok");
        TestDesk.tell(
                desk,
                "{\"deed\":\"away-planned\",\"from\":\"2026-04-14\",\"to\":\"2026-04-20\",\"sitter\":\"Tomas\","
                        + "\"by\":\"Ines\"}");
        painted.after(() -> kiosk.pen().takenBy("Tomas"));
        look();
        painted.png("space-low-sitter").assertFit();

        assertThat(String.join(" ", painted.texts()))
                .contains("Go on as usual")
                .contains("Tell the owner today that only 312 MB are left here.");
    }

    @Test
    void itWaitsUntilWhatIsOpenHasBeenAnswered() {
        painted.after(() -> kiosk.navigator().go(Destination.Cage.byHand("A2")));
        painted.press("person");
        free.set(312_000_000);
        look();
        assertThat(painted.texts()).contains("Who is recording?").doesNotContain(TITLE);
    }

    @Test
    void thePartOfBackupsSaysHowMuchTheDiskStillTakes() {
        painted.after(() -> kiosk.navigator().go(new Destination.Setup())).press("tab.backup");

        assertThat(painted.texts()).contains("The disk of the record still takes 600 MB.");
        painted.png("setup-backup-space").assertFit();
    }

    private void look() {
        painted.after(() -> kiosk.lookAtSpace());
    }
}
