package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class KeysTest {

    private static final long SECOND = 1_000_000_000L;

    private final List<String> happened = new ArrayList<>();
    private final Container part = new Container();
    private boolean byKeys = true;
    private long now = 10 * SECOND;
    private long when;
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
        public boolean movesByKey() {
            happened.add("moves");
            return true;
        }

        @Override
        public Component focusToBe() {
            return null;
        }

        @Override
        public boolean isByKeys() {
            return byKeys;
        }

        @Override
        public void wake(long nanos) {
            happened.add("wakes");
        }
    });

    @Test
    void everyCharacterIsHeardWithItsTimeAndReachesNothingElse() {
        keys.add((c, nanos) -> {
            happened.add(c + "@" + (nanos - 10 * SECOND));
            return false;
        });
        press('S', KeyEvent.VK_S, 0);
        assertThat(happened).containsExactly("S@0");
    }

    @Test
    void theEnterThatEndsAScanPressesNoButton() {
        keys.add((c, nanos) -> c == '\n');
        press('\n', KeyEvent.VK_ENTER, 0);
        rest();
        assertThat(happened).isEmpty();
    }

    @Test
    void anEnterThatIsHeldAfterAScanPressesNothingThatTheScanOpened() {
        List<Boolean> scans = new ArrayList<>(List.of(true, false, false));
        keys.add((c, nanos) -> c != '\n' || scans.remove(0));
        press('\n', KeyEvent.VK_ENTER, 0);
        now += 700_000_000L;
        press('\n', KeyEvent.VK_ENTER, 0);
        rest();
        assertThat(happened).isEmpty();
        now += 2 * SECOND;
        press('\n', KeyEvent.VK_ENTER, 0);
        assertThat(happened).containsExactly("wakes");
    }

    @Test
    void whatDoesSomethingDoesItOnlyOnceItHasStoodAlone() {
        press((char) 27, KeyEvent.VK_ESCAPE, 0);
        assertThat(happened).containsExactly("wakes");
        keys.quiet();
        assertThat(happened).as("asked too soon").containsExactly("wakes", "wakes");
        rest();
        assertThat(happened).endsWith("escape");
    }

    @Test
    void aBlankATabAnEnterOrAnEscapeBeforeOrAmidOrAfterLettersDoesNothing() {
        for (long gap : List.of(2_000_000L, 140_000_000L)) {
            for (String code :
                    List.of(" S", "\tS", "\nS", (char) 27 + "S", "S ", "S\t", "S\n", "S" + (char) 27, "  \t", " \n")) {
                happened.clear();
                for (char c : code.toCharArray()) {
                    press(c, c == '\n' ? KeyEvent.VK_ENTER : c == 'S' ? KeyEvent.VK_S : c, 0);
                    now += gap;
                    if (gap > Doing.MOVE.nanos() && code.startsWith("\t")) {
                        continue;
                    }
                    keys.quiet();
                }
                rest();
                assertThat(happened).as("%s every %d ms", code, gap / 1_000_000).doesNotContain("escape", "moves");
                now += 3 * SECOND;
            }
        }
    }

    @Test
    void altLeftGoesBackAndAnArrowAloneDoesNot() {
        press(KeyEvent.CHAR_UNDEFINED, KeyEvent.VK_LEFT, InputEvent.ALT_DOWN_MASK);
        rest();
        press(KeyEvent.CHAR_UNDEFINED, KeyEvent.VK_LEFT, 0);
        rest();
        assertThat(happened).containsOnlyOnce("escape");
    }

    @Test
    void aPastedPictureIsTakenAndAControlKeyIsNoCharacter() {
        keys.add((c, nanos) -> happened.add("heard"));
        press((char) 22, KeyEvent.VK_V, InputEvent.CTRL_DOWN_MASK);
        rest();
        assertThat(happened).containsExactly("wakes", "paste");
    }

    @Test
    void aTabThatStandsAloneMovesTheFocusAndSoDoesTheNext() {
        press('\t', KeyEvent.VK_TAB, 0);
        rest();
        press('\t', KeyEvent.VK_TAB, 0);
        rest();
        assertThat(happened).containsExactly("wakes", "moves", "wakes", "moves");
    }

    @Test
    void aTabThatStoodAloneMovesTheFocusHoweverLateBothAreHeard() {
        press('\t', KeyEvent.VK_TAB, 0);
        when += 100;
        press('\t', KeyEvent.VK_TAB, 0);
        rest();
        assertThat(happened).containsExactly("wakes", "moves", "wakes", "moves");
    }

    @Test
    void aTabThatTheDisplayRepeatsBecauseTheHandIsSlowMovesTheFocusOnceAndLosesNoLaterTab() {
        press('\t', KeyEvent.VK_TAB, 0);
        when += 40;
        press('\t', KeyEvent.VK_TAB, 0);
        rest();
        press('\t', KeyEvent.VK_TAB, 0);
        rest();
        assertThat(happened).containsExactly("wakes", "moves", "wakes", "moves");
    }

    private void rest() {
        now += Doing.PRESS.nanos();
        keys.quiet();
    }

    /** A key goes down, writes and comes up; nothing of it may go on to the part by itself. */
    private void press(char c, int code, int modifiers) {
        boolean letsThrough = c == KeyEvent.CHAR_UNDEFINED && modifiers == 0;
        assertThat(keys.dispatchKeyEvent(event(KeyEvent.KEY_PRESSED, modifiers, code, c)))
                .as("pressed")
                .isEqualTo(!letsThrough);
        if (c != KeyEvent.CHAR_UNDEFINED && modifiers == 0) {
            assertThat(keys.dispatchKeyEvent(event(KeyEvent.KEY_TYPED, 0, KeyEvent.VK_UNDEFINED, c)))
                    .as("typed")
                    .isTrue();
        }
        assertThat(keys.dispatchKeyEvent(event(KeyEvent.KEY_RELEASED, modifiers, code, c)))
                .as("released")
                .isEqualTo(!letsThrough);
    }

    private KeyEvent event(int id, int modifiers, int code, char c) {
        return new KeyEvent(part, id, when, modifiers, code, c);
    }
}
