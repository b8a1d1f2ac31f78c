package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Lying;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said of an egg or chick that a keeper carries to a nest of another stage. Three days are common practice, no
 * source; 18 days of incubation are the timetable's.
 */
class MoveByHandTest {

    private static final LocalDate TODAY = day(18);

    private final NestSketch sketch = new NestSketch();

    /** Three eggs two days apart, sat from the first day, hatch 18 days later; the egg that is moved, on day 27. */
    @ParameterizedTest
    @CsvSource(nullValues = "nothing", textBlock = """
            15, Egg 1 is to hatch 6 days before the next in B2
            13, Egg 1 is to hatch 4 days before the next in B2
            12, nothing
            9,  nothing
            2,  nothing
            1,  Egg 1 is to hatch 4 days after the last in B2
            """)
    void anEggIsSaidToLieMoreThanThreeDaysFromTheOthers(int firstLaid, String said) {
        home("B1").round().sitting(day(9)).egg(day(9));
        home("B2").round().sitting(day(firstLaid)).eggs(3, day(firstLaid), 2);

        assertThat(said(egg())).isEqualTo(Optional.ofNullable(said));
    }

    @Test
    void aChickIsComparedByTheDayItHatched() {
        home("B1").round().sitting(day(-6)).egg(day(-6)).hatched(day(12));
        Home host = home("B2");
        host.round().sitting(day(-2)).egg(day(-2)).hatched(day(16));
        assertThat(said(chick())).contains("Chick 1 hatched 4 days before the next in B2");

        host.clutch(0).egg(day(-3)).hatched(day(15));
        assertThat(said(chick())).isEmpty();
    }

    @Test
    void aHenOnClearEggsCountsByTheDaysOnWhichTheyWouldHaveHatched() {
        home("B1").round().sitting(day(9)).egg(day(9));
        home("B2").round().sitting(day(4)).egg(day(4)).candled(EggFinding.CLEAR, day(10));

        assertThat(said(egg())).contains("Egg 1 is to hatch 5 days from the time of the clear eggs in B2");
    }

    @Test
    void whereThereIsNothingToTellTheStageByNothingIsSaid() {
        home("B1").round().sitting(day(9)).egg(day(9)).candled(EggFinding.CLEAR, day(15));
        home("B2").round().sitting(day(1)).eggs(3, day(1), 2);
        assertThat(said(egg())).as("a clear egg hatches nowhere").isEmpty();

        home("B3");
        assertThat(MoveByHand.warning(sketch.room(), TODAY, lying("B2"), cage("B2"), cage("B3")))
                .isEmpty();
    }

    private Lying egg() {
        return lying("B1");
    }

    private Lying chick() {
        Room room = sketch.room();
        return room.nest(cage("B1")).chicks().get(0);
    }

    private Lying lying(String cage) {
        Room room = sketch.room();
        return room.nest(cage(cage)).eggs().get(0);
    }

    /** As far as the days; what follows is the same each time. */
    private Optional<String> said(Lying young) {
        return MoveByHand.warning(sketch.room(), TODAY, young, cage("B1"), cage("B2"))
                .map(Words.english()::say)
                .map(sentence -> sentence.split(":")[0]);
    }

    private Cage cage(String name) {
        return sketch.room().cage(name).orElseThrow();
    }

    private Home home(String name) {
        return sketch.home(name, day(-60)).box(BoxStep.ON, day(-40));
    }
}
