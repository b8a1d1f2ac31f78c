package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Sittings;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.BoxTrip;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Hung;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.NestLook;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.ToldDay;
import org.cagewall.room.nest.Weaning;

/** Works out what is expected of one cage. Pure; any thread. */
final class OneNest {

    /** A chick squeaks and chips its shell about 24 hours before it hatches; a breeder's page with daily photographs. */
    private static final int PIP_BEFORE_HATCH_DAYS = 1;

    /** An egg is overdue at laying and 23 days where 21 is the latest for incubation; common practice. */
    private static final int OVERDUE_AFTER_LAYING_DAYS = 2;

    private final Room room;
    private final Sittings sittings;
    private final Function<Pair, Timetable> timetables;
    private final Cage cage;
    private final Optional<Pair> pair;
    private final Timetable timetable;
    private final List<EggOutlook> eggs;
    private final List<ChickOutlook> chicks;

    OneNest(Room room, Sittings sittings, Function<Pair, Timetable> timetables, Cage cage, Timetable otherwise) {
        this.room = room;
        this.sittings = sittings;
        this.timetables = timetables;
        this.cage = cage;
        this.pair = room.pairIn(cage);
        this.timetable = pair.map(timetables).orElse(otherwise);
        List<Lying> lyings = room.nest(cage).all().stream()
                .filter(lying -> isOfPair(lying) || isInCareHere(lying))
                .toList();
        this.eggs = lyings.stream().map(this::egg).toList();
        this.chicks = lyings.stream()
                .filter(lying -> lying.chick().isPresent())
                .map(this::chick)
                .toList();
    }

    private boolean isOfPair(Lying lying) {
        return pair.filter(it -> it.id() == lying.pair().id()).isPresent();
    }

    /** An egg or chick of others that is here, or was reared here by this pair. */
    private boolean isInCareHere(Lying lying) {
        return lying.egg().nest() == cage.id()
                && (lying.egg().isInNest()
                        || lying.chick()
                                .flatMap(Chick::weaned)
                                .filter(weaned -> pair.filter(
                                                it -> !weaned.day().isBefore(it.since()))
                                        .isPresent())
                                .isPresent());
    }

    Outlook outlook() {
        Clutches clutches = new Clutches(cage.id(), sittings, timetable, eggs);
        return new Outlook(
                cage.id(),
                cage.box(),
                timetable,
                pair,
                pair.flatMap(this::firstEgg),
                pair.stream().flatMap(this::rounds).toList(),
                eggs,
                chicks,
                clutches.firstLook(),
                clutches.secondLook(),
                nestLook(),
                backs(),
                clutches.clearEggs(),
                pair.map(it -> new Parting(room, cage, it, timetable, eggs, chicks).outlook()));
    }

    private EggOutlook egg(Lying lying) {
        Egg egg = lying.egg();
        Timetable own = timetables.apply(lying.pair());
        Optional<SatFrom> sat = sittings.satFrom(lying);
        Optional<Window> wouldHatch = sat(sat, own.span(Timing.INCUBATION));
        Optional<Window> mayHatch = wouldHatch.filter(window -> egg.mayHatch());
        Optional<LocalDate> hatched = egg.chick().map(Chick::hatched);
        boolean guess = egg.chick().filter(Chick::about).isPresent();
        return new EggOutlook(
                lying,
                egg.nest() == cage.id(),
                sat,
                firstLook(egg, sat(sat, own.span(Timing.FIRST_LOOK))),
                secondLook(egg, sat(sat, own.span(Timing.SECOND_LOOK))),
                Due.of(egg.pipped(), mayHatch.map(window -> window.plusDays(-PIP_BEFORE_HATCH_DAYS))),
                Due.of(hatched, mayHatch).map(due -> due.guessed(guess)),
                wouldHatch,
                mayHatch.flatMap(window -> own.span(Timing.INCUBATION)
                        .map(days -> Window.later(
                                window.latest().plusDays(1),
                                egg.laid().plusDays(days.latest() + (long) OVERDUE_AFTER_LAYING_DAYS)))),
                Optional.of(Unsat.laid(egg.laid())).filter(keeps -> egg.mayHatch() && liesUnsat(egg, sat, keeps)));
    }

    private static boolean liesUnsat(Egg egg, Optional<SatFrom> sat, Unsat keeps) {
        return egg.pipped().isEmpty()
                && sat.filter(from -> from.foreseen() || !from.day().isBefore(keeps.warnFrom()))
                        .isPresent();
    }

    /** Done on the first day on which the egg was looked at in its time, or showed what it is before. */
    private static Optional<Due> firstLook(Egg egg, Optional<Window> window) {
        return look(egg, window, candling -> candling.finding() != EggFinding.UNSURE);
    }

    private static Optional<Due> secondLook(Egg egg, Optional<Window> window) {
        return look(egg, window, candling -> false);
    }

    private static Optional<Due> look(Egg egg, Optional<Window> window, Predicate<Candling> settlesBefore) {
        Optional<LocalDate> looked = egg.candlings().stream()
                .filter(candling -> settlesBefore.test(candling)
                        || window.filter(it -> !candling.day().isBefore(it.earliest()))
                                .isPresent())
                .map(Candling::day)
                .findFirst();
        return Due.of(
                looked, window.filter(open -> egg.mayHatch() && egg.pipped().isEmpty()));
    }

    private static Optional<Window> sat(Optional<SatFrom> sat, Optional<Span> days) {
        return sat.flatMap(
                from -> days.map(span -> Window.after(from.day(), span).guessed(from.about())));
    }

    private ChickOutlook chick(Lying lying) {
        Chick chick = lying.chick().orElseThrow();
        Timetable own = timetables.apply(lying.pair());
        Optional<LocalDate> ringed = chick.ring().map(ChickRing::day);
        return new ChickOutlook(
                lying,
                lying.egg().nest() == cage.id(),
                age(own, chick, Timing.EYES),
                Due.of(ringed, age(own, chick, Timing.RINGING))
                        .map(due -> due.guessed(
                                chick.ring().filter(ChickRing::about).isPresent())),
                Due.of(
                        chick.ring().flatMap(ChickRing::checked),
                        ringed.filter(day -> chick.isInCare()).map(day -> Window.on(day.plusDays(1))
                                .guessed(chick.ring().filter(ChickRing::about).isPresent()))),
                Due.of(chick.outOfBox(), age(own, chick, Timing.OUT_OF_BOX))
                        .map(due -> due.guessed(
                                chick.leftBox().filter(BoxTrip::about).isPresent())),
                Due.of(chick.weaned().map(Weaning::day), age(own, chick, Timing.INDEPENDENT))
                        .map(due -> due.guessed(
                                chick.weaned().filter(Weaning::about).isPresent())));
    }

    private static Optional<Window> age(Timetable own, Chick chick, Timing timing) {
        return own.span(timing).filter(days -> chick.isInCare()).map(days -> Window.after(chick.hatched(), days)
                .guessed(chick.about()));
    }

    /** With a box and no round under way: from the box on or from pairing up, whichever is later. */
    private Optional<Due> firstEgg(Pair pair) {
        Optional<Round> last = pair.rounds().stream().reduce((earlier, later) -> later);
        Optional<Hung> box = cage.box().last().filter(hung -> cage.box().isOn());
        boolean fresh = last.isEmpty()
                || last.flatMap(Round::ended).isPresent()
                        && box.filter(hung -> last.flatMap(Round::lastLaid)
                                        .filter(laid -> !hung.on().isAfter(laid))
                                        .isEmpty())
                                .isPresent();
        if (!fresh) {
            return last.flatMap(OneNest::firstLaid)
                    .map(egg -> Due.happened(egg.laid()).guessed(egg.about()));
        }
        return box.filter(hung -> isBreeding(pair)).flatMap(hung -> timetable
                .span(Timing.FIRST_EGG)
                .map(days -> Window.after(Window.later(hung.on(), pair.since()), days))
                .map(window -> Due.expected(window.guessed(hung.about() || pair.about()))));
    }

    private boolean isBreeding(Pair pair) {
        return pair.parting().isEmpty() && room.together(pair);
    }

    private static Optional<Egg> firstLaid(Round round) {
        return Sittings.asLaid(round).stream().findFirst();
    }

    private Stream<RoundOutlook> rounds(Pair pair) {
        return pair.rounds().stream()
                .map(round -> new RoundOutlook(
                        pair,
                        round,
                        sittings.start(pair, round),
                        sitting(pair, round),
                        nextEgg(pair, round),
                        nextRound(pair, round)));
    }

    private Optional<Due> sitting(Pair pair, Round round) {
        Optional<Window> window = timetable.span(Timing.SITS_FROM).flatMap(eggs -> sittings.nthEgg(
                        pair, round, Optional.of(eggs.earliest()))
                .flatMap(first -> sittings.nthEgg(pair, round, Optional.of(eggs.expected()))
                        .flatMap(usual -> sittings.nthEgg(pair, round, Optional.of(eggs.latest()))
                                .map(last -> new Window(
                                        first.day(),
                                        usual.day(),
                                        last.day(),
                                        first.about() || usual.about() || last.about())))));
        return Due.of(round.sitting().map(ToldDay::day), window.filter(it -> round.isOpen()))
                .map(due -> due.guessed(round.sitting().filter(ToldDay::about).isPresent()));
    }

    /** Expected until the largest clutch is laid, one has hatched, the round has ended, or the pair is being parted. */
    private Optional<NextEgg> nextEgg(Pair pair, Round round) {
        Optional<Span> clutch = timetable.span(Timing.CLUTCH);
        Optional<Span> gap = timetable.span(Timing.LAY_GAP);
        Optional<Egg> last = Sittings.asLaid(round).stream().reduce((earlier, later) -> later);
        int laid = round.eggs().size();
        if (gap.isEmpty()
                || last.isEmpty()
                || !round.isOpen()
                || isFollowed(pair, round)
                || pair.parting().isPresent()
                || room.henOut(pair).isPresent()
                || clutch.filter(eggs -> laid >= eggs.latest()).isPresent()
                || round.eggs().stream().anyMatch(egg -> egg.chick().isPresent())) {
            return Optional.empty();
        }
        LocalDate day = last.get().laid();
        int tooLong = gap.get().latest() + 1;
        return Optional.of(new NextEgg(
                Window.after(day, gap.get()).guessed(last.get().about()),
                Optional.of(day.plusDays(tooLong))
                        .filter(from ->
                                clutch.filter(eggs -> laid >= eggs.expected()).isEmpty())
                        .filter(from -> !isSatFull(round)),
                day.plusDays(2L * tooLong)));
    }

    /** She has done laying and sits: an egg that is full was kept warm. */
    private static boolean isSatFull(Round round) {
        return round.eggs().stream().anyMatch(egg -> egg.mayHatch() && egg.wasFull());
    }

    private static boolean isFollowed(Pair pair, Round round) {
        return pair.rounds().indexOf(round) < pair.rounds().size() - 1;
    }

    private Optional<Due> nextRound(Pair pair, Round round) {
        Optional<Egg> first = firstLaid(round);
        int next = pair.rounds().indexOf(round) + 1;
        Optional<LocalDate> begun = pair.rounds().stream()
                .skip(next)
                .findFirst()
                .flatMap(OneNest::firstLaid)
                .map(Egg::laid);
        Optional<Window> window = first.filter(egg -> isBreeding(pair) && hasBox() && !isFollowed(pair, round))
                .flatMap(egg -> timetable.span(Timing.NEXT_ROUND).map(days -> Window.after(egg.laid(), days)
                        .guessed(egg.about())));
        return Due.of(begun, window);
    }

    /** A box that was never told of counts as hanging where eggs were laid. */
    private boolean hasBox() {
        return cage.box().isOn()
                || cage.box().hanging().isEmpty() && cage.box().off().isEmpty();
    }

    private Stream<Chick> inBox() {
        return chicks.stream()
                .filter(ChickOutlook::here)
                .map(ChickOutlook::chick)
                .filter(chick -> chick.isInCare() && chick.outOfBox().isEmpty());
    }

    private Optional<LocalDate> nestLook() {
        return inBox().map(Chick::hatched).min(Comparator.naturalOrder()).map(eldest -> cage.nestLook()
                .map(NestLook::day)
                .filter(day -> day.isAfter(eldest))
                .orElse(eldest)
                .plusDays(Outlook.NEST_LOOK_DAYS));
    }

    private Optional<Due> backs() {
        return inBox().min(Comparator.comparing(Chick::hatched)).flatMap(eldest -> timetable
                .span(Timing.BACKS)
                .map(days -> Window.after(eldest.hatched(), days).guessed(eldest.about()))
                .map(window -> Due.of(cage.backsSeen().filter(day -> !day.isBefore(window.earliest())), window)));
    }
}
