package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.room.care.Answer;
import org.junit.jupiter.api.Test;

/** What a person sees whose touch could not be recorded, painted without a window. */
class UnwrittenTest extends InAPainting {

    @Override
    Desk desk(Path empty) {
        return TestDesk.furnished(empty.resolve("birds"));
    }

    @Test
    void allWellOnAFolderThatIsGoneSaysThatItWasNotRecordedAndIsKeptForTheNextTry() throws IOException {
        long before = desk.room().head();
        painted.after(() -> kiosk.navigator().go(Destination.Cage.byHand("A2")));
        Files.move(folder.resolve("birds"), folder.resolve("gone"));

        painted.press("all-well").png("unwritten").assertFit();

        assertThat(painted.texts()).contains("This was NOT recorded");
        assertThat(String.join(" ", painted.texts())).contains("is not there any more");
        assertThat(desk.room().head()).isEqualTo(before);

        painted.press("answer.again");
        assertThat(painted.texts()).as("still not").contains("This was NOT recorded");

        Files.move(folder.resolve("gone"), folder.resolve("birds"));
        painted.press("answer.again");

        assertThat(painted.texts()).doesNotContain("This was NOT recorded");
        assertThat(TestDesk.newest(desk, 1).get(0).answer()).contains(Answer.WELL);
        assertThat(desk.room().head()).isEqualTo(before + 1);
    }
}
