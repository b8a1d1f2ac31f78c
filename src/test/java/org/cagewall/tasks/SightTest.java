package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.cagewall.almanac.NestSketch;
import org.cagewall.room.Room;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** How many birds somebody counts who looks into a cage with young in it. */
class SightTest {

    private static final LocalDate LAID = LocalDate.of(2026, 5, 1);
    private static final LocalDate HATCHED = LAID.plusDays(20);

    private final NestSketch sketch = new NestSketch();
    private final NestSketch.Home home = sketch.home("A1", LAID.minusDays(12));
    private final NestSketch.Clutch clutch = home.round().eggs(3, LAID, 0);

    @Test
    void chicksThatAreOutOfTheBoxAreCountedWithTheirParents() {
        chicksHatch();
        home.box(BoxStep.ON, LAID.minusDays(12)).box(BoxStep.TURNED, HATCHED.plusDays(34));
        chicksLeave(HATCHED.plusDays(33));

        assertThat(seen(HATCHED.plusDays(35))).isEqualTo("5 birds, some young, box turned");
    }

    @Test
    void whileTheBoxHangsTheChicksMayBeInItOrOut() {
        chicksHatch();
        home.box(BoxStep.ON, LAID.minusDays(12));
        clutch.egg(1).out(HATCHED.plusDays(29));

        assertThat(seen(HATCHED.plusDays(29))).isEqualTo("1 to 5 birds, box shut");
    }

    @Test
    void youngThatLeftTheBoxAWeekAgoAreSurelySeenBesideTheCock() {
        chicksHatch();
        home.box(BoxStep.ON, LAID.minusDays(12));
        chicksLeave(HATCHED.plusDays(33));

        assertThat(seen(HATCHED.plusDays(39))).isEqualTo("1 to 5 birds, box shut");
        assertThat(seen(HATCHED.plusDays(40))).isEqualTo("4 or 5 birds, box shut");
    }

    @Test
    void chicksTooYoungToLeaveTheBoxAreNotLookedFor() {
        chicksHatch();
        home.box(BoxStep.ON, LAID.minusDays(12));

        assertThat(seen(HATCHED.plusDays(27))).isEqualTo("1 or 2 birds, box shut");
        assertThat(seen(HATCHED.plusDays(28))).isEqualTo("1 to 5 birds, box shut");
    }

    /** The pair of a lovebird sleeps in the box: common practice, no source. */
    @Test
    void whereTheCockSleepsInsideTooNoneOfThemMayBeSeen() {
        NestSketch lovebirds = new NestSketch("peach-faced lovebird");
        lovebirds.home("A1", LAID.minusDays(20)).box(BoxStep.ON, LAID.minusDays(12));
        Room room = lovebirds.room();

        assertThat(Words.english().say(Sight.of(room, room.cage("A1").orElseThrow(), LAID)))
                .isEqualTo("0 to 2 birds, box shut");
    }

    @Test
    void aCageWithOnlyItsChicksLeftIsFedAsAnyOther() {
        chicksHatch();
        chicksLeave(HATCHED.plusDays(30));
        home.cockOut(HATCHED.plusDays(31)).henOut(HATCHED.plusDays(31));

        Task morning = DailyList.of(sketch.room(), HATCHED.plusDays(32), Audience.SITTER)
                .get(0);

        assertThat(morning.words().key()).isEqualTo("tasks.do-morning");
        assertThat(seen(HATCHED.plusDays(32))).isEqualTo("3 young birds");
    }

    private void chicksHatch() {
        for (int mark = 1; mark <= 3; mark++) {
            clutch.egg(mark).hatched(HATCHED);
        }
    }

    private void chicksLeave(LocalDate day) {
        for (int mark = 1; mark <= 3; mark++) {
            clutch.egg(mark).out(day);
        }
    }

    private String seen(LocalDate day) {
        Room room = sketch.room();
        return Words.english().say(Sight.of(room, room.cage("A1").orElseThrow(), day));
    }
}
