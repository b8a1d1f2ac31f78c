package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.cagewall.room.Cage;
import org.cagewall.room.Use;
import org.cagewall.room.care.Sign;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What somebody saw that was different, and how soon to phone. */
class ReportTest {

    private static final Words WORDS = Words.english();
    private static final Cage CAGE = cage(Use.STOCK);
    private static final Cage WEANING = cage(Use.NURSERY);
    private static final Map<Vital, Reply> BRIGHT =
            Map.of(Vital.EATING, Reply.YES, Vital.UPRIGHT, Reply.YES, Vital.HURT, Reply.NO);

    /**
     * Bleeding, breathing with an open beak, not to be able to perch and sitting at the bottom of the cage are an avian
     * vet's emergencies (Gibbons, list of emergencies); straining and a bobbing tail go with an egg that is stuck (WikiVet,
     * "Egg binding"). The others: common practice, no source.
     */
    @ParameterizedTest
    @CsvSource({
        "BLEEDING, PHONE_NOW",
        "GASPING, PHONE_NOW",
        "ON_FLOOR, PHONE_NOW",
        "NOT_EATING, PHONE_NOW",
        "TAIL_BOBS, PHONE_NOW",
        "STRAINING, PHONE_NOW",
        "PUFFED_UP, PHONE_NOW",
        "DEAD, PHONE_NOW",
        "LOOSE, PHONE_NOW",
        "FIGHTING, PHONE_IF_UNSURE",
        "DISH_EMPTY, PHONE_IF_UNSURE",
        "EGG_ON_FLOOR, PHONE_IF_UNSURE",
        "OTHER, PHONE_IF_UNSURE"
    })
    void aSignSaysHowSoonToPhone(Sign sign, Urgency urgency) {
        assertThat(new Report(List.of(sign), Map.of()).urgency(CAGE)).isEqualTo(urgency);
    }

    @ParameterizedTest
    @CsvSource({
        "EATING, YES, PHONE_IF_UNSURE", "EATING, NO, PHONE_NOW",
        "UPRIGHT, YES, PHONE_IF_UNSURE", "UPRIGHT, NO, PHONE_NOW",
        "HURT, NO, PHONE_IF_UNSURE", "HURT, YES, PHONE_NOW"
    })
    void anAnswerSaysHowSoonToPhone(Vital vital, Reply reply, Urgency urgency) {
        assertThat(new Report(List.of(Sign.OTHER), Map.of(vital, reply)).urgency(CAGE))
                .isEqualTo(urgency);
    }

    @Test
    void theMostPressingCounts() {
        Report report = new Report(List.of(Sign.DISH_EMPTY, Sign.DEAD), Map.of(Vital.HURT, Reply.YES));

        assertThat(report.dangers(CAGE)).containsExactly(Danger.BLEEDING, Danger.DEAD, Danger.EMPTY_DISH);
        assertThat(report.urgency(CAGE)).isEqualTo(Urgency.PHONE_NOW);
        assertThat(new Report(List.of(), Map.of()).urgency(CAGE)).isEqualTo(Urgency.PHONE_IF_UNSURE);
    }

    @Test
    void aBrightYoungBirdOnTheFloorOfAWeaningCageIsFine() {
        Report bright = new Report(List.of(Sign.ON_FLOOR), BRIGHT);

        assertThat(bright.dangers(WEANING)).isEmpty();
        assertThat(bright.urgency(WEANING)).isEqualTo(Urgency.PHONE_IF_UNSURE);
        assertThat(bright.urgency(CAGE)).isEqualTo(Urgency.PHONE_NOW);
    }

    @ParameterizedTest
    @EnumSource
    void aYoungBirdOnTheFloorOfAWeaningCageOfWhichOneAnswerIsMissingOrBadIsNot(Vital vital) {
        Map<Vital, Reply> open = new java.util.EnumMap<>(BRIGHT);
        open.remove(vital);
        Map<Vital, Reply> bad = new java.util.EnumMap<>(BRIGHT);
        bad.put(vital, vital.good() == Reply.YES ? Reply.NO : Reply.YES);

        assertThat(new Report(List.of(Sign.ON_FLOOR), open).urgency(WEANING)).isEqualTo(Urgency.PHONE_NOW);
        assertThat(new Report(List.of(Sign.ON_FLOOR), bad).urgency(WEANING)).isEqualTo(Urgency.PHONE_NOW);
        assertThat(new Report(List.of(Sign.ON_FLOOR, Sign.PUFFED_UP), BRIGHT).urgency(WEANING))
                .isEqualTo(Urgency.PHONE_NOW);
    }

    @Test
    void whatASignHasSaidIsNotAskedAndAGoodAnswerIsKeptToo() {
        Report report = new Report(
                List.of(Sign.PUFFED_UP, Sign.BLEEDING), Map.of(Vital.UPRIGHT, Reply.NO, Vital.EATING, Reply.YES));

        assertThat(report.told().stream().map(Sign::words).map(WORDS::say))
                .containsExactly("puffed up", "bleeding", "eating", "does not sit up, or breathes hard");
        assertThat(Report.questions(report.signs())).containsExactly(Vital.EATING, Vital.UPRIGHT);
    }

    @Test
    void theAnswersAreNotAmongWhatThereIsToTouch() {
        List<Sign> answers = Arrays.stream(Vital.values())
                .flatMap(vital -> Arrays.stream(Reply.values()).map(vital::told))
                .toList();

        assertThat(Report.choices()).hasSize(17).startsWith(Sign.ON_FLOOR).contains(Sign.NOT_EATING);
        assertThat(answers)
                .containsExactly(
                        Sign.EATING, Sign.NOT_EATING, Sign.UPRIGHT, Sign.NOT_UPRIGHT, Sign.HURT, Sign.NOT_HURT);
        assertThat(Sign.values())
                .allMatch(sign -> Report.choices().contains(sign)
                        || answers.contains(sign)
                        || sign == Sign.MORE_BIRDS
                        || Arrays.stream(Danger.values())
                                .anyMatch(danger ->
                                        danger.sign().filter(sign::equals).isPresent()));
    }

    @Test
    void nothingIsAskedWhereThereIsNoBirdToLookAtAndAnEggIsAnEgg() {
        assertThat(Report.questions(List.of(Sign.MISSING, Sign.LOOSE))).isEmpty();
        assertThat(Report.questions(List.of(Sign.EGG_ON_FLOOR))).isEmpty();
        assertThat(Report.questions(List.of(Sign.MISSING, Sign.FIGHTING))).hasSize(3);
        assertThat(Report.questions(List.of(Sign.EGG_ON_FLOOR, Sign.PUFFED_UP))).hasSize(3);
        assertThat(Report.questions(List.of())).hasSize(3);
    }

    private static Cage cage(Use use) {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        sketch.cage("A1", 1, 1, use);
        return sketch.room().cage("A1").orElseThrow();
    }
}
