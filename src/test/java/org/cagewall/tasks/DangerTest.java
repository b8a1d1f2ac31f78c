package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.FirstCall;
import org.cagewall.room.Room;
import org.cagewall.room.care.Sign;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Each danger, told once and plainly. */
class DangerTest {

    private static final Words WORDS = Words.english();
    private static final int LONGEST_SENTENCE = 15;

    private final Room room = new RoomSketch().away(DAY, DAY.plusDays(3)).room();

    @ParameterizedTest
    @EnumSource
    void everyDangerHasATitleARuleAndStepsInShortPlainSentences(Danger danger) {
        List<Message> said = Stream.of(Stream.of(danger.title(), danger.rule(room)), danger.steps(room).stream())
                .flatMap(each -> each)
                .toList();

        assertThat(danger.steps(room)).hasSizeBetween(3, 8);
        assertThat(said.stream().map(WORDS::say))
                .allSatisfy(words -> assertThat(words).doesNotContain("[", "{"))
                .flatMap(ReadingGrade::sentences)
                .allSatisfy(sentence -> {
                    assertThat(ReadingGrade.words(sentence)).as(sentence).hasSizeLessThanOrEqualTo(LONGEST_SENTENCE);
                    assertThat(ReadingGrade.ofSentence(sentence)).as(sentence).isLessThanOrEqualTo(6);
                });
    }

    @ParameterizedTest
    @EnumSource
    void everyDangerToPhoneAboutSaysSoInItsRuleAndInOneOfItsSteps(Danger danger) {
        boolean now = danger.urgency() == Urgency.PHONE_NOW;

        assertThat(WORDS.say(danger.rule(room)).toLowerCase()).matches(words -> !now || words.contains("phone"));
        assertThat(danger.steps(room).stream().map(WORDS::say))
                .matches(steps -> !now || steps.stream().anyMatch(step -> step.contains("No answer? Phone the next")));
    }

    @ParameterizedTest
    @EnumSource
    void whereNobodyAtAllAnswersItIsSaidWhatToDo(Danger danger) {
        String said = WORDS.say(danger.noAnswer());

        assertThat(said).contains("Phone the next", danger.isIllness() ? "then any vet" : "then all again");
        assertThat(ReadingGrade.words(said)).hasSizeLessThanOrEqualTo(LONGEST_SENTENCE);
        assertThat(ReadingGrade.sentences(said)).allSatisfy(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                .as(sentence)
                .isLessThanOrEqualTo(6));
    }

    @ParameterizedTest
    @EnumSource(names = "WATCH", mode = EnumSource.Mode.EXCLUDE)
    void everyDangerStandsOnThePanel(Danger.Group group) {
        String rule = WORDS.say(group.rule(room));

        assertThat(rule).doesNotContain("[", "{");
        assertThat(ReadingGrade.sentences(rule)).allSatisfy(sentence -> assertThat(ReadingGrade.words(sentence))
                .as(sentence)
                .hasSizeLessThanOrEqualTo(LONGEST_SENTENCE));
        assertThat(group.dangers()).isNotEmpty().allSatisfy(danger -> assertThat(rule)
                .contains(WORDS.say(
                        "danger." + danger.word() + "-brief",
                        "-",
                        room.settings().heatAct(),
                        room.settings().heatPhone(),
                        room.settings().coldPhone())));
    }

    @Test
    void aHenOnTheFloorOneThatStrainsAndABobbingTailAreACallAtOnce() {
        assertThat(Stream.of(Sign.ON_FLOOR, Sign.STRAINING, Sign.TAIL_BOBS))
                .flatMap(sign -> Danger.of(sign).stream().toList())
                .hasSize(3)
                .allMatch(danger -> danger.urgency() == Urgency.PHONE_NOW && danger.isIllness());
        assertThat(WORDS.say(Danger.STRAINING.rule(room)))
                .startsWith("A hen on the floor, or one that strains: phone now.");
    }

    @ParameterizedTest
    @EnumSource(names = {"SMOKE", "BREATH", "DEAD", "HEATER", "STRANGER"})
    void whereSomebodyMayBeInDangerTheEmergencyNumberIsNamedInTheSameWords(Danger danger) {
        assertThat(danger.steps(room).stream().map(WORDS::say))
                .anyMatch(step -> step.contains("call 112 (or the number for help where you live)"));
    }

    @Test
    void nobodyIsToldToCallForHelpWithoutANumber() throws IOException {
        try (Stream<Path> bundles = Files.list(Path.of("src/main/resources/org/cagewall/text/en"))) {
            assertThat(bundles.toList()).allSatisfy(bundle -> assertThat(Files.readString(bundle))
                    .doesNotContainIgnoringCase("call for help"));
        }
    }

    @Test
    void aStrangerIsNotToldThatTheOwnerIsAway() {
        String said = Stream.concat(Stream.of(Danger.STRANGER.rule(room)), Danger.STRANGER.steps(room).stream())
                .map(WORDS::say)
                .collect(Collectors.joining("\n"));

        assertThat(said)
                .contains("Keep the door shut.", "not today, please", "Do not say who is away.", "the police")
                .doesNotContain("Ines", "write down");
    }

    @Test
    void severalDeadBirdsMayMeanFumesAndADeadOneIsPhonedAboutBeforeItIsTouched() {
        List<String> steps = Danger.DEAD.steps(room).stream().map(WORDS::say).toList();

        assertThat(steps.get(0)).startsWith("Are several dead? It may be fumes. Go out");
        assertThat(steps.get(1)).startsWith("Phone now.");
        assertThat(String.join("\n", steps))
                .contains(
                        "gloves and a mask.",
                        "Shut doors and windows.",
                        "so that no bird gets out",
                        "no child and no pet");
    }

    @Test
    void aBleedingBirdAndAGaspingOneHaveStepsOfTheirOwnThatComeBeforeTheRest() {
        assertThat(Danger.of(Sign.BLEEDING)).contains(Danger.BLEEDING);
        assertThat(Danger.BLEEDING.steps(room).stream().map(WORDS::say))
                .noneMatch(step -> step.contains("egg"))
                .anyMatch(step -> step.contains("Say where it bleeds"));
    }

    @Test
    void theRuleForAnEmptyDishIsTheSameWhereverOneMeetsIt() {
        String rule = WORDS.say(Danger.EMPTY_DISH.rule(room));

        assertThat(rule).contains("fill it now", "report it as different", "puffed up", "Phone now.");
        assertThat(Danger.EMPTY_DISH.steps(room).stream().map(WORDS::say))
                .contains(
                        "Fill it now.",
                        "Does one not eat, or sit puffed up? Phone now.",
                        "Does nobody know how long it was empty? Phone now.",
                        "Then report it as different, so that the owner knows.");
    }

    @Test
    void whomTheOwnerNamedIsFirstForAnIllBirdAndTheOwnerForAllElse() {
        Alarms vet = Alarms.of(
                new RoomSketch()
                        .illFirst(FirstCall.VET)
                        .away(DAY, DAY.plusDays(3))
                        .room(),
                DAY);
        Alarms owner = Alarms.of(room, DAY);

        assertThat(vet.phones()).isEqualTo(vet.phones(Danger.ILL));
        assertThat(vet.phones().stream().map(Alarms.Phone::who))
                .containsExactly(Alarms.Who.VET, Alarms.Who.OWNER, Alarms.Who.SECOND);
        assertThat(vet.phones().stream()
                        .flatMap(phone -> phone.first().stream())
                        .map(WORDS::say))
                .containsExactly("first for a sick bird", "first for all else");
        assertThat(vet.phones(Danger.POWER).stream().map(Alarms.Phone::who))
                .containsExactly(Alarms.Who.OWNER, Alarms.Who.SECOND, Alarms.Who.VET);
        assertThat(Danger.values())
                .allSatisfy(danger -> assertThat(owner.phones(danger)).isEqualTo(owner.phones()));
        assertThat(owner.phones()).allMatch(phone -> phone.first().isEmpty());
    }
}
