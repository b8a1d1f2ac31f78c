package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record of which a bit has flipped on the disk: it is said that it is damaged, and never that it is safe. */
class DamagedRecordTest {

    private static final int COPIES = 8;

    @TempDir
    Path home;

    @Test
    void aFlippedBitIsNeverCalledSafeAndWhatIsSaidIsTheDamage() throws IOException {
        Cli whole = Cli.furnished(home.resolve("whole"));
        List<Path> pages = largest(whole.data().resolve("room/seg0"));
        List<String> said = new ArrayList<>();

        for (int copy = 0; copy < COPIES; copy++) {
            Path data = home.resolve("copy" + copy);
            Cli.copy(whole.data(), data);
            flip(data.resolve("room/seg0").resolve(pages.get(copy).getFileName()), 300 + 611 * copy);

            Ran verified = new Cli(data).run("verify");
            Ran shown = new Cli(data).run("show", "A1");
            said.add(verified.err());
            assertThat(verified.out() + verified.err() + shown.err())
                    .as("copy %s", copy)
                    .doesNotContainIgnoringCase("safe")
                    .doesNotContain("good order");
        }

        assertThat(said).anyMatch(text -> text.contains("a part of the record cannot be read"));
    }

    /** The largest files of the record: those of which every start reads a page. */
    private static List<Path> largest(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted((a, b) ->
                            Long.compare(b.toFile().length(), a.toFile().length()))
                    .limit(COPIES)
                    .toList();
        }
    }

    private static void flip(Path file, int at) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        bytes[at % bytes.length] ^= 4;
        Files.write(file, bytes);
    }
}
