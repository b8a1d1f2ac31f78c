package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.shell.WindowMode.Display;
import org.cagewall.kiosk.shell.WindowMode.FullScreen;
import org.cagewall.kiosk.shell.WindowMode.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WindowModeTest {

    private static final Display TABLET = new Display(":0.0", new Rectangle(0, 0, 1280, 800));
    private static final Display LEFT_OF_IT = new Display(":0.1", new Rectangle(-1920, -280, 1920, 1080));

    @Test
    void theChosenScreenIsFilledWhereverItStands() {
        assertThat(new FullScreen(Optional.of(":0.1")).bounds(List.of(TABLET, LEFT_OF_IT)))
                .isEqualTo(new Rectangle(-1920, -280, 1920, 1080));
    }

    @Test
    void whenTheChosenScreenIsGoneTheMainOneIsFilled() {
        assertThat(new FullScreen(Optional.of(":0.7")).bounds(List.of(TABLET, LEFT_OF_IT)))
                .isEqualTo(TABLET.bounds());
        assertThat(new FullScreen(Optional.empty()).bounds(List.of(TABLET))).isEqualTo(TABLET.bounds());
    }

    @Test
    void aWindowStandsInTheMiddleAndIsNoLargerThanTheScreen() {
        assertThat(new Window(1000, 600).bounds(List.of(TABLET))).isEqualTo(new Rectangle(140, 100, 1000, 600));
        assertThat(new Window(1920, 1080).bounds(List.of(TABLET))).isEqualTo(new Rectangle(0, 0, 1280, 800));
    }

    @Test
    void aSizeIsReadAsItIsWritten() {
        assertThat(Window.parse(" 1280x800 ")).contains(new Window(1280, 800));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "1280", "1280X800", "12x8", "1280x", "x800", "1280 x 800", "999999x800"})
    void aSizeThatIsWrittenOtherwiseIsNone(String text) {
        assertThat(Window.parse(text)).isEmpty();
    }
}
