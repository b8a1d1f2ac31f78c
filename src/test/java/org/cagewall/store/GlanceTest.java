package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.cagewall.deed.RandomDeeds;
import org.cagewall.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The room kept for the next start: the same as the room read anew, or not used at all. */
class GlanceTest extends InMemory {

    private static final int DEEDS = 60;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void aRoomOnALaterDayIsTheRoomReadAnewOnThatDay(long seed) {
        furnish();
        runOfDeeds(seed);
        for (int days : List.of(0, 1, 2, 9, 30, 61, 62, 90)) {
            LocalDate day = TODAY.plusDays(days);

            assertThat(Later.on(room(), day)).as(day.toString()).isEqualTo(store().room(day));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {25, 26})
    void aRoomThatIsKeptComesBackWhole(long seed) throws IOException {
        furnish();
        pairUp();
        runOfDeeds(seed);

        glance().keep(head(), room());

        assertThat(glance().read(head())).contains(room());
    }

    @Test
    void theRecordHasGoneOnSoTheRoomThatWasKeptIsNotUsed() throws IOException {
        furnish();
        glance().keep(head(), room());
        tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"scan","by":"Ines"}
                """);

        assertThat(glance().read(head())).isEmpty();

        glance().keep(head(), room());

        assertThat(glance().read(head())).contains(room());
    }

    @Test
    void aRoomThatIsBehindTheRecordIsNotKept() throws IOException {
        furnish();
        Room before = room();
        tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"scan","by":"Ines"}
                """);

        glance().keep(head(), before);

        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void whateverIsWrongWithTheFileItIsAsIfThereWereNone() throws IOException {
        furnish();
        assertThat(glance().read(head())).as("none yet").isEmpty();
        glance().keep(head(), room());
        Path file = folder.resolve("glance");
        byte[] whole = Files.readAllBytes(file);
        for (int at = 0; at < whole.length; at += 7) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 0x10;
            Files.write(file, damaged);

            assertThat(glance().read(head())).as("a changed byte at %d", at).isEmpty();
        }
        Files.write(file, java.util.Arrays.copyOf(whole, whole.length / 2));

        assertThat(glance().read(head())).as("cut short").isEmpty();
    }

    private Glance glance() {
        return new Glance(folder.resolve("room"));
    }

    private RoomReader.Head head() {
        RoomReader.Head[] head = new RoomReader.Head[1];
        useDatabase(session -> head[0] = new RoomReader(session).head());
        return head[0];
    }

    private void runOfDeeds(long seed) {
        RandomDeeds deeds = new RandomDeeds(seed, TODAY);
        for (int taken = 0; taken < DEEDS; ) {
            if (recorded(deeds.next(room().head())) instanceof Recording.Done) {
                taken++;
            }
        }
    }
}
