package org.cagewall.kiosk.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.handover.Strip;
import org.cagewall.handover.Strip.Seen;
import org.cagewall.kiosk.handover.HandoverState.EmptyCages;
import org.cagewall.kiosk.handover.HandoverState.StripLine;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** Who looked at what, as lines of the review. */
class StripWordsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 10);

    @Test
    void emptyCagesThatFollowOneAnotherAreOneLineAndHaveNoRow() {
        HandoverState.StripFace strip = new StripWords(Words.english())
                .strip(new Strip(
                        List.of(DAY, DAY.plusDays(1)),
                        List.of(
                                row("A1", Seen.EMPTY, Seen.EMPTY),
                                row("A2", Seen.BY_SCAN, Seen.NOBODY),
                                row("A3", Seen.EMPTY, Seen.EMPTY),
                                row("A4", Seen.EMPTY, Seen.EMPTY),
                                row("B1", Seen.EMPTY, Seen.EMPTY),
                                row("B2", Seen.EMPTY, Seen.BY_HAND))));

        assertThat(strip.lines()).hasSize(4);
        assertThat(strip.lines().get(0)).isEqualTo(new EmptyCages("1 empty cage: A1"));
        assertThat(strip.lines().get(1)).isInstanceOfSatisfying(StripLine.class, line -> assertThat(line.cage())
                .isEqualTo("A2"));
        assertThat(strip.lines().get(2)).isEqualTo(new EmptyCages("3 empty cages: A3 to B1"));
        assertThat(strip.lines().get(3)).isInstanceOf(StripLine.class);
        assertThat(strip.key().stream().map(HandoverState.Key::text))
                .containsExactly("by scan", "by hand", "nobody looked", "nobody had to");
    }

    private static Strip.Row row(String cage, Seen... seen) {
        return new Strip.Row(
                cage,
                Stream.of(seen)
                        .map(each -> new Strip.Cell(DAY, each, Optional.empty()))
                        .toList());
    }
}
