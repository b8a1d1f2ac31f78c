package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How much the disk of the record still takes, and from where on the owner is to know. */
class SpaceTest {

    @TempDir
    Path folder;

    @Test
    void fewerThan500MegabytesAreLittleUntilTheOwnerSetsAnotherNumber() {
        try (Desk desk = TestDesk.furnishedOnADiskWith(folder, () -> OptionalLong.of(499_999_999))) {
            Space space = spaces(desk).get(0);
            assertThat(space.isLow()).isTrue();
            assertThat(Words.english().sentence(space.warning()))
                    .isEqualTo("Only 499 MB are left on the disk that holds the record."
                            + " Make room in time: on a full disk nothing can be recorded.");

            TestDesk.tell(desk, "{\"deed\":\"room-set\",\"least-space\":200,\"by\":\"Ines\"}");
            assertThat(spaces(desk).get(0).isLow()).isFalse();

            TestDesk.tell(desk, "{\"deed\":\"room-set\",\"least-space\":0,\"by\":\"Ines\"}");
            assertThat(spaces(desk).get(0).isLow()).isFalse();
        }
    }

    @Test
    void aDiskThatTakes500MegabytesHasEnough() {
        try (Desk desk = TestDesk.furnishedOnADiskWith(folder, () -> OptionalLong.of(500_000_000))) {
            assertThat(spaces(desk).get(0).isLow()).isFalse();
        }
    }

    @Test
    void whereTheSystemDoesNotSayNothingIsToldOfSpace() {
        try (Desk desk = TestDesk.furnishedOnADiskWith(folder, OptionalLong::empty)) {
            assertThat(spaces(desk)).isEmpty();
        }
    }

    @Test
    void theDiskOfTheFolderItselfIsAsked() {
        try (Desk desk = TestDesk.furnished(folder)) {
            assertThat(spaces(desk)).hasSize(1);
            assertThat(spaces(desk).get(0).free())
                    .isPositive()
                    .isLessThanOrEqualTo(folder.toFile().getTotalSpace());
        }
    }

    private static List<Space> spaces(Desk desk) {
        List<Space> told = new ArrayList<>();
        desk.space(told::add);
        return told;
    }
}
