package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.cagewall.room.Sign;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What somebody saw that was different, and how soon whom to phone. */
class ReportTest {

    private static final Words WORDS = Words.english();

    /**
     * Bleeding, breathing with an open beak, not to be able to perch and sitting at the bottom of the cage are an avian
     * vet's emergencies (Gibbons, list of emergencies). That the vet is then the first to be phoned, and the owner
     * otherwise: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({
        "BLEEDING, VET_FIRST", "GASPING, VET_FIRST", "ON_FLOOR, VET_FIRST", "NOT_EATING, PHONE_NOW",
        "PUFFED_UP, PHONE_NOW", "DEAD, PHONE_NOW", "LOOSE, PHONE_NOW", "FIGHTING, PHONE_IF_UNSURE",
        "DISH_EMPTY, PHONE_IF_UNSURE"
    })
    void aSignSaysHowSoonAndWhomToPhone(Sign sign, Urgency urgency) {
        assertThat(new Report(List.of(sign), Map.of()).urgency()).isEqualTo(urgency);
    }

    @ParameterizedTest
    @CsvSource({
        "EATING, YES, PHONE_IF_UNSURE", "EATING, NO, PHONE_NOW",
        "UPRIGHT, YES, PHONE_IF_UNSURE", "UPRIGHT, NO, VET_FIRST",
        "HURT, NO, PHONE_IF_UNSURE", "HURT, YES, VET_FIRST"
    })
    void anAnswerSaysHowSoonAndWhomToPhone(Vital vital, Reply reply, Urgency urgency) {
        assertThat(new Report(List.of(Sign.OTHER), Map.of(vital, reply)).urgency())
                .isEqualTo(urgency);
    }

    @Test
    void theMostPressingCounts() {
        Report report = new Report(List.of(Sign.DISH_EMPTY, Sign.DEAD), Map.of(Vital.HURT, Reply.YES));

        assertThat(report.urgency()).isEqualTo(Urgency.VET_FIRST);
        assertThat(new Report(List.of(), Map.of()).urgency()).isEqualTo(Urgency.PHONE_IF_UNSURE);
    }

    @Test
    void whatASignHasSaidIsNotKeptTwiceAndAGoodAnswerIsKeptToo() {
        Report report = new Report(
                List.of(Sign.PUFFED_UP, Sign.BLEEDING),
                Map.of(Vital.HURT, Reply.YES, Vital.UPRIGHT, Reply.NO, Vital.EATING, Reply.YES));

        assertThat(report.told().stream().map(Sign::words).map(WORDS::say))
                .containsExactly("puffed up", "bleeding", "eating", "does not sit up, or breathes hard");
        assertThat(Report.known(report.signs())).containsExactly(Map.entry(Vital.HURT, Reply.YES));
    }

    @Test
    void theAnswersAreNotAmongWhatThereIsToTouch() {
        List<Sign> answers = Arrays.stream(Vital.values())
                .flatMap(vital -> Arrays.stream(Reply.values()).map(vital::told))
                .toList();

        assertThat(Report.choices()).hasSize(13).startsWith(Sign.ON_FLOOR).contains(Sign.NOT_EATING);
        assertThat(answers)
                .containsExactly(
                        Sign.EATING, Sign.NOT_EATING, Sign.UPRIGHT, Sign.NOT_UPRIGHT, Sign.HURT, Sign.NOT_HURT);
        assertThat(Sign.values()).allMatch(sign -> Report.choices().contains(sign) || answers.contains(sign));
    }

    @Test
    void nothingIsAskedWhereThereIsNoBirdToLookAt() {
        assertThat(Report.asksAfter(List.of(Sign.MISSING, Sign.LOOSE))).isFalse();
        assertThat(Report.asksAfter(List.of(Sign.MISSING, Sign.FIGHTING))).isTrue();
        assertThat(Report.asksAfter(List.of())).isTrue();
    }
}
