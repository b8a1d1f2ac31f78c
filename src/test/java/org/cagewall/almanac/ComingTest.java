package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.List;
import org.cagewall.almanac.Coming.What;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.junit.jupiter.api.Test;

/** What comes next at a cage, one of each kind, and each by itself. */
class ComingTest {

    private final NestSketch sketch = new NestSketch();
    private final NestSketch.Home home = sketch.home("A1", day(1)).box(BoxStep.ON, day(1));

    @Test
    void ofSeveralEggsTheFirstToHatchAreNamed() {
        home.round().eggs(4, day(11), 2);

        Coming hatch = next(What.HATCH, day(20));
        assertThat(marks(hatch)).as("the first two are sat on together").containsExactly("1", "2");
        assertThat(hatch.window().expected()).isEqualTo(day(31));
        assertThat(Coming.each(sketch.outlook(home), day(20)))
                .filteredOn(coming -> coming.what() == What.HATCH)
                .hasSize(4);
    }

    @Test
    void aChickThatHasOutgrownItsRingDoesNotHideItsYoungerSister() {
        NestSketch.Clutch round = home.round().eggs(2, day(1), 2);
        round.egg(1).hatched(day(20));
        round.egg(2).hatched(day(28));

        assertThat(marks(next(What.RING, day(35)))).containsExactly("1");
        assertThat(marks(next(What.RING, day(36))))
                .as("the elder is 16 days old")
                .containsExactly("2");
        assertThat(Coming.at(sketch.outlook(home), day(44)))
                .extracting(Coming::what)
                .doesNotContain(What.RING);
    }

    @Test
    void theHenGoesOnTheMorningThatSuitsTheDaysAway() {
        home.parting(day(10)).box(BoxStep.TURNED, day(10)).box(BoxStep.OFF, day(12));
        home.cockOut(day(14));
        sketch.away(day(27), day(40));

        Window henOut = next(What.HEN_OUT, day(20)).window();
        assertThat(henOut.earliest()).isEqualTo(day(21));
        assertThat(henOut.expected()).as("not in the last three days before").isEqualTo(day(23));
        assertThat(henOut.latest()).isEqualTo(day(28));
    }

    @Test
    void clearEggsAreTheirOwnThing() {
        NestSketch.Clutch round = home.round().eggs(2, day(1), 2);
        round.egg(1).candled(EggFinding.CLEAR, day(8));
        round.egg(2).hatched(day(21));

        assertThat(marks(next(What.CLEAR_EGGS, day(21)))).containsExactly("1");
        assertThat(Coming.at(sketch.outlook(home), day(21)))
                .extracting(coming -> coming.window().expected())
                .as("the soonest first")
                .isSorted();
    }

    private Coming next(What what, LocalDate today) {
        return Coming.at(sketch.outlook(home), today).stream()
                .filter(coming -> coming.what() == what)
                .findFirst()
                .orElseThrow();
    }

    private static List<String> marks(Coming coming) {
        return coming.whom().stream().map(lying -> lying.egg().mark()).toList();
    }
}
