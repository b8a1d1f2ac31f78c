package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.room.care.Answer;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person sees whose touch could not be recorded, painted without a window. */
class UnwrittenTest {

    private static final Words WORDS = Words.english();

    @TempDir
    Path home;

    private Path folder;
    private Desk desk;
    private Kiosk kiosk;
    private Painted painted;

    @BeforeEach
    void open() {
        folder = home.resolve("birds");
        desk = TestDesk.furnished(folder);
        painted = Painted.of(1280, 800, () -> {
            Layers stage = new Layers(WORDS);
            kiosk = Kiosk.on(stage, desk, WORDS);
            return stage;
        });
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void allWellOnAFolderThatIsGoneSaysThatItWasNotRecordedAndIsKeptForTheNextTry() throws IOException {
        long before = desk.room().head();
        painted.after(() -> kiosk.navigator().go(Destination.Cage.byHand("A2")));
        Files.move(folder, home.resolve("gone"));

        painted.press("all-well").png("unwritten").assertFit();

        assertThat(painted.texts()).contains("This was NOT recorded");
        assertThat(String.join(" ", painted.texts())).contains("is not there any more");
        assertThat(desk.room().head()).isEqualTo(before);

        painted.press("answer.again");
        assertThat(painted.texts()).as("still not").contains("This was NOT recorded");

        Files.move(home.resolve("gone"), folder);
        painted.press("answer.again");

        assertThat(painted.texts()).doesNotContain("This was NOT recorded");
        assertThat(TestDesk.newest(desk, 1).get(0).answer()).contains(Answer.WELL);
        assertThat(desk.room().head()).isEqualTo(before + 1);
    }
}
