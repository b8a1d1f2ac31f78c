package org.cagewall.kiosk.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A wet finger slips, shakes and drags; a press must mean what was meant. */
class TouchTest {

    private final List<String> pressed = new ArrayList<>();

    @ParameterizedTest
    @CsvSource({"0, 0", "4, 0", "0, 4", "-4, 3"})
    void aFingerThatSlipsAFewPixelsStillPresses(int dx, int dy) {
        one().drag("ok", dx, dy);
        assertThat(pressed).containsExactly("ok");
    }

    @Test
    void aFingerThatSlipsJustOverTheEdgeStillPresses() {
        one().drag("ok", 0, 32 + 10);
        assertThat(pressed).containsExactly("ok");
    }

    @Test
    void aFingerThatIsDrawnAwayDoesNotPress() {
        one().drag("ok", 0, 32 + 20);
        assertThat(pressed).isEmpty();
    }

    @Test
    void whatIsOffCannotBePressed() {
        Painted painted = one();
        painted.after(() -> painted.find("ok", TouchButton.class).setEnabled(false))
                .drag("ok", 0, 0);
        assertThat(pressed).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 10, -10})
    void aSmallSlipInAListStillPressesTheRow(int dy) {
        Painted list = list();
        list.drag("row.3", 0, dy);
        assertThat(pressed).containsExactly("row.3");
        assertThat(scrolled(list)).isZero();
    }

    @Test
    void aDragOfThirtySixPixelsScrollsTheListAndPressesNothing() {
        Painted list = list();
        list.drag("row.3", 0, -36);
        assertThat(pressed).isEmpty();
        assertThat(scrolled(list)).isEqualTo(36);
    }

    @Test
    void aDragThatComesBackToWhereItBeganPressesNothing() {
        Painted list = list();
        list.drag("row.3", 0, -80);
        list.drag("row.3", 0, 80);
        assertThat(pressed).isEmpty();
        assertThat(scrolled(list)).isZero();
    }

    @Test
    void theLargeButtonsTurnAListToItsEndAndBack() {
        Painted list = list();
        assertThat(list.find("list.up", TouchButton.class).isEnabled()).isFalse();
        while (list.find("list.down", TouchButton.class).isEnabled()) {
            list.press("list.down");
        }
        assertThat(scrolled(list)).isEqualTo(12 * 64 + 11 * 12 - 300);
        while (list.find("list.up", TouchButton.class).isEnabled()) {
            list.press("list.up");
        }
        assertThat(scrolled(list)).isZero();
    }

    @Test
    void aShortListHasNoButtonsToTurnIt() {
        Painted list = Painted.of(600, 300, () -> new TouchScroll(Words.english(), "list", rows(3)));
        assertThat(list.maybe("list.down")).isEmpty();
    }

    @Test
    void theSecondTouchOfAShakingHandPressesNothing() {
        Painted painted = one();
        painted.tap("ok", 10_000).tap("ok", 10_799);
        assertThat(pressed).containsExactly("ok");
        painted.tap("ok", 10_900);
        assertThat(pressed).hasSize(2);
    }

    @Test
    void whatHasSlidUnderTheFingerIsNotPressedByTheSecondTouch() {
        Painted list = Painted.of(600, 300, () -> {
            Pane rows = new Pane(new MigLayout("insets 0, wrap 1", "[400!,fill]", "[64!]"));
            for (String row : List.of("A1", "A2")) {
                rows.add(TouchButton.of(ButtonKind.MAIN, row, row, () -> {
                    pressed.add(row);
                    rows.remove(0);
                }));
            }
            return rows;
        });
        list.tap("A1", 10_000).tap("A2", 10_700);
        assertThat(pressed).containsExactly("A1");
        list.tap("A2", 10_900);
        assertThat(pressed).containsExactly("A1", "A2");
    }

    @Test
    void aTouchElsewhereIsNoSecondOneUnlessItComesAtOnceAsOfTwoFingers() {
        Painted list = list();
        list.tap("row.0", 10_000).tap("row.2", 10_100);
        assertThat(pressed).containsExactly("row.0");
        list.tap("row.2", 10_200);
        assertThat(pressed).containsExactly("row.0", "row.2");
    }

    @Test
    void aNumberIsCountedUpAsFastAsAFingerGoes() {
        Painted painted =
                Painted.of(400, 200, () -> new Stepper(Words.english(), "eggs", "Eggs", 0, 9, 0, value -> {}));
        painted.tap("eggs.more", 10_000).tap("eggs.more", 10_150).tap("eggs.more", 10_300);
        assertThat(painted.find("eggs", Stepper.class).value()).isEqualTo(3);
    }

    @Test
    void aClockThatIsSetBackDoesNotBlockTheButton() {
        one().tap("ok", 10_000_000).tap("ok", 6_400_000);
        assertThat(pressed).hasSize(2);
    }

    @ParameterizedTest
    @ValueSource(ints = {KeyEvent.VK_ENTER, KeyEvent.VK_SPACE})
    void theKeyboardPressesToo(int key) {
        Painted painted = one();
        painted.after(() -> {
            TouchButton button = painted.find("ok", TouchButton.class);
            for (int what : new int[] {KeyEvent.KEY_PRESSED, KeyEvent.KEY_RELEASED}) {
                KeyEvent event = new KeyEvent(button, what, 0, 0, key, (char) key);
                SwingUtilities.processKeyBindings(event);
            }
        });
        assertThat(pressed).containsExactly("ok");
    }

    @Test
    void textThatLooksLikeMarkupStaysText() {
        Painted painted = Painted.of(400, 64, () -> TouchButton.of(ButtonKind.PLAIN, "b", "<html><b>5</b>", () -> {}));
        assertThat(painted.find("b", TouchButton.class).getClientProperty("html"))
                .isNull();
    }

    private Painted one() {
        return Painted.of(400, 200, () -> {
            Pane pane = new Pane(new MigLayout("insets 60, fill", "[fill,grow]", "[64!]"));
            pane.add(TouchButton.of(ButtonKind.MAIN, "ok", "All well", () -> pressed.add("ok"))
                    .tall(64));
            return pane;
        });
    }

    private Painted list() {
        return Painted.of(600, 300, () -> new TouchScroll(Words.english(), "list", rows(12)));
    }

    private JComponent rows(int count) {
        Stack rows = new Stack();
        for (int i = 0; i < count; i++) {
            String name = "row." + i;
            rows.add(new ListRow(name, RowFace.of("B" + i, "2 birds", ""), () -> pressed.add(name)));
        }
        return rows;
    }

    private static int scrolled(Painted list) {
        Component row = list.find("row.0", Component.class);
        return -SwingUtilities.convertPoint(row, 0, 0, list.find("list", Component.class)).y;
    }
}
