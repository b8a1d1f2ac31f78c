package org.cagewall.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.cagewall.almanac.Timetable;
import org.cagewall.room.Timing;

/** How long each stage takes and what becomes of eggs: as one column has it, or as it is drawn. For one thread. */
interface Law {

    /**
     * Days, or how many eggs for {@link Timing#CLUTCH}.
     *
     * @param least what has gone by already without its happening: nothing is laid or hatched yesterday
     */
    int of(Timing timing, int least);

    /** Whether a chick hatches of an egg that may. */
    boolean hatches(Young egg);

    /** Whether a chick that is yet to hatch lives. */
    boolean isReared();

    /** As one column has it: every egg that may hatch does, and lives; a clutch and its gaps are the usual ones. */
    static Law of(Timetable timetable, Pace pace) {
        return new Law() {
            @Override
            public int of(Timing timing, int least) {
                Pace taken = timing == Timing.CLUTCH || timing == Timing.LAY_GAP ? Pace.USUAL : pace;
                return Math.max(least, taken.of(timetable.span(timing).orElseThrow()));
            }

            @Override
            public boolean hatches(Young egg) {
                return egg.mayHatch();
            }

            @Override
            public boolean isReared() {
                return true;
            }
        };
    }

    /** As it is drawn, from a chance that can be drawn anew by its seed. */
    static Law drawn(Map<Timing, DayLaw> laws, Odds odds, SplittableRandom chance) {
        return new Law() {
            @Override
            public int of(Timing timing, int least) {
                return laws.get(timing).draw(least, chance);
            }

            @Override
            public boolean hatches(Young egg) {
                return egg.mayHatch() && chance.nextDouble() < egg.chance();
            }

            @Override
            public boolean isReared() {
                return chance.nextDouble() < odds.reared();
            }
        };
    }

    /** The laws of every span of a timetable. */
    static Map<Timing, DayLaw> laws(Timetable timetable) {
        Map<Timing, DayLaw> laws = new EnumMap<>(Timing.class);
        timetable.values().forEach((timing, value) -> laws.put(timing, new DayLaw(value.span())));
        return laws;
    }
}
