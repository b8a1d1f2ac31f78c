package org.cagewall.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.room.EggState;
import org.cagewall.room.Lying;
import org.cagewall.text.Message;

/** Holds one nest against the day asked about: when it is done, what is in the way, and what can be done. Pure; any thread. */
record Nests(Cage cage, Course course, Question question, List<FosterMove> fosters) {

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
        return new NestAhead(cage, clear, chance, Optional.of(inTheWay(last, clear)), waysOut(clear));
    }

    /** Whether it is done by the day at the usual pace. */
    boolean isInTime() {
        return isInTime(clear(course));
    }

    private boolean isInTime(Window clear) {
        return !clear.expected().isAfter(question.clearBy());
    }

    /** When it is done, column by column; guessed where anything in it is. */
    private Window clear(Course of) {
        return clear(of, question.policy());
    }

    private Window clear(Course of, Policy policy) {
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

    private long daysLate(Window clear) {
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

    private Fate usual(Course of) {
        Fate fate = of.fate();
        of.run(Law.of(of.nest().timetable(), Pace.USUAL), fate);
        return fate;
    }

    private List<WayOut> waysOut(Window clear) {
        List<WayOut> ways = new ArrayList<>();
        List<Young> late = late();
        if (!late.isEmpty() || course.laying().isPresent()) {
            Course without = course.without(late::contains);
            ways.add(new WayOut(
                    WayOut.Way.DUMMIES,
                    clear(without),
                    late.isEmpty()
                            ? Message.of("plan.out-eggs-to-come")
                            : Message.of("plan.out-eggs", late.size(), names(late)),
                    late.isEmpty()
                            ? Message.of("plan.cost-no-eggs")
                            : Message.of("plan.cost-eggs", late.size(), full(late))));
        }
        fostered().ifPresent(ways::add);
        boxOff().ifPresent(ways::add);
        henOutEarly().ifPresent(ways::add);
        ways.removeIf(way -> !way.clear().expected().isBefore(clear.expected()));
        ways.add(new WayOut(
                WayOut.Way.SITTER,
                clear,
                Message.of("plan.out-sitter"),
                Message.of("plan.cost-sitter", clear.expected())));
        return ways;
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

    private Optional<WayOut> fostered() {
        List<FosterMove> moves =
                fosters.stream().filter(move -> move.from().id() == cage.id()).toList();
        if (moves.isEmpty()) {
            return Optional.empty();
        }
        Predicate<Young> moved = young -> young.lying().stream()
                .anyMatch(lying -> moves.stream().anyMatch(move -> move.egg().equals(lying)));
        return Optional.of(new WayOut(
                WayOut.Way.FOSTER,
                clear(course.without(moved)),
                Message.of(
                        "plan.out-foster",
                        moves.size(),
                        moves.stream().map(FosterMove::mark).toList(),
                        moves.stream().map(move -> move.to().name()).distinct().toList()),
                Message.of("plan.cost-foster", moves.size())));
    }

    private Optional<WayOut> boxOff() {
        List<Young> lost = course.young().stream()
                .filter(young ->
                        !young.isChick() || young.isInCare() && young.out().isEmpty())
                .toList();
        long chicks = lost.stream().filter(Young::isChick).count();
        long full = full(lost);
        long eggs = lost.size() - chicks;
        return course.nest().box().hanging().isEmpty()
                ? Optional.empty()
                : Optional.of(new WayOut(
                        WayOut.Way.BOX_OFF,
                        clear(course.without(lost::contains)),
                        Message.of("plan.out-box-off"),
                        lost.isEmpty()
                                ? Message.of("plan.cost-nothing")
                                : Message.of("plan.cost-box-off", full, eggs - full, chicks)));
    }

    private Optional<WayOut> henOutEarly() {
        return course.nest()
                .parting()
                .flatMap(PartingOutlook::henOutEarly)
                .filter(day -> question.policy() == Policy.APART)
                .map(day -> new WayOut(
                        WayOut.Way.HEN_OUT_EARLY,
                        fedAfter(day),
                        Message.of("plan.out-hen-early", day),
                        Message.of("plan.cost-hen-early")));
    }

    /** The cock rears the last chick, and is out with it; the hen has had her rest meanwhile. */
    private Window fedAfter(LocalDate henOut) {
        Window fed = clear(course, Policy.WEANED);
        return new Window(
                Window.later(fed.earliest(), henOut),
                Window.later(fed.expected(), henOut),
                Window.later(fed.latest(), henOut),
                fed.about());
    }

    private List<String> names(List<Young> eggs) {
        return eggs.stream()
                .flatMap(young -> young.lying().stream())
                .map((Lying lying) -> lying.name(cage.id()))
                .toList();
    }

    /** How many of them are known to be full. */
    private static long full(List<Young> young) {
        return young.stream()
                .flatMap(each -> each.lying().stream())
                .map(lying -> lying.egg().state())
                .filter(state -> state == EggState.FULL || state == EggState.PIPPED)
                .count();
    }
}
