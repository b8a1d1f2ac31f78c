package org.cagewall.kiosk.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.kit.nest.EggButton;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.kiosk.kit.strip.DayMark;
import org.cagewall.kiosk.kit.strip.MarkLabel;
import org.cagewall.kiosk.kit.wall.Tile;
import org.cagewall.kiosk.kit.wall.TileFace;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PartsTest {

    private static final Words WORDS = Words.english();
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    /** A text may come from a code or a camera's name: it is shown as it is written, and nothing it names is fetched. */
    @Test
    void noTextIsTakenForAPageOfTheWeb() {
        String page = "<html><img src=\"file:///none.png\">";
        Painted.of(600, 200, () -> {
            for (JComponent part : List.of(
                    new WrapLabel(page, TextStyle.LINE, Tone.INK),
                    new Tag(TagKind.PLAIN, page),
                    new MarkLabel(new DayMark(DayMark.Shape.DOT, DayMark.Ground.PLAIN), page),
                    TouchButton.of(ButtonKind.PLAIN, "go", page, () -> {}))) {
                assertThat(part.getClientProperty("html")).isNull();
            }
            return new Stack();
        });
    }

    @Test
    void aStepperStopsAtItsEnds() {
        List<Integer> told = new ArrayList<>();
        Painted painted = Painted.of(400, 120, () -> new Stepper(WORDS, "birds", "Birds", 0, 2, 1, told::add));
        painted.press("birds.more");
        assertThat(painted.find("birds.more", TouchButton.class).isEnabled()).isFalse();
        painted.press("birds.fewer").press("birds.fewer");
        assertThat(painted.find("birds.fewer", TouchButton.class).isEnabled()).isFalse();
        assertThat(told).containsExactly(2, 1, 0);
        assertThat(painted.find("birds.value", WrapLabel.class).getText()).isEqualTo("0");
    }

    @Test
    void aNumberIsTypedRubbedOutAndCleared() {
        List<OptionalInt> told = new ArrayList<>();
        Painted painted = Painted.of(400, 420, () -> new CountPad(WORDS, "pad", 400, told::add));
        painted.press("pad.0")
                .press("pad.4")
                .press("pad.0")
                .press("pad.1")
                .press("pad.back")
                .press("pad.clear");
        assertThat(told)
                .containsExactly(
                        OptionalInt.of(0),
                        OptionalInt.of(4),
                        OptionalInt.of(40),
                        OptionalInt.of(4),
                        OptionalInt.empty());
    }

    @Test
    void oneOfSeveralWordsIsChosenAndStaysChosen() {
        List<String> told = new ArrayList<>();
        Painted painted = Painted.of(600, 60, () -> Chips.oneOf("when", choices("morning", "evening"), told::add));
        painted.press("when.morning").press("when.morning").press("when.evening");
        assertThat(told).containsExactly("morning", "morning", "evening");
        assertThat(painted.find("when.morning", AbstractButton.class).isSelected())
                .isFalse();
    }

    @Test
    void severalWordsAreChosenAndTakenBack() {
        List<Set<String>> told = new ArrayList<>();
        Painted painted = Painted.of(600, 60, () -> Chips.someOf("signs", choices("quiet", "puffed up"), told::add));
        painted.press("signs.quiet").press("signs.puffed up").press("signs.quiet");
        assertThat(told).containsExactly(Set.of("quiet"), Set.of("quiet", "puffed up"), Set.of("puffed up"));
    }

    @Test
    void chipsGoOnInANextLineWhereTheWidthEnds() {
        Painted painted = Painted.of(300, 300, () -> {
            Stack stack = new Stack();
            stack.add(Chips.someOf("signs", choices("on the floor", "puffed up", "not eating", "blood"), all -> {}));
            return stack;
        });
        painted.assertFit();
        assertThat(painted.find("signs.blood", AbstractButton.class).getY())
                .isGreaterThan(
                        painted.find("signs.on the floor", AbstractButton.class).getY());
    }

    @Test
    void ofTodayAndYesterdayOneIsAlwaysOn() {
        List<String> told = new ArrayList<>();
        Painted painted = Painted.of(300, 56, () -> new Segment<>("day", choices("today", "yesterday"), told::add));
        assertThat(painted.find("day.today", AbstractButton.class).isSelected()).isTrue();
        painted.press("day.yesterday").press("day.yesterday");
        assertThat(painted.find("day.today", AbstractButton.class).isSelected()).isFalse();
        assertThat(painted.find("day.yesterday", AbstractButton.class).isSelected())
                .isTrue();
        assertThat(told).containsExactly("yesterday", "yesterday");
    }

    @Test
    void aDayIsPickedInTheNextMonthAndDaysBeyondTheLastCannotBe() {
        List<LocalDate> told = new ArrayList<>();
        Painted painted = Painted.of(
                640, 480, () -> new DateStrip(WORDS, "day", TODAY, TODAY, LocalDate.of(2026, 5, 3), TODAY, told::add));
        assertThat(painted.find("day.before", TouchButton.class).isEnabled()).isFalse();
        assertThat(painted.find("day.2026-04-13", AbstractButton.class).isEnabled())
                .isFalse();
        painted.press("day.after").press("day.2026-05-03");
        assertThat(told).containsExactly(LocalDate.of(2026, 5, 3));
        assertThat(painted.find("day.after", TouchButton.class).isEnabled()).isFalse();
        assertThat(painted.find("day.2026-05-04", AbstractButton.class).isEnabled())
                .isFalse();
    }

    /** ISO 8601: 14 April 2026 is a Tuesday, so it stands in the second column. */
    @Test
    void weeksBeginOnMonday() {
        Painted painted = Painted.of(
                640, 480, () -> new DateStrip(WORDS, "day", TODAY, TODAY.minusDays(13), TODAY, TODAY, day -> {}));
        int monday = painted.find("day.2026-04-13", AbstractButton.class).getX();
        assertThat(monday).isZero();
        assertThat(painted.find("day.2026-04-14", AbstractButton.class).getX()).isGreaterThan(monday);
        assertThat(painted.find("day.2026-04-06", AbstractButton.class).getX()).isEqualTo(monday);
    }

    @Test
    void aFieldTellsItsChangesAndWhatIsWrongWithIt() {
        List<String> told = new ArrayList<>();
        Field[] made = new Field[1];
        Painted painted = Painted.of(400, 160, () -> {
            made[0] = Field.line("ring", "Ring", "HB 26").onChange(told::add);
            return made[0];
        });
        painted.after(() -> made[0].value("HB 27")).after(() -> made[0].wrong("There is no bird with this ring."));
        assertThat(told).last().isEqualTo("HB 27");
        painted.assertFit();
        assertThat(painted.find("ring.wrong", WrapLabel.class).getHeight()).isPositive();
        painted.after(() -> made[0].wrong(""));
        assertThat(painted.maybe("ring.wrong")).isEmpty();
    }

    @Test
    void theTileSaysEverythingInOneSentenceForThoseWhoCannotSeeIt() {
        Painted painted = Painted.of(
                196,
                190,
                () -> new Tile(
                        "tile",
                        new TileFace("A2", "Pair 9", "4 chicks, 1 egg", "ring 2 by Thursday", TileFace.State.DUE),
                        () -> {}));
        assertThat(painted.find("tile", Tile.class).getAccessibleContext().getAccessibleName())
                .isEqualTo("A2, Pair 9, 4 chicks, 1 egg, ring 2 by Thursday");
    }

    @ParameterizedTest
    @EnumSource(TileFace.State.class)
    void aTileOfTheLeastHeightStillShowsTwoLinesOfItsBigWord(TileFace.State state) {
        Painted.of(
                        196,
                        166,
                        () -> new Tile(
                                "t", new TileFace("B12", "Pair 4", "5 eggs, 4 full", "due today", state), () -> {}))
                .assertTextIsWhole();
    }

    @Test
    void wrappedWordsMakeWhatHoldsThemHigherHoweverDeepTheyLie() {
        String text = "A bird on the floor, puffed up, gasping, bleeding or not eating: stop and phone at once.";
        Painted painted = Painted.of(320, 400, () -> {
            Pane page = new Pane(new MigLayout("insets 0, wrap 1, fillx", "[grow,fill]"));
            Card outer = new Card();
            Card inner = new Card();
            inner.add(new WrapLabel(text, TextStyle.LINE, Tone.INK), "wmin 0, growx");
            outer.add(inner, "growx");
            page.add(outer);
            page.add(TouchButton.of(ButtonKind.MAIN, "below", "Go on", () -> {}));
            return page;
        });
        painted.assertFit();
    }

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void everyPartGrowsWithTheTextSize(TextSize size) {
        List<Supplier<JComponent>> parts = List.of(
                () -> TouchButton.of(ButtonKind.MAIN, "b", "All well", () -> {}),
                () -> new Tag(TagKind.LATE, "late 2 days"),
                () -> new Tile("t", Gallery.tiles().get(0), () -> {}),
                () -> new Stepper(WORDS, "s", "Birds", 0, 9, 5, n -> {}),
                () -> Field.line("f", "Ring", "HB 26-041"),
                () -> new EggButton("e", EggLook.FULL, "1", "26 Apr", "egg 1", () -> {}));
        for (Supplier<JComponent> part : parts) {
            int[] normal = sizeOf(part, TextSize.NORMAL);
            int[] grown = sizeOf(part, size);
            assertThat(grown[0])
                    .isBetween((int) (normal[0] * size.factor() * 0.9), (int) (normal[0] * size.factor() * 1.1) + 4);
            assertThat(grown[1])
                    .isBetween((int) (normal[1] * size.factor() * 0.9), (int) (normal[1] * size.factor() * 1.1) + 4);
        }
    }

    @Test
    void theSameFieldTakesTheColoursOfTheOtherLight() {
        Painted.in(Light.DAY, () -> {
            Field field = Field.line("f", "Ring", "HB");
            Light.QUIET.shine();
            javax.swing.SwingUtilities.updateComponentTreeUI(field);
            assertThat(field.getComponent(1).getBackground()).isEqualTo(Tone.TILE.color());
            assertThat(field.getComponent(1).getForeground()).isEqualTo(Tone.INK.color());
            assertThat(field.getComponent(1).getFont().getSize()).isEqualTo(Sizes.px(20));
        });
    }

    private static int[] sizeOf(Supplier<JComponent> part, TextSize size) {
        int[] both = new int[2];
        Painted.in(Light.DAY, size, () -> {
            java.awt.Dimension preferred = part.get().getPreferredSize();
            both[0] = preferred.width;
            both[1] = preferred.height;
        });
        return both;
    }

    private static List<Choice<String>> choices(String... words) {
        return java.util.Arrays.stream(words)
                .map(word -> new Choice<>(word, word, word))
                .toList();
    }
}
