package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.handover.Pack;
import org.cagewall.room.FoodKind;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every line of food that a keeper writes reaches the sitter, once, with its amount. */
class FoodTest {

    private static final Words WORDS = Words.english();

    private static final List<String> FOODS = List.of(
            "seed mix",
            "soaked seed",
            "canary seed",
            "seed",
            "Sprouted Seed",
            "eggfood",
            "egg food",
            "softfood",
            "soft food",
            "greens",
            "fruit",
            "apple",
            "grit",
            "cuttlefish bone",
            "millet spray",
            "pellets",
            "fresh water",
            "oat groats",
            "green seed mix");

    static Stream<Integer> seeds() {
        return IntStream.rangeClosed(1, 200).boxed();
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void eachLineStandsWithItsAmountInOneInstructionOfItsRoundAndWhatGoesBadIsTakenOut(int seed) {
        List<FeedLine> lines = any(new Random(seed));
        Room room = room(lines);
        List<Task> tasks = DailyList.of(room, DAY, Audience.SITTER);

        for (DayPart round : DayPart.values()) {
            List<String> whole = said(tasks, round, Form.HOW);
            List<String> brief = said(tasks, round, Form.BRIEF);
            List<String> paper = paper(room, round);
            for (FeedLine line : lines) {
                int times = line.when() == round ? 1 : 0;
                for (List<String> told : List.of(whole, brief, paper)) {
                    assertThat(told.stream().filter(sentence -> holds(sentence, line)))
                            .as("%s in the %s: %s", line, round, told)
                            .hasSize(times);
                }
                if (line.when() != round && line.knownAs() == FoodKind.PERISHABLE) {
                    assertThat(whole.stream().map(FoodTest::lower))
                            .containsOnlyOnce(lower("Take out what is left of the " + line.what() + "."));
                    assertThat(brief.stream().map(FoodTest::lower))
                            .containsOnlyOnce(lower("Old " + line.what() + " out."));
                    assertThat(paper.stream().map(FoodTest::lower))
                            .containsOnlyOnce(lower("Old " + line.what() + " out."));
                }
            }
        }
    }

    @Test
    void seedThatIsSoakedIsToldBesideTheSeedOfTheDish() {
        List<Task> tasks = DailyList.of(
                room(List.of(
                        new FeedLine("soaked seed", "1 spoon", DayPart.MORNING),
                        new FeedLine("seed mix", "2 scoops", DayPart.MORNING),
                        new FeedLine("canary seed", "1 pinch", DayPart.EVENING))),
                DAY,
                Audience.SITTER);

        assertThat(said(tasks, DayPart.MORNING, Form.HOW))
                .contains("Put in the seed dish: seed mix, 2 scoops.", "Give soaked seed: 1 spoon.");
        assertThat(said(tasks, DayPart.EVENING, Form.HOW))
                .contains("Take out what is left of the soaked seed.", "Put in the seed dish: canary seed, 1 pinch.");
    }

    @ParameterizedTest(name = "{0} is {1}")
    @CsvSource({
        "seed mix, DISH",
        "Canary Seed, DISH",
        "pellets, DISH",
        "lettuce seed, DISH",
        "soaked seed, PERISHABLE",
        "sprouted seed, PERISHABLE",
        "germinated seeds, PERISHABLE",
        "eggfood, PERISHABLE",
        "Egg Food, PERISHABLE",
        "softfood, PERISHABLE",
        "greens, PERISHABLE",
        "chickweed, PERISHABLE",
        "fruit, PERISHABLE",
        "blueberries, PERISHABLE",
        "millet spray, OTHER",
        "seed bell, OTHER",
        "grit, OTHER",
        "fresh water, OTHER",
        "cuttlefish bone, OTHER",
    })
    void whatALineIsIsGuessedFromItsWords(String what, FoodKind kind) {
        assertThat(new FeedLine(what, "1 scoop", DayPart.MORNING).knownAs()).isEqualTo(kind);
    }

    @Test
    void whatTheOwnerSaidOfALineHoldsAgainstItsWords() {
        FeedLine line = new FeedLine("house seed", "1 scoop", DayPart.MORNING).as(FoodKind.PERISHABLE);

        assertThat(said(DailyList.of(room(List.of(line)), DAY, Audience.SITTER), DayPart.EVENING, Form.HOW))
                .contains("Take out what is left of the house seed.");
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({
        "medicated water, 1 dish, true",
        "water, 5 ml, true",
        "Vitamin syrup, 3 drops, true",
        "calcium, 20mg, true",
        "wormer, 1 pinch, true",
        "doxycycline, 1 spoon, true",
        "ivermectin, 1, true",
        "seed mix, 2 scoops, false",
        "millet, 30 g, false",
        "greens, 1 handful, false",
        "mealworms, 4, false",
        "soft food, 1 spoon, false",
    })
    void aMedicineIsKnownByItsWordsAndByItsUnits(String what, String amount, boolean medicine) {
        assertThat(new FeedLine(what, amount, DayPart.MORNING).isMedicine()).isEqualTo(medicine);
    }

    private enum Form {
        HOW,
        BRIEF
    }

    /** Up to six lines of different foods, some of them said to be something else than their words tell. */
    private static List<FeedLine> any(Random chance) {
        List<String> foods = new ArrayList<>(FOODS);
        Collections.shuffle(foods, chance);
        List<FeedLine> lines = new ArrayList<>();
        for (int i = 0; i < 1 + chance.nextInt(6); i++) {
            FeedLine line = new FeedLine(
                    foods.get(i), (11 + i) + " scoops", DayPart.values()[chance.nextInt(DayPart.values().length)]);
            lines.add(
                    chance.nextInt(4) == 0
                            ? line.as(FoodKind.values()[chance.nextInt(FoodKind.values().length)])
                            : line);
        }
        return lines;
    }

    private static Room room(List<FeedLine> lines) {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 1);
        sketch.cage("A1", 1, 1, Use.BREEDING)
                .bird(Sex.HEN)
                .allowed(Permission.COUNT)
                .feed(lines.toArray(FeedLine[]::new));
        return sketch.away(DAY.minusDays(1), DAY.plusDays(3)).room();
    }

    private static boolean holds(String sentence, FeedLine line) {
        return sentence.contains(line.what()) && sentence.contains(line.amount());
    }

    private static List<String> said(List<Task> tasks, DayPart round, Form form) {
        return tasks.stream()
                .filter(task -> task.part().filter(round::equals).isPresent())
                .flatMap(task -> (form == Form.HOW ? task.how() : task.brief()).stream())
                .map(WORDS::say)
                .toList();
    }

    private static List<String> paper(Room room, DayPart round) {
        Pack.Given given = Pack.of(room, DAY, room.absences().get(0)).routine().get(0);
        List<Message> told = round == DayPart.MORNING ? given.morning() : given.evening();
        return told.stream().map(WORDS::say).toList();
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
