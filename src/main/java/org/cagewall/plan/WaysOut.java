package org.cagewall.plan;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.cagewall.text.Message;

/**
 * What can be done about a nest that will not be done in time, so that nothing that lives comes to harm: no box is taken off
 * with a chick in it, and no egg of which a chick may come is given up past half of its sitting. Whatever the nest holds, its
 * keeper can go later, if they have not gone, have a keeper stand in, or leave it as it is with what that asks of the sitter. Pure; any thread.
 *
 * @param clear when the nest is done as it stands
 */
record WaysOut(Nests nest, Window clear) {

    /** Those by which the nest is done sooner, then those that leave it as it is. */
    List<WayOut> all() {
        List<WayOut> ways = new ArrayList<>(Stream.of(fewerRounds(), dummies(), fostered(), boxOff(), henOutEarly())
                .flatMap(Optional::stream)
                .filter(way -> way.clear().expected().isBefore(clear.expected()))
                .toList());
        if (!nest.isAway()) {
            ways.add(later());
        }
        ways.add(standIn());
        ways.add(leftToTheSitter());
        return ways;
    }

    private Course course() {
        return nest.course();
    }

    /** As many as are done in time, else none after the one under way. */
    private Optional<WayOut> fewerRounds() {
        int further = course().further().rounds();
        if (further == 0) {
            return Optional.empty();
        }
        Course fewer = IntStream.range(1, further)
                .map(left -> further - left)
                .mapToObj(course()::followedBy)
                .filter(course -> nest.isInTime(nest.clear(course)))
                .findFirst()
                .orElse(course().followedBy(0));
        return Optional.of(new WayOut(
                WayOut.Way.FEWER_ROUNDS,
                nest.clear(fewer),
                Message.of("plan.out-fewer-rounds", fewer.further().rounds()),
                Message.of("plan.cost-fewer-rounds")));
    }

    private Optional<WayOut> dummies() {
        List<Young> late = nest.late();
        List<Young> taken = late.stream().filter(this::mayBeGivenUp).toList();
        if (taken.isEmpty() && (!late.isEmpty() || course().laying().isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new WayOut(
                WayOut.Way.DUMMIES,
                nest.clear(course().without(taken::contains)),
                taken.isEmpty()
                        ? Message.of("plan.out-eggs-to-come")
                        : Message.of("plan.out-eggs", taken.size(), names(taken)),
                taken.isEmpty()
                        ? Message.of("plan.cost-no-eggs")
                        : Message.of("plan.cost-eggs", taken.size(), full(taken))));
    }

    /** What is known to be clear, and what has not been sat on for long. */
    private boolean mayBeGivenUp(Young egg) {
        return !egg.mayHatch() || !course().isPastHalfOfSitting(egg);
    }

    private Optional<WayOut> fostered() {
        List<FosterMove> moves = nest.fosters().stream()
                .filter(move -> move.from().id() == nest.cage().id())
                .toList();
        if (moves.isEmpty()) {
            return Optional.empty();
        }
        Predicate<Young> moved = young -> young.lying().stream()
                .anyMatch(lying -> moves.stream().anyMatch(move -> move.egg().equals(lying)));
        return Optional.of(new WayOut(
                WayOut.Way.FOSTER,
                nest.clear(course().without(moved)),
                Message.of(
                        "plan.out-foster",
                        moves.size(),
                        moves.stream().map(FosterMove::mark).toList(),
                        moves.stream().map(move -> move.to().name()).distinct().toList()),
                Message.of("plan.cost-foster", moves.size())));
    }

    private Optional<WayOut> boxOff() {
        List<Young> lost = course().young().stream()
                .filter(young -> !young.isChick() || isInTheBox(young))
                .toList();
        boolean harms = lost.stream().anyMatch(young -> young.isChick() || !mayBeGivenUp(young));
        if (harms || course().nest().box().hanging().isEmpty()) {
            return Optional.empty();
        }
        long full = full(lost);
        return Optional.of(new WayOut(
                WayOut.Way.BOX_OFF,
                nest.clear(course().without(lost::contains)),
                Message.of("plan.out-box-off"),
                lost.isEmpty()
                        ? Message.of("plan.cost-nothing")
                        : Message.of("plan.cost-box-off", full, lost.size() - full)));
    }

    private static boolean isInTheBox(Young young) {
        return young.isInCare() && young.out().isEmpty();
    }

    private Optional<WayOut> henOutEarly() {
        return course().nest()
                .parting()
                .flatMap(PartingOutlook::henOutEarly)
                .map(day -> Window.later(day, LocalDate.ofEpochDay(course().today())))
                .filter(day -> nest.question().policy() == Policy.APART)
                .map(day -> new WayOut(
                        WayOut.Way.HEN_OUT_EARLY,
                        fedAfter(day),
                        Message.of("plan.out-hen-early", day),
                        Message.of("plan.cost-hen-early")));
    }

    /** The cock rears the last chick, and is out with it; the hen has had her rest meanwhile. */
    private Window fedAfter(LocalDate henOut) {
        Window fed = nest.clear(course(), Policy.WEANED);
        return new Window(
                Window.later(fed.earliest(), henOut),
                Window.later(fed.expected(), henOut),
                Window.later(fed.latest(), henOut),
                fed.about());
    }

    private WayOut later() {
        return new WayOut(
                WayOut.Way.LATER,
                clear,
                Message.of("plan.out-later", clear.expected()),
                Message.of("plan.cost-later", nest.daysLate(clear), clear.latest()));
    }

    private WayOut standIn() {
        return new WayOut(
                WayOut.Way.KEEPER,
                clear,
                nest.second()
                        .map(name -> Message.of("plan.out-second", name, clear.expected()))
                        .orElse(Message.of("plan.out-keeper", clear.expected())),
                Message.of("plan.cost-keeper", new Meanwhile(nest).ofAKeeper()));
    }

    private WayOut leftToTheSitter() {
        Meanwhile meanwhile = new Meanwhile(nest);
        return new WayOut(
                WayOut.Way.SITTER,
                clear,
                Message.of(meanwhile.hatches() ? "plan.out-hatch" : "plan.out-sitter"),
                Message.of("plan.cost-sitter", meanwhile.ofASitter(), clear.expected()));
    }

    private List<String> names(List<Young> eggs) {
        return eggs.stream()
                .flatMap(young -> young.lying().stream())
                .map((Lying lying) -> lying.name(nest.cage().id()))
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

    /** What of a nest falls into the days after the one asked about, at the usual pace, if every egg that may hatch does. */
    private record Meanwhile(Nests nest) {

        /** What only a keeper can do, one after another. */
        List<Message> ofAKeeper() {
            Fate fate = nest.usual(nest.course());
            List<Message> asked = new ArrayList<>();
            told(asked, "plan.asks-ring", ringing(fate));
            told(asked, "plan.asks-wean", fed(fate));
            if (nest.question().policy() == Policy.APART
                    && nest.course().nest().parting().isPresent()) {
                asked.add(Message.of("plan.asks-part", LocalDate.ofEpochDay(fate.apart)));
            }
            return asked;
        }

        /** What somebody who knows nothing of birds has to do for it. */
        List<Message> ofASitter() {
            Fate fate = nest.usual(nest.course());
            List<Message> asked = new ArrayList<>();
            told(asked, "plan.asks-hatch", hatching(fate));
            if (fate.count > 0 && fed(fate).length > 0) {
                asked.add(Message.of("plan.asks-food"));
                asked.add(Message.of("plan.asks-shut"));
                asked.add(Message.of("plan.asks-phone"));
            }
            told(asked, "plan.asks-no-ring", ringing(fate));
            return asked.isEmpty() ? List.of(Message.of("plan.asks-usual")) : asked;
        }

        boolean hatches() {
            return hatching(nest.usual(nest.course())).length > 0;
        }

        private static void told(List<Message> asked, String what, int... days) {
            if (days.length > 0) {
                asked.add(Message.of(what, days.length, LocalDate.ofEpochDay(days[0])));
            }
        }

        private int[] hatching(Fate fate) {
            return days(fate, i -> !isChick(i) && fate.hatch[i] != Fate.NEVER, fate.hatch, 0);
        }

        private int[] ringing(Fate fate) {
            int age = WorkingBack.usual(nest.course().nest().timetable(), Timing.RINGING);
            return days(fate, i -> fate.hatch[i] != Fate.NEVER && !isRinged(i), fate.hatch, age);
        }

        private int[] fed(Fate fate) {
            return days(fate, i -> fate.fed[i] != Fate.NEVER && isHere(i), fate.fed, 0);
        }

        /** The days from the one asked about on, rising. */
        private int[] days(Fate fate, IntPredicate whose, int[] of, int later) {
            int from = Course.day(nest.question().clearBy());
            return IntStream.range(0, fate.count)
                    .filter(whose)
                    .map(i -> of[i] + later)
                    .filter(day -> day >= from)
                    .sorted()
                    .toArray();
        }

        private boolean isChick(int i) {
            return i < nest.course().young().size()
                    && nest.course().young().get(i).isChick();
        }

        private boolean isRinged(int i) {
            return i < nest.course().young().size()
                    && nest.course().young().get(i).ringed();
        }

        private boolean isHere(int i) {
            return i >= nest.course().young().size()
                    || nest.course().young().get(i).fed().isEmpty();
        }
    }
}
