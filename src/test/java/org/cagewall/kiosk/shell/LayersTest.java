package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.DateStrip;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The inside of the window, without the window. */
class LayersTest {

    private static final Destination WALL = new Destination.Wall();
    private static final Destination TODAY = new Destination.Today();
    private static final Destination CAGE = Destination.Cage.byHand("B3");

    private final List<String> happened = new ArrayList<>();
    private Layers stage;

    @Test
    void oneGoesFromScreenToScreenAndBackAgain() {
        Painted painted = painted();
        painted.after(() -> stage.go(Destination.Cage.byHand("B3"))).press("nav.today");
        assertThat(happened).containsExactly("Wall shown", "Wall hidden", "Cage shown", "Cage hidden", "Today shown");
        painted.after(stage::escape);
        assertThat(stage.here()).isEqualTo(Destination.Cage.byHand("B3"));
        painted.after(stage::escape).after(stage::escape);
        assertThat(stage.here()).isEqualTo(WALL);
        assertThat(painted.find("title", WrapLabel.class).getText()).isEqualTo("Wall");
    }

    @Test
    void theBarShowsWhichMainScreenACageBelongsTo() {
        Painted painted = painted().after(() -> stage.go(Destination.Cage.byScan("B3")));
        assertThat(painted.find("nav.wall", javax.swing.AbstractButton.class).isSelected())
                .isTrue();
        assertThat(painted.find("nav.today", javax.swing.AbstractButton.class).isSelected())
                .isFalse();
    }

    @Test
    void whereNoScreenIsMadeYetACalmSentenceStands() {
        painted().after(() -> stage.go(new Destination.Ahead())).assertFit();
        assertThat(happened).endsWith("Wall hidden");
    }

    @Test
    void whoRecordsIsSeenAndChangedInOneTouch() {
        Painted painted = painted();
        painted.after(() -> stage.person("Tomas, sitter", () -> happened.add("change")))
                .press("person");
        assertThat(happened).endsWith("change");
        assertThat(painted.find("person", TouchButton.class)
                        .getAccessibleContext()
                        .getAccessibleName())
                .contains("Tomas, sitter");
    }

    @Test
    void whoIsLedAwayFromAHalfWrittenNoteIsToldThatItWasNotRecorded() {
        Painted painted = painted();
        ChoiceSheets sheets = new ChoiceSheets(stage, Words.english());
        painted.after(() -> sheets.note(Message.of("shell.note"), text -> happened.add(text)));
        painted.after(() -> painted.find("note", JTextComponent.class).setText("hen limps"))
                .after(() -> stage.go(CAGE));

        assertThat(painted.maybe("sheet")).isEmpty();
        assertThat(painted.texts()).contains("What was open before was not recorded.");
        assertThat(happened).doesNotContain("hen limps");
    }

    @Test
    void whoIsLedAwayFromAnUntouchedSheetIsToldNothing() {
        Painted painted = painted();
        ChoiceSheets sheets = new ChoiceSheets(stage, Words.english());
        painted.after(() -> sheets.note(Message.of("shell.note"), text -> happened.add(text)))
                .after(() -> stage.go(CAGE));

        assertThat(painted.maybe("sheet")).isEmpty();
        assertThat(painted.maybe("notice")).isEmpty();
    }

    @Test
    void aQuestionIsAnsweredOnceAndGoesAway() {
        Painted painted = painted().after(() -> stage.ask(question()));
        painted.assertFit().press("answer.yes");
        assertThat(happened).endsWith("yes");
        assertThat(painted.maybe("sheet")).isEmpty();
    }

    @Test
    void escapeGivesTheSafeAnswer() {
        Painted painted = painted().after(() -> stage.ask(question())).after(stage::escape);
        assertThat(happened).endsWith("no");
        assertThat(painted.maybe("sheet")).isEmpty();
    }

    @Test
    void anAnswerMayAskTheNextQuestion() {
        Painted painted = painted();
        painted.after(() -> stage.ask(Question.of(
                        Message.of("shell.leave"),
                        Message.of("shell.leave-text"),
                        AnswerButton.main("first", Message.of("shell.go-on"), () -> stage.ask(question())))))
                .press("answer.first");
        assertThat(painted.maybe("answer.yes")).isPresent();
    }

    @Test
    void escapeOnAScreenGoesBack() {
        painted().after(() -> stage.go(TODAY)).after(stage::escape);
        assertThat(stage.here()).isEqualTo(WALL);
    }

    @Test
    void goingSomewhereElseTakesASheetAway() {
        Painted painted = painted().after(() -> stage.ask(question())).after(() -> stage.go(TODAY));
        assertThat(painted.maybe("sheet")).isEmpty();
    }

    @Test
    void whatWasDoneStaysUntilTheNextTouchAndMovesNothing() {
        Painted painted = painted();
        int before = painted.find("view", JComponent.class).getHeight();
        painted.after(() -> stage.done(Message.of("shell.taken-back")));
        assertThat(painted.find("view", JComponent.class).getHeight()).isEqualTo(before);
        assertThat(painted.maybe("notice")).isPresent();
        painted.after(() -> stage.touched(painted.find("view", JComponent.class)));
        assertThat(painted.maybe("notice")).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void whatWasDoneLeavesThePartsBesideTheTitleToTheFinger(TextSize size) {
        Painted painted = painted(Light.DAY, size)
                .after(() -> stage.go(CAGE))
                .after(() -> stage.done(Message.of("shell.taken-back"), () -> happened.add("undone")));
        painted.png("notice-beside-" + size);

        assertThat(under(painted, "beside", 0.25)).isEqualTo("beside");
        assertThat(under(painted, "notice.undo", 0.5)).isEqualTo("notice.undo");
        assertThat(under(painted, "notice.text", 0.1)).startsWith("notice");
    }

    /** What a finger meets so far from the left end of this part. */
    private String under(Painted painted, String name, double along) {
        JComponent part = painted.find(name, JComponent.class);
        Point at = SwingUtilities.convertPoint(
                part, (int) Math.round(part.getWidth() * along), part.getHeight() / 2, stage);
        return SwingUtilities.getDeepestComponentAt(stage, at.x, at.y).getName();
    }

    @Test
    void whatWasDoneIsTakenBackInOneTouch() {
        Painted painted =
                painted().after(() -> stage.done(Message.of("shell.taken-back"), () -> happened.add("undone")));
        painted.after(() -> stage.touched(painted.find("notice.undo", JComponent.class)));
        painted.press("notice.undo");
        assertThat(happened).endsWith("undone");
        assertThat(painted.maybe("notice")).isEmpty();
    }

    @Test
    void goingSomewhereElseTakesTheNoticeAway() {
        Painted painted = painted()
                .after(() -> stage.done(Message.of("shell.taken-back")))
                .after(() -> stage.go(TODAY));
        assertThat(painted.maybe("notice")).isEmpty();
    }

    @Test
    void aFailureIsToldWithItsCodeAndTheKioskGoesOn() {
        Painted painted = painted().after(() -> stage.failed("QX7K2M"));
        assertThat(painted.names()).contains("failure");
        painted.press("failure.go-on");
        assertThat(painted.maybe("failure")).isEmpty();
        assertThat(stage.here()).isEqualTo(WALL);
    }

    @Test
    void aSecondFailureTakesThePlaceOfTheFirst() {
        Painted painted = painted().after(() -> stage.failed("AAAAAA")).after(() -> stage.failed("BBBBBB"));
        painted.press("failure.go-on");
        assertThat(painted.maybe("failure")).isEmpty();
    }

    @Test
    void aCardThatIsScannedOverAHalfFilledSheetAsksAndKeepsWhatWasWritten() {
        javax.swing.JTextField field = new javax.swing.JTextField("low on the perch");
        Painted painted = painted()
                .after(() -> stage.go(TODAY))
                .after(() -> stage.sheet(
                        Message.of("shell.leave"),
                        field,
                        List.of(AnswerButton.leave("no", Message.of("shell.leave-no")))));

        painted.after(() -> stage.goByCard(WALL, () -> {})).after(() -> stage.goByCard(WALL, () -> {}));
        assertThat(stage.here()).isEqualTo(TODAY);
        painted.press("answer.stay");
        assertThat(stage.shows(field)).isTrue();
        assertThat(field.getText()).isEqualTo("low on the perch");
        painted.after(() -> stage.goByCard(WALL, () -> {})).press("answer.open-card");
        assertThat(stage.here()).isEqualTo(WALL);
    }

    @Test
    void aTextOfAThousandWordsCanStillBeReadAndAnswered() {
        String long1 = "Look at every bird. ".repeat(120);
        Painted painted =
                painted().after(() -> stage.tell(Message.of("shell.leave"), Message.of("shell.failed-code", long1)));
        painted.png("shell-long-text");
        painted.assertFit();
        assertThat(painted.find("sheet.body.down", TouchButton.class).isEnabled())
                .isTrue();
    }

    @ParameterizedTest
    @EnumSource(Light.class)
    void everyLayerIsFitForATablet(Light light) {
        String suffix = "-" + light.name().toLowerCase(java.util.Locale.ROOT);
        painted(light)
                .after(() -> stage.ask(question()))
                .png("shell-question" + suffix)
                .assertFit();
        painted(light)
                .after(() -> stage.ask(new Question(
                        Message.of("shell.leave"),
                        Message.of("shell.leave-text"),
                        List.of(
                                AnswerButton.main("a", Message.of("shell.leave-no"), () -> {}),
                                AnswerButton.plain("b", Message.of("shell.not-recorded"), () -> {}),
                                AnswerButton.plain("c", Message.of("shell.leave-yes"), () -> {}),
                                AnswerButton.leave("d", Message.of("shell.leave-it"))))))
                .png("shell-four" + suffix)
                .assertFit();
        painted(light)
                .after(() -> stage.done(Message.of("shell.taken-back"), () -> {}))
                .png("shell-notice" + suffix)
                .assertFit();
        painted(light)
                .after(() -> stage.failed("QX7K2M"))
                .png("shell-failure" + suffix)
                .assertFit();
        painted(light)
                .after(() -> stage.sheet(
                        Message.of("shell.leave"),
                        new DateStrip(
                                Words.english(),
                                "day",
                                java.time.LocalDate.of(2026, 4, 14),
                                java.time.LocalDate.of(2026, 4, 1),
                                java.time.LocalDate.of(2026, 4, 30),
                                java.time.LocalDate.of(2026, 4, 14),
                                day -> {}),
                        List.of(
                                AnswerButton.main("a", Message.of("shell.go-on"), () -> {}),
                                AnswerButton.leave("d", Message.of("shell.leave-it")))))
                .png("shell-picker" + suffix)
                .assertFit();
    }

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void aQuestionFitsATabletAtEveryTextSize(TextSize size) {
        painted(Light.DAY, size).after(() -> stage.ask(question())).assertFit();
        painted(Light.DAY, size).after(() -> stage.failed("QX7K2M")).assertFit();
        painted(Light.DAY, size)
                .after(() -> stage.done(Message.of("shell.taken-back"), () -> {}))
                .assertFit();
    }

    @Test
    void theOtherLightIsPutOnWhileTheScreenStands() {
        Painted painted = painted();
        int day = painted.picture().getRGB(4, 4);
        painted.after(() -> {
            Light.QUIET.shine();
            javax.swing.SwingUtilities.updateComponentTreeUI(stage);
        });
        int quiet = painted.picture().getRGB(4, 4);
        assertThat(quiet).isNotEqualTo(day).isEqualTo(Tone.GROUND.color().getRGB());
    }

    private Painted painted() {
        return painted(Light.DAY);
    }

    private Painted painted(Light light) {
        return painted(light, TextSize.NORMAL);
    }

    private Painted painted(Light light, TextSize size) {
        happened.clear();
        return Painted.of(light, size, 1280, 800, () -> {
            stage = new Layers(Words.english());
            stage.person("Ines, owner", () -> {});
            stage.places(
                    List.of(new NavBar.Entry<>("wall", "Wall", WALL), new NavBar.Entry<>("today", "Today", TODAY)));
            stage.open(
                    Screens.none()
                            .with(Destination.Wall.class, any -> new HeadedScreen("Wall"))
                            .with(Destination.Today.class, any -> new HeadedScreen("Today"))
                            .with(Destination.Cage.class, any -> new HeadedScreen("Cage")),
                    WALL);
            return stage;
        });
    }

    private Question question() {
        return Question.of(
                Message.of("shell.leave"),
                Message.of("shell.leave-text"),
                AnswerButton.main("yes", Message.of("shell.leave-yes"), () -> happened.add("yes")),
                AnswerButton.plain("no", Message.of("shell.leave-no"), () -> happened.add("no")));
    }

    private final class HeadedScreen implements Screen {

        private final Heading heading;
        private final Pane view = new Pane(new java.awt.BorderLayout());
        private final String name;

        HeadedScreen(String name) {
            this.name = name;
            heading = new Heading(name, "Tuesday 14 April");
            if (name.equals("Cage")) {
                heading.beside(TouchButton.of(ButtonKind.PLAIN, "beside", "Beside the title", () -> {}));
            }
            view.setName("view");
            view.add(TouchButton.of(ButtonKind.PLAIN, "page", name, () -> {}));
        }

        @Override
        public Heading heading() {
            return heading;
        }

        @Override
        public JComponent view() {
            return view;
        }

        @Override
        public void shown() {
            happened.add(name + " shown");
        }

        @Override
        public void hidden() {
            happened.add(name + " hidden");
        }
    }
}
