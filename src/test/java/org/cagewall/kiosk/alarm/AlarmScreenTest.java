package org.cagewall.kiosk.alarm;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JLabel;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.Sat;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.care.Sign;
import org.cagewall.tasks.Danger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** An alarm, touched by a sitter. */
class AlarmScreenTest extends WithDaybook {

    private final Halfway<AlarmHalf> halfway = new Halfway<>();

    private AlarmScreen screen;

    @BeforeEach
    void away() {
        inesIsAway();
    }

    @ParameterizedTest
    @EnumSource
    void theStepsAndTheNumbersAreWholeAtEveryTextSize(TextSize size) {
        alarm(size, Optional.of(Danger.LOOSE)).png("alarm-loose-" + size).assertFit();
        halfway.clear();
        alarm(size, Optional.empty()).png("alarm-all-" + size).assertFit();
    }

    @Test
    void aLooseBirdNeedsNeitherRingNorCage() {
        Painted alarm = alarm(TextSize.NORMAL, Optional.of(Danger.LOOSE));
        assertThat(said(alarm)).contains("0555 0142", "Do not chase it");

        alarm.press("cage.unknown").press("record");

        assertThat(book.lines("bird-loose")).singleElement().asString().contains("\"count\":1", "\"by\":\"Tomas\"");
    }

    @Test
    void aCardThatIsScannedInAnAlarmAsksOnceACageWasTouched() {
        Painted alarm = alarm(TextSize.NORMAL, Optional.of(Danger.DEAD));
        assertThat(screen.isBegun()).isFalse();

        alarm.press("cage.A2");

        assertThat(screen.isBegun()).isTrue();
    }

    @Test
    void anAlarmAtACageIsAReportOfThatCage() {
        alarm(TextSize.NORMAL, Optional.of(Danger.DEAD)).press("cage.A2").press("record");

        assertThat(book.lines("\"check\"")).singleElement().asString().contains("\"A2\"", "\"dead\"");
    }

    @ParameterizedTest
    @EnumSource
    void whatIsRecordedOfAnAlarmIsWhatWasTouchedAndNoMore(Danger danger) {
        Painted alarm = alarm(TextSize.NORMAL, Optional.of(danger));
        if (danger.sign().isPresent()) {
            alarm.press("cage.A1");
        }
        alarm.press("record");

        assertThat(book.lines("\"by\":\"Tomas\""))
                .singleElement()
                .asString()
                .contains(danger.sign().map(sign -> "[\"" + sign.id() + "\"]").orElse("\"" + danger.word() + "\""));
    }

    @Test
    void aSickBirdIsRecordedAsSickAndNotAsOnTheFloor() {
        alarm(TextSize.NORMAL, Optional.of(Danger.ILL)).press("cage.A1").press("record");

        assertThat(book.lines("\"check\""))
                .singleElement()
                .asString()
                .contains("\"sick\"")
                .doesNotContain("floor");
        assertThat(WORDS.say(Sign.SICK.words())).isEqualTo("a bird is sick");
    }

    @Test
    void anAlarmIsNotRecordedBeforeTheCageOrThatNobodyKnowsItWasTouched() {
        Painted alarm = alarm(TextSize.NORMAL, Optional.of(Danger.ILL)).press("record");

        assertThat(said(alarm)).contains("Which cage?", "Touch it, or touch: I do not know.");
        assertThat(book.lines("\"by\":\"Tomas\"")).isEmpty();

        alarm.press("answer.ok").press("cage.unknown").press("record");

        assertThat(book.lines("alarm-raised")).singleElement().asString().contains("\"ill\"");
    }

    @Test
    void whoMustLeaveIsToldToLeaveFirstAndToPhoneFromOutside() {
        String said = said(alarm(TextSize.NORMAL, Optional.of(Danger.SMOKE)));

        assertThat(said)
                .contains("1. Go out now", "Leave first. Phone from outside.")
                .doesNotContain("Until somebody answers", "how the birds breathe");
    }

    @Test
    void anAlarmOfTheRoomIsAnEntry() {
        alarm(TextSize.NORMAL, Optional.of(Danger.STRANGER)).press("record");

        assertThat(book.lines("alarm-raised")).singleElement().asString().contains("\"stranger\"");
    }

    @Test
    void whatWasTouchedIsThereAgainWhenTheSitterComesBackFromThePhones() {
        alarm(TextSize.NORMAL, Optional.of(Danger.DEAD)).press("cage.A2").press("phone");

        alarm(TextSize.NORMAL, Optional.empty()).press("record");

        assertThat(book.lines("\"check\"")).singleElement().asString().contains("\"A2\"", "\"dead\"");
    }

    private Painted alarm(TextSize size, Optional<Danger> danger) {
        return Sat.at(book, size, "Tomas", new Destination.Alarm(danger), (pen, stage) -> {
            screen = new AlarmScreen(book.desk(), pen, stage, stage, WORDS, halfway, danger);
            return screen;
        });
    }

    private static String said(Painted painted) {
        return painted.all().stream()
                .map(part -> part instanceof JLabel label ? label.getText() : "")
                .collect(Collectors.joining("\n"));
    }
}
