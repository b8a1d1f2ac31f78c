package org.cagewall.kiosk.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FlowTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5 eggs, 4 full | 5 eggs,/4 full",
                "4 chicks, 1 egg | 4 chicks,/1 egg",
                "New, day 12 | New,/day 12",
                "2 young cocks | 2 young/cocks",
                "Box turned | Box/turned",
                "3 eggs | 3 eggs"
            })
    void theBigWordBreaksWhereOneWouldPauseAndANumberStaysWithWhatItCounts(String text, String lines) {
        Painted.in(Light.DAY, () -> assertThat(
                        Flow.of(text, TextStyle.BIG.font(), 172, 2).lines())
                .isEqualTo(List.of(lines.split("/"))));
    }

    @Test
    void whatHasNoRoomEndsInAnEllipsisAndSaysSo() {
        Painted.in(Light.DAY, () -> {
            Flow flow = Flow.of("5 eggs, of which 4 are full and 1 is clear", TextStyle.BIG.font(), 172, 2);
            assertThat(flow.whole()).isFalse();
            assertThat(flow.lines()).hasSize(2);
            assertThat(flow.lines().get(1)).endsWith("\u2026");
            assertThat(flow.longest()).isLessThanOrEqualTo(172);
        });
    }

    @Test
    void aWordThatIsWiderThanItsPlaceIsCutUpRatherThanLost() {
        Painted.in(Light.DAY, () -> {
            Flow flow = Flow.of("quarantinequarantinequarantine", TextStyle.BIG.font(), 172, 0);
            assertThat(String.join("", flow.lines())).isEqualTo("quarantinequarantinequarantine");
            assertThat(flow.longest()).isLessThanOrEqualTo(172);
        });
    }

    @Test
    void linesThatAreSetStayAsTheyAreSet() {
        Painted.in(Light.DAY, () -> assertThat(
                        Flow.of("one\n\ntwo", TextStyle.LINE.font(), 400, 0).lines())
                .containsExactly("one", "", "two"));
    }

    @ParameterizedTest
    @CsvSource({"400, Pair 5 \u00b7 round 2", "80, Pair 5"})
    void ofPartsBetweenDotsTheLastAreLeftOutWhole(int width, String left) {
        Painted.in(Light.DAY, () -> assertThat(
                        Flow.parted("Pair 5 \u00b7 round 2", List.of(TextStyle.SECOND.font()), width)
                                .lines())
                .containsExactly(left));
    }

    @Test
    void anEmptyTextIsOneEmptyLine() {
        Painted.in(Light.DAY, () -> {
            assertThat(Flow.of("", TextStyle.LINE.font(), 400, 1).lines()).containsExactly("");
            assertThat(Flow.of("", TextStyle.LINE.font(), 400, 1).whole()).isTrue();
        });
    }
}
