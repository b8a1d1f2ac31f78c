package org.cagewall.kiosk.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Paints pages made of every part and asks of them what is asked of every screen. */
class GalleryTest {

    private static final Map<String, Supplier<JComponent>> PAGES = Map.of(
            "wall", Gallery::wall,
            "cage", Gallery::cage,
            "sitter", Gallery::sitter,
            "buttons", Gallery::buttons,
            "inputs", Gallery::inputs,
            "pad", Gallery::pad);

    static Stream<Arguments> pages() {
        return PAGES.entrySet().stream().flatMap(page -> Stream.of(Light.values())
                .map(light -> Arguments.of(page.getKey(), light, page.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("pages")
    void everyPageOfPartsIsFitForATablet(String name, Light light, Supplier<JComponent> page) {
        Painted painted = Painted.of(light, TextSize.NORMAL, 1280, 800, page)
                .png("gallery-" + name + "-" + light.name().toLowerCase());
        painted.assertFit();
        assertThat(painted.interactive()).isNotEmpty();
    }

    static Stream<Arguments> pagesAtOtherTextSizes() {
        return PAGES.entrySet().stream().flatMap(page -> Stream.of(TextSize.LARGER, TextSize.LARGEST)
                .map(size -> Arguments.of(page.getKey(), size, page.getValue())));
    }

    @ParameterizedTest(name = "{0} {1}")
    @MethodSource("pagesAtOtherTextSizes")
    void everyPageOfPartsGrowsWholeWithTheTextSize(String name, TextSize size, Supplier<JComponent> page) {
        int width = Math.round(1280 * size.factor());
        int height = Math.round(800 * size.factor());
        Painted painted = Painted.of(Light.DAY, size, width, height, page).assertFit();
        assertThat(painted.interactive()).isNotEmpty();
    }
}
