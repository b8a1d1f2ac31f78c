package org.cagewall.kiosk.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.font.FontRenderContext;
import java.util.Map;
import org.cagewall.kiosk.Painted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class TextStyleTest {

    private static final Map<TextStyle, Integer> PIXELS = Map.ofEntries(
            Map.entry(TextStyle.NEXT, 44),
            Map.entry(TextStyle.BIG, 36),
            Map.entry(TextStyle.TITLE, 30),
            Map.entry(TextStyle.MAIN, 30),
            Map.entry(TextStyle.ACTION, 26),
            Map.entry(TextStyle.LEAD, 22),
            Map.entry(TextStyle.BUTTON, 20),
            Map.entry(TextStyle.LINE, 20),
            Map.entry(TextStyle.SECOND, 17),
            Map.entry(TextStyle.TAG, 17),
            Map.entry(TextStyle.MARK, 15));

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void everyFontGrowsWithTheTextSize(TextSize size) {
        Painted.in(
                Light.DAY,
                size,
                () -> PIXELS.forEach((type, pixels) ->
                        assertThat(type.font().getSize2D()).isCloseTo(pixels * size.factor(), within(0.6f))));
    }

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void everyMeasureGrowsWithTheTextSize(TextSize size) {
        Painted.in(Light.DAY, size, () -> {
            assertThat(Sizes.target()).isEqualTo(Math.round(48 * size.factor()));
            assertThat(Sizes.gap()).isEqualTo(Math.round(12 * size.factor()));
        });
    }

    @Test
    void everyFontIsTheOneThatComesWithTheProgram() {
        Painted.in(Light.DAY, () -> {
            for (TextStyle type : TextStyle.values()) {
                assertThat(type.font().getFamily()).as(type.name()).startsWith("Inter");
            }
        });
    }

    /**
     * ISO 9241-303, character height, from memory: capitals of 16 minutes of arc at least, 20 to 22 wished for; on a tablet
     * of 10.1 inches with 1280 by 800 pixels.
     */
    @ParameterizedTest
    @CsvSource({
        "NEXT, NORMAL, 1100, 16", "BIG, NORMAL, 940, 16", "BIG, LARGEST, 1500, 20", "MAIN, NORMAL, 750, 16",
        "LINE, NORMAL, 500, 16", "SECOND, LARGE, 500, 16", "TAG, LARGE, 500, 16", "MARK, LARGER, 500, 16"
    })
    void capitalsAreAsHighAsTheStandardAsksAtThatDistanceInMillimetres(
            TextStyle type, TextSize size, double distance, double minutes) {
        Painted.in(Light.DAY, size, () -> {
            double high = capitals(type) * 10.1 * 25.4 / Math.hypot(1280, 800);
            assertThat(Math.toDegrees(2 * Math.atan(high / 2 / distance)) * 60).isGreaterThanOrEqualTo(minutes);
        });
    }

    private static double capitals(TextStyle type) {
        return type.font()
                .createGlyphVector(new FontRenderContext(null, true, true), "H")
                .getVisualBounds()
                .getHeight();
    }

    @Test
    void aTextSizeIsFoundByItsNameAndAnyOtherWordMeansTheNormalOne() {
        assertThat(TextSize.named(" larger ")).isEqualTo(TextSize.LARGER);
        assertThat(TextSize.named("huge")).isEqualTo(TextSize.NORMAL);
    }
}
