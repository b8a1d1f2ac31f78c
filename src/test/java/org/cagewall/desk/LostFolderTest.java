package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.room.Room;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The data folder taken away under an open desk, as a stick or a share goes: nothing is acknowledged that is not kept. */
class LostFolderTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);
    private static final Words WORDS = Words.english();
    private static final String SITTER =
            "{\"deed\":\"person-added\",\"person\":\"Theo\",\"role\":\"sitter\",\"by\":\"Ines\"}";

    @TempDir
    Path home;

    private Path folder;
    private Desk desk;
    private int people;

    @BeforeEach
    void open() {
        folder = home.resolve("birds");
        desk = TestDesk.furnished(folder);
        people = desk.room().people().size();
    }

    @AfterEach
    void close() {
        try {
            desk.close();
        } catch (DataFolder.Unavailable e) {
            assertThat(e.getMessage()).isIn("store.gone", "store.other");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "room", "room/seg0", "room/log"})
    void whatIsRecordedAfterTheFolderWasDeletedIsNotAcknowledged(String part) throws IOException {
        delete(folder.resolve(part));

        assertThat(said(recorded(SITTER))).contains("is not there any more").contains(folder.toString());
        assertThat(said(recorded(SITTER))).as("nor the second time").contains("is not there any more");
        assertThat(desk.room().people()).hasSize(people);
    }

    @Test
    void anotherFolderAtTheSamePlaceIsNotTakenForTheOneThatWasOpened() throws IOException {
        Files.move(folder, home.resolve("taken-away"));
        TestDesk.empty(home.resolve("other")).close();
        Files.move(home.resolve("other"), folder);

        assertThat(said(recorded(SITTER))).contains("is not the one that was opened");
        assertThat(said(recorded(SITTER))).contains("is not the one that was opened");
        assertThat(desk.room().people()).hasSize(people);

        assertThatThrownBy(desk::close).hasMessage("store.other");
        folder = Files.move(folder, home.resolve("looked-into"));
        desk = opened();
        assertThat(desk.room().people()).as("nothing was written into it").isEmpty();
        assertThat(firstBroken()).isEmpty();
    }

    @Test
    void aFolderThatComesBackTakesTheNextTryWithoutARestart() throws IOException {
        Path away = home.resolve("taken-away");
        Files.move(folder, away);
        assertThat(recorded(SITTER)).isInstanceOf(Outcome.Unwritten.class);
        assertThat(recorded(SITTER)).isInstanceOf(Outcome.Unwritten.class);
        Files.move(away, folder);

        assertThat(recorded(SITTER)).isInstanceOf(Outcome.Done.class);

        Room room = desk.room();
        desk.close();
        desk = opened();
        assertThat(desk.room()).isEqualTo(room);
        assertThat(room.people()).hasSize(people + 1);
        assertThat(firstBroken()).isEmpty();
    }

    private Optional<Long> firstBroken() {
        List<Optional<Long>> broken = new ArrayList<>();
        desk.study(Book::firstBroken, answer -> broken.add(((Reading.Got<Optional<Long>>) answer).value()));
        return broken.get(0);
    }

    private Desk opened() {
        return Desk.open(DataFolder.open(folder), Lanes.inline(), TestDesk.clocks());
    }

    private Outcome recorded(String text) {
        Line line = ((Lines.Understood) Lines.read(text, TODAY)).line();
        List<Outcome> outcomes = new ArrayList<>();
        desk.record(line, outcomes::add);
        return outcomes.get(0);
    }

    private static String said(Outcome outcome) {
        return outcome instanceof Outcome.Unwritten unwritten ? WORDS.say(unwritten.reason()) : "";
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
