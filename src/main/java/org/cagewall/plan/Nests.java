package org.cagewall.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.almanac.Window;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.text.Message;

/**
 * Holds one nest against the day asked about: when it is done, and what is in the way. Pure; any thread.
 *
 * @param away the days away that the question is about
 */
record Nests(Cage cage, Course course, AheadQuestion question, List<FosterMove> fosters, Optional<Absence> away) {

    /** Another keeper, where one was named. */
    Optional<String> second() {
        return away.flatMap(Absence::second);
    }

    /** Whether the owner has left already. */
    boolean isAway() {
        return away.filter(running -> running.runsOn(LocalDate.ofEpochDay(course.today())))
                .isPresent();
    }

    NestAhead ahead(double chance) {
        Window clear = clear(course);
        if (isInTime(clear)) {
            return new NestAhead(cage, clear, chance, Optional.empty(), List.of());
        }
        OptionalInt last = last();
        if (last.isEmpty() && question.policy() == Policy.WEANED) {
            return new NestAhead(
                    cage, clear, chance, Optional.of(Message.of("plan.way-done", daysLate(clear))), List.of());
        }
        return new NestAhead(cage, clear, chance, Optional.of(inTheWay(last, clear)), new WaysOut(this, clear).all());
    }

    /** Whether it is done by the day at the usual pace. */
    boolean isInTime() {
        return isInTime(clear(course));
    }

    boolean isInTime(Window clear) {
        return !clear.expected().isAfter(question.clearBy());
    }

    /** When it is done, column by column; guessed where anything in it is. */
    Window clear(Course of) {
        return clear(of, question.policy());
    }

    Window clear(Course of, Policy policy) {
        LocalDate[] days = new LocalDate[Pace.values().length];
        Fate fate = of.fate();
        for (Pace pace : Pace.values()) {
            of.run(Law.of(of.nest().timetable(), pace), fate);
            days[pace.ordinal()] = LocalDate.ofEpochDay(fate.clear(policy));
        }
        return new Window(days[0], days[1], days[2], course.isAbout());
    }

    /** The egg or chick of the nest that feeds itself last. */
    private OptionalInt last() {
        Fate fate = usual(course);
        int last = -1;
        for (int i = 0; i < fate.count; i++) {
            boolean here =
                    i >= course.young().size() || course.young().get(i).fed().isEmpty();
            if (here && fate.fed[i] != Fate.NEVER && (last < 0 || fate.fed[i] > fate.fed[last])) {
                last = i;
            }
        }
        return last < 0 ? OptionalInt.empty() : OptionalInt.of(last);
    }

    long daysLate(Window clear) {
        return clear.expected().toEpochDay() - question.clearBy().toEpochDay();
    }

    private Message inTheWay(OptionalInt slowest, Window clear) {
        long days = daysLate(clear);
        if (slowest.isEmpty()) {
            return Message.of("plan.way-parting", days);
        }
        Fate fate = usual(course);
        int last = slowest.getAsInt();
        LocalDate fed = LocalDate.ofEpochDay(fate.fed[last]);
        LocalDate hatch = LocalDate.ofEpochDay(fate.hatch[last]);
        if (last >= course.young().size()) {
            return Message.of("plan.way-egg-to-come", hatch, fed, days);
        }
        Young young = course.young().get(last);
        String name = young.lying().orElseThrow().name(cage.id());
        if (!young.isChick()) {
            return Message.of("plan.way-egg", name, hatch, fed, days);
        }
        return Message.of(
                fed.isAfter(question.clearBy()) ? "plan.way-chick" : "plan.way-chick-parting", name, fed, days);
    }

    Fate usual(Course of) {
        Fate fate = of.fate();
        of.run(Law.of(of.nest().timetable(), Pace.USUAL), fate);
        return fate;
    }

    /** The eggs of which chicks would come that feed themselves too late. */
    List<Young> late() {
        Fate fate = usual(course);
        int latest = latest(fate);
        return inCare(fate, fed -> fed > latest)
                .filter(young -> !young.isChick())
                .toList();
    }

    /** Whether a chick in its care, or one that may come of an egg in it, feeds itself in time. */
    boolean isPartlyInTime() {
        Fate fate = usual(course);
        int latest = latest(fate);
        return inCare(fate, fed -> fed <= latest).findAny().isPresent();
    }

    /** The last day on which a chick may feed itself for the nest to be done in time. */
    private int latest(Fate fate) {
        int rest = Math.max(0, fate.apart - fate.lastFed);
        return Course.day(question.clearBy()) - (question.policy() == Policy.APART ? rest : 0);
    }

    /** What lies in it of which chicks feed themselves on such days. */
    private Stream<Young> inCare(Fate fate, IntPredicate fed) {
        return IntStream.range(0, course.young().size())
                .filter(i -> fate.fed[i] != Fate.NEVER && fed.test(fate.fed[i]))
                .mapToObj(course.young()::get)
                .filter(young -> young.fed().isEmpty());
    }
}
