package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Optional;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Lying;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ring of a chick that is still in the nest is corrected, or written off, where the chick is touched. */
class ChickRingTest {

    @TempDir
    Path folder;

    private Birdroom room;

    @BeforeEach
    void open() {
        room = Nests.room(folder);
        Nests.twoRounds(room);
        room.tell(Nests.at("Z1", 24, "ring-checked", "\"mark\":\"1\"").strip());
    }

    @AfterEach
    void close() {
        room.close();
    }

    @Test
    void aRingThatWasReadWronglyIsCorrectedOnItsOwnDayAndStaysChecked() {
        ChickRing before = ring().orElseThrow();
        Painted page = Nests.page(room, "Ines", "Z1").press("chick.1.1").press("pick.correct-ring");
        JTextComponent field = page.find("ring", JTextComponent.class);
        assertThat(field.getText()).isEqualTo("HB 26-090");

        page.png("nest-correct-ring").assertFit();
        page.after(() -> field.setText("HB 26-091")).press("choose.1");

        assertThat(ring()).contains(new ChickRing("HB 26-091", before.day(), before.about(), before.checked()));
        assertThat(page.maybe("notice.undo")).as("a strike cannot be struck").isEmpty();
        assertThat(room.newest(4).get(3)).contains("struck-out").contains("ring-misread");
        assertThat(room.newest(4).get(1)).contains("chick-ringed").contains("HB 26-091");
    }

    @Test
    void aGuessedDayStaysAGuessWhenTheRingIsCorrected() {
        room.tell(Nests.at(
                        "Z1",
                        21,
                        "chick-ringed",
                        "\"mark\":\"2\",\"round\":\"1\",\"ring\":\"HB 26-092\",\"about\":true")
                .strip());
        Painted page = Nests.page(room, "Ines", "Z1").press("chick.1.2").press("pick.correct-ring");
        JTextComponent field = page.find("ring", JTextComponent.class);
        page.after(() -> field.setText("HB 26-093")).press("choose.2");

        assertThat(ring("2")).hasValueSatisfying(ring -> {
            assertThat(ring.ring()).isEqualTo("HB 26-093");
            assertThat(ring.about()).isTrue();
        });
    }

    @Test
    void theNumberThatWasReadWronglyCanBePutOnAnotherChick() {
        Painted page = Nests.page(room, "Ines", "Z1").press("chick.1.1").press("pick.correct-ring");
        JTextComponent field = page.find("ring", JTextComponent.class);
        page.after(() -> field.setText("HB 26-091")).press("choose.1");

        room.tell(Nests.at("Z1", 21, "chick-ringed", "\"mark\":\"2\",\"round\":\"1\",\"ring\":\"HB 26-090\"")
                .strip());

        assertThat(room.newest(1).get(0)).contains("HB 26-090");
    }

    @Test
    void ringsThatWereSwappedAreToldTheOtherWayRoundInOneTouchAndEachStaysChecked() {
        room.tell(Nests.at("Z1", 21, "chick-ringed", "\"mark\":\"2\",\"round\":\"1\",\"ring\":\"HB 26-091\"")
                .strip());
        ChickRing first = ring("1").orElseThrow();
        ChickRing second = ring("2").orElseThrow();
        Painted page = Nests.page(room, "Ines", "Z1").press("chick.1.1");

        page.png("nest-swap-rings").press("pick.swap-rings").png("nest-swapped-rings");

        assertThat(ring("1")).contains(new ChickRing("HB 26-091", first.day(), first.about(), first.checked()));
        assertThat(ring("2")).contains(new ChickRing("HB 26-090", second.day(), second.about(), second.checked()));
        assertThat(room.newest(6))
                .filteredOn(line -> line.contains("rings-swapped"))
                .hasSize(3);
    }

    @Test
    void theOnlyRingOfANestCannotHaveBeenSwapped() {
        Painted page = Nests.page(room, "Ines", "Z1").press("chick.1.1");

        assertThat(page.maybe("pick.correct-ring")).isPresent();
        assertThat(page.maybe("pick.swap-rings")).isEmpty();
    }

    @Test
    void aRingThatCameOffInTheNestIsWrittenOffAndTheChickCanGetAnother() {
        Nests.page(room, "Ines", "Z1")
                .press("chick.1.1")
                .press("pick.lost-ring")
                .press("answer.lost");

        assertThat(ring()).isEmpty();
        assertThat(room.room().ringsSpoilt()).contains("HB 26-090");
        assertThat(room.newest(1).get(0)).contains("ring-spoilt").contains("\"why\":\"lost\"");
    }

    private Optional<ChickRing> ring() {
        return ring("1");
    }

    private Optional<ChickRing> ring(String mark) {
        return room.room().nest(room.room().cage("Z1").orElseThrow()).all().stream()
                .filter(lying -> lying.round().number() == 1)
                .filter(lying -> lying.egg().mark().equals(mark))
                .flatMap((Lying lying) -> lying.chick().stream())
                .findFirst()
                .flatMap(Chick::ring);
    }
}
