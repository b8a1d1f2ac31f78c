package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.cagewall.almanac.NestSketch;
import org.cagewall.desk.Daybook;
import org.cagewall.handover.Waiting.What;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What waits for the owner on the day of the return, by the timetable in {@code species/budgerigar.txt}. */
class WaitingTest {

    private static final Words WORDS = Words.english();
    private static final LocalDate LAID = LocalDate.of(2026, 5, 1);

    /** Sat on from that day, hatched eighteen days later. */
    private static final LocalDate HATCHED = LAID.plusDays(20);

    private final NestSketch sketch = new NestSketch();

    @Test
    void aRingThatStillFitsWaitsUntilItsLastDay() {
        oneChick();

        assertThat(waiting(HATCHED.plusDays(4))).noneMatch(each -> each.what() == What.TO_RING);
        assertThat(waiting(HATCHED.plusDays(5)).get(0).what()).isEqualTo(What.TO_RING);
        Waiting last = waiting(HATCHED.plusDays(10)).get(0);
        assertThat(last.cages()).containsExactly("A1");
        assertThat(WORDS.say(last.words())).isEqualTo("To ring while it still fits: chick 1");
        assertThat(WORDS.say(last.why())).isEqualTo("The last day is 31 May 2026.");
    }

    @Test
    void aChickPastTheLastDayIsTooLateHoweverLongTheOwnerWasAway() {
        oneChick();

        for (int age : List.of(11, 20, 35)) {
            Waiting late = waiting(HATCHED.plusDays(age)).stream()
                    .filter(each -> each.what() == What.RING_TOO_LATE)
                    .findFirst()
                    .orElseThrow();
            assertThat(WORDS.say(late.words())).isEqualTo("Too late for a closed ring: chick 1");
            assertThat(late.lateBy()).isEqualTo(age - 10);
        }
    }

    @Test
    void ofOneNestSomeRingsMayStillFitAndOthersNot() {
        NestSketch.Clutch clutch = sketch.home("A1", LAID).round().eggs(2, LAID, 2);
        clutch.egg(1).hatched(HATCHED);
        clutch.egg(2).hatched(HATCHED.plusDays(2));

        List<Waiting> waiting = waiting(HATCHED.plusDays(11));

        assertThat(waiting).extracting(Waiting::what).startsWith(What.TO_RING, What.RING_TOO_LATE);
        assertThat(waiting.get(0).words().args()).containsExactly(List.of("2"));
        assertThat(waiting.get(1).words().args()).containsExactly(List.of("1"));
    }

    @Test
    void aRingedChickWaitsForNoRingAndOneOldEnoughToBeTakenAwayDoes() {
        oneChick().ringed(HATCHED.plusDays(8)).ringSeen(HATCHED.plusDays(9)).out(HATCHED.plusDays(32));

        assertThat(waiting(HATCHED.plusDays(37))).noneMatch(each -> each.what() == What.TO_TAKE_AWAY);
        assertThat(waiting(HATCHED.plusDays(38)))
                .filteredOn(each -> each.what() == What.TO_TAKE_AWAY)
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.cages()).containsExactly("A1");
                    assertThat(each.due()).isEqualTo(HATCHED.plusDays(42));
                    assertThat(each.lateBy()).isZero();
                });
    }

    @Test
    void whateverElseIsLateComesAfterTheChicks() {
        oneChick();
        sketch.home("A2", LAID).round().eggs(2, HATCHED, 2);

        List<Waiting> waiting = waiting(HATCHED.plusDays(15));

        assertThat(waiting)
                .extracting(Waiting::what)
                .startsWith(What.RING_TOO_LATE)
                .contains(What.LATE);
        assertThat(waiting)
                .filteredOn(each -> each.what() == What.LATE)
                .allMatch(each -> each.lateBy() > 0)
                .anySatisfy(each -> {
                    assertThat(each.cages()).containsExactly("A2");
                    assertThat(WORDS.say(each.words())).startsWith("Candle egg");
                });
    }

    @Test
    void cardsOutOfDateAreOneLine(@TempDir Path folder) {
        try (Daybook book = Daybook.furnished(folder.resolve("room"), LocalDate.of(2026, 4, 10))
                .tell("""
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                {"deed":"card-printed","cage":"B1","by":"Ines"}
                {"deed":"bird-moved","bird":"HB 24-006","to":"A2","by":"Joan"}
                """)) {
            assertThat(Waiting.of(book.desk().room(), LocalDate.of(2026, 4, 10)))
                    .filteredOn(each -> each.what() == What.CARDS)
                    .singleElement()
                    .satisfies(each -> {
                        assertThat(each.cages()).containsExactly("A2", "B1");
                        assertThat(WORDS.say(each.words())).isEqualTo("2 cards out of date");
                    });
        }
    }

    private NestSketch.EggSketch oneChick() {
        return sketch.home("A1", LAID).round().eggs(1, LAID, 2).egg(1).hatched(HATCHED);
    }

    private List<Waiting> waiting(LocalDate day) {
        return Waiting.of(sketch.room(), day);
    }
}
