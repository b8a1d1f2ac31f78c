package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.tasks.RoomSketch.DAY;

import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.tasks.RoomSketch;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is bought for ten days away, summed from what a keeper wrote; all sums are worked by hand. */
class ShoppingTest {

    private static final Words WORDS = Words.english();

    @ParameterizedTest(name = "{0} and {1}: {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                "1 scoop | 2 scoops | 30 scoops seed",
                "1 scoop | 1 scoop | 20 × 1 scoop seed",
                "1 1/2 scoops | 1/2 scoop | 20 scoops seed",
                "1½ scoops | ¼ scoop | 17.5 scoops seed",
                "15 g | 20 grams | 350 g seed",
                "0.1 kg | 50 g | 1.5 kg seed",
                "1,5 l | 1 litre | 25 l seed",
                "2 | 3 | 50 seed",
                "15 g | 1 scoop | 150 g seed, 10 × 1 scoop seed",
                "1 heaped spoon | 2 heaped spoons | 30 heaped spoons seed",
            })
    void amountsOfOneUnitAreAddedUp(String one, String other, String said) {
        assertThat(said(room(one, other))).isEqualTo(said);
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "a pinch",
                "2-3 scoops",
                "as much as they eat",
                "1,500 g",
                "1/3 cup",
                "2 x 5 g",
                "1 scoop on top of the dish"
            })
    void whatIsNoPlainNumberOfSomethingIsListedAsItStands(String amount) {
        assertThat(said(room(amount, amount))).isEqualTo("seed \"" + amount + "\" a day in A1, A2");
    }

    @ParameterizedTest(name = "{0}")
    @ValueSource(strings = {"5 ml", "3 drops", "20 mg", "1 tablet", "2 doses", "0.5 cc"})
    void whatIsMeasuredAsAMedicineIsNeverAddedUp(String amount) {
        assertThat(said(room(amount, amount))).isEqualTo("seed \"" + amount + "\" a day in A1, A2");
    }

    @Test
    void aMedicineIsNotMultipliedWhateverItsUnit() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2).away(DAY, DAY.plusDays(9));
        sketch.cage("A1", 1, 1, Use.STOCK)
                .bird(Sex.HEN)
                .feed(new FeedLine("medicated water", "1 spoon", DayPart.MORNING));

        assertThat(said(sketch.room())).isEqualTo("medicated water \"1 spoon\" a day in A1");
    }

    @Test
    void noAmountIsEverMadeUp() {
        assertThat(said(room("", "2 scoops"))).isEqualTo("20 scoops seed, seed, no amount set, in A1");
    }

    @Test
    void waterAndCagesWithoutBirdsNeedNothing() {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2).away(DAY, DAY.plusDays(9));
        sketch.cage("A1", 1, 1, Use.STOCK).bird(Sex.HEN).feed(new FeedLine("fresh water", "1", DayPart.MORNING));
        sketch.cage("A2", 1, 2, Use.STOCK).feed(new FeedLine("seed", "1 scoop", DayPart.MORNING));

        assertThat(Shopping.of(sketch.room(), sketch.room().absences().get(0)).isEmpty())
                .isTrue();
    }

    private static String said(Room room) {
        Shopping shopping = Shopping.of(room, room.absences().get(0));
        assertThat(shopping.days()).isEqualTo(10);
        return String.join(", ", shopping.words().stream().map(WORDS::say).toList());
    }

    private static Room room(String one, String other) {
        RoomSketch sketch = new RoomSketch().wall("North", 1, 2).away(DAY, DAY.plusDays(9));
        sketch.cage("A1", 1, 1, Use.STOCK).bird(Sex.HEN).feed(new FeedLine("seed", one, DayPart.MORNING));
        sketch.cage("A2", 1, 2, Use.STOCK).bird(Sex.HEN).feed(new FeedLine("Seed", other, DayPart.EVENING));
        return sketch.room();
    }
}
