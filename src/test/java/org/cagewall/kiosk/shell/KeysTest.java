package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JLabel;
import org.junit.jupiter.api.Test;

class KeysTest {

    private final List<String> happened = new ArrayList<>();
    private long now = 42L;
    private final Keys keys = new Keys(() -> now, new Keys.Commands() {
        @Override
        public void escape() {
            happened.add("escape");
        }

        @Override
        public boolean paste() {
            happened.add("paste");
            return true;
        }

        @Override
        public void movedByKey() {
            happened.add("moved");
        }
    });

    @Test
    void everyCharacterIsOfferedWithItsTimeAndTakenOnlyIfWanted() {
        keys.add((c, nanos) -> {
            happened.add(c + "@" + nanos);
            return c == 'C';
        });
        assertThat(typed('C', 0)).isTrue();
        assertThat(typed('x', 0)).isFalse();
        assertThat(happened).containsExactly("C@42", "x@42");
    }

    @Test
    void theEnterThatEndsAScanPressesNoButton() {
        keys.add((c, nanos) -> c == '\n');
        assertThat(pressed(KeyEvent.VK_ENTER, 0)).isTrue();
        assertThat(typed('\n', 0)).isTrue();
        assertThat(released(KeyEvent.VK_ENTER)).isTrue();
    }

    @Test
    void anEnterThatIsHeldAfterAScanPressesNothingThatTheScanOpened() {
        List<Boolean> scans = new ArrayList<>(List.of(true, false, false));
        keys.add((c, nanos) -> scans.remove(0));
        assertThat(pressed(KeyEvent.VK_ENTER, 0)).isTrue();
        released(KeyEvent.VK_ENTER);
        now += 700_000_000L;
        assertThat(pressed(KeyEvent.VK_ENTER, 0)).isTrue();
        released(KeyEvent.VK_ENTER);
        now += 2_000_000_000L;
        assertThat(pressed(KeyEvent.VK_ENTER, 0)).isFalse();
    }

    @Test
    void anyOtherEnterIsLeftToWhatHasTheKeyboard() {
        keys.add((c, nanos) -> false);
        assertThat(pressed(KeyEvent.VK_ENTER, 0)).isFalse();
        assertThat(typed('\n', 0)).isFalse();
        assertThat(released(KeyEvent.VK_ENTER)).isFalse();
    }

    @Test
    void escapeAndAltLeftGoBack() {
        assertThat(pressed(KeyEvent.VK_ESCAPE, 0)).isTrue();
        assertThat(pressed(KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK)).isTrue();
        assertThat(pressed(KeyEvent.VK_LEFT, 0)).isFalse();
        assertThat(happened).containsExactly("escape", "escape");
    }

    @Test
    void aPastedPictureIsTakenAndAControlKeyIsNoCharacter() {
        keys.add((c, nanos) -> happened.add("heard"));
        assertThat(pressed(KeyEvent.VK_V, InputEvent.CTRL_DOWN_MASK)).isTrue();
        assertThat(typed((char) 22, InputEvent.CTRL_DOWN_MASK)).isFalse();
        assertThat(happened).containsExactly("paste");
    }

    @Test
    void tabBringsTheFocusRingBack() {
        assertThat(pressed(KeyEvent.VK_TAB, 0)).isFalse();
        assertThat(happened).containsExactly("moved");
    }

    private boolean typed(char c, int modifiers) {
        return keys.dispatchKeyEvent(
                new KeyEvent(new JLabel(), KeyEvent.KEY_TYPED, 0, modifiers, KeyEvent.VK_UNDEFINED, c));
    }

    private boolean pressed(int code, int modifiers) {
        return keys.dispatchKeyEvent(
                new KeyEvent(new JLabel(), KeyEvent.KEY_PRESSED, 0, modifiers, code, KeyEvent.CHAR_UNDEFINED));
    }

    private boolean released(int code) {
        return keys.dispatchKeyEvent(
                new KeyEvent(new JLabel(), KeyEvent.KEY_RELEASED, 0, 0, code, KeyEvent.CHAR_UNDEFINED));
    }
}
