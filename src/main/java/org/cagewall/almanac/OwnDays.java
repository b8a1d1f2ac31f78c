package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Room;
import org.cagewall.room.Species;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.Hung;
import org.cagewall.room.nest.ToldDay;

/** Counts how many days this room's own birds of a species took for what they do. For one thread. */
final class OwnDays {

    /** A longer gap between two eggs is taken for the gap between two rounds; as the screens ask after ten days. */
    private static final int LONGEST_GAP_DAYS = 9;

    private static final Comparator<PastEgg> AS_LAID = Comparator.comparing(PastEgg::laid)
            .thenComparing(egg -> egg.mark().length())
            .thenComparing(PastEgg::mark);

    private static final Comparator<List<PastEgg>> FIRST_LAID =
            Comparator.comparing(round -> round.get(0).laid());

    private final Map<Timing, Tally> tallies = new EnumMap<>(Timing.class);
    private final Optional<Integer> sitsFrom;
    private final Map<Long, Box> boxes;

    private OwnDays(Room room, Timetable table) {
        this.sitsFrom = table.expected(Timing.SITS_FROM).filter(nth -> nth >= 1);
        this.boxes = room.cages().stream().collect(Collectors.toMap(Cage::id, Cage::box));
    }

    /** Of all the room has ever recorded of the timetable's species, in days. */
    static Map<Timing, Tally> of(Room room, Timetable table) {
        OwnDays days = new OwnDays(room, table);
        Map<String, Boolean> same = new HashMap<>();
        List<PastEgg> eggs = everyEgg(room).toList();
        for (List<PastEgg> ofAPair : runs(eggs, PastEgg::pair)) {
            String hers = ofAPair.get(0).species().orElse(room.settings().species());
            if (same.computeIfAbsent(hers, species -> Species.areSame(species, table.species()))) {
                days.ofAPair(ofAPair);
            }
        }
        return days.tallies;
    }

    /** The eggs of all pairs the room knows of, those held and those long gone; those of a pair and of a round together. */
    static Stream<PastEgg> everyEgg(Room room) {
        return Stream.concat(
                room.past().stream(), room.pairs().stream().flatMap(pair -> PastEgg.of(pair, room.bird(pair.hen()))));
    }

    /** What stands together and belongs together. */
    private static List<List<PastEgg>> runs(List<PastEgg> eggs, ToLongFunction<PastEgg> of) {
        List<List<PastEgg>> runs = new ArrayList<>();
        int begin = 0;
        for (int i = 1; i <= eggs.size(); i++) {
            if (i == eggs.size() || of.applyAsLong(eggs.get(i)) != of.applyAsLong(eggs.get(begin))) {
                runs.add(eggs.subList(begin, i));
                begin = i;
            }
        }
        return runs;
    }

    private void ofAPair(List<PastEgg> eggs) {
        List<List<PastEgg>> rounds = runs(eggs, PastEgg::round);
        rounds.replaceAll(OwnDays::asLaid);
        rounds.sort(FIRST_LAID);
        for (int i = 0; i < rounds.size(); i++) {
            List<PastEgg> round = rounds.get(i);
            begun(round.get(0), i == 0 ? List.of() : rounds.get(i - 1));
            incubations(round);
            gaps(round);
            ages(round);
        }
    }

    private static List<PastEgg> asLaid(List<PastEgg> round) {
        List<PastEgg> sorted = new ArrayList<>(round);
        sorted.sort(AS_LAID);
        return sorted;
    }

    /**
     * With a box put up since the round before, or for the first round, counted from the box on or from pairing up; else
     * from the first egg of the round before. A box that was never told of tells nothing of either.
     */
    private void begun(PastEgg first, List<PastEgg> before) {
        Optional<Hung> box = Optional.ofNullable(boxes.get(first.cage())).flatMap(it -> it.hungOn(first.laid()));
        if (first.about() || box.isEmpty()) {
            return;
        }
        Hung hung = box.get();
        boolean anew = before.isEmpty()
                || hung.on().isAfter(before.get(before.size() - 1).laid());
        if (!anew && !before.get(0).about()) {
            note(Timing.NEXT_ROUND, before.get(0).laid(), first.laid(), 1);
        }
        if (anew && !hung.about()) {
            first.paired()
                    .ifPresent(paired -> note(Timing.FIRST_EGG, Window.later(hung.on(), paired), first.laid(), 1));
        }
    }

    private void incubations(List<PastEgg> laid) {
        Optional<LocalDate> start = start(laid);
        for (PastEgg egg : laid) {
            if (start.isPresent() && egg.hatched().isPresent() && !egg.moved() && !egg.about()) {
                LocalDate sat = Window.later(egg.laid(), start.get());
                note(Timing.INCUBATION, sat, egg.hatched().get(), 1);
            }
        }
    }

    /** The day she was seen to sit, else the day of the egg she usually sits from; empty where that is a guess. */
    private Optional<LocalDate> start(List<PastEgg> laid) {
        Optional<ToldDay> seen = laid.get(0).sitting();
        return seen.isPresent()
                ? seen.flatMap(ToldDay::known)
                : sitsFrom.filter(nth -> nth <= laid.size())
                        .map(nth -> laid.get(nth - 1))
                        .filter(egg -> !egg.about())
                        .map(PastEgg::laid);
    }

    private void gaps(List<PastEgg> laid) {
        for (int i = 1; i < laid.size(); i++) {
            PastEgg one = laid.get(i - 1);
            PastEgg next = laid.get(i);
            if (!one.about() && !next.about() && !next.laid().isAfter(one.laid().plusDays(LONGEST_GAP_DAYS))) {
                note(Timing.LAY_GAP, one.laid(), next.laid(), 1);
            }
        }
    }

    private void ages(List<PastEgg> laid) {
        for (PastEgg egg : laid) {
            if (egg.hatched().isPresent() && !egg.about()) {
                long hatched = egg.hatched().get().toEpochDay();
                age(Timing.RINGING, hatched, egg.ringed());
                age(Timing.OUT_OF_BOX, hatched, egg.left());
                age(Timing.INDEPENDENT, hatched, egg.weaned());
            }
        }
    }

    private void age(Timing timing, long hatched, Optional<ToldDay> told) {
        if (told.isPresent() && !told.get().about()) {
            note(timing, told.get().day().toEpochDay() - hatched, 0);
        }
    }

    private void note(Timing timing, LocalDate from, LocalDate to, int fewest) {
        note(timing, to.toEpochDay() - from.toEpochDay(), fewest);
    }

    private void note(Timing timing, long days, int fewest) {
        if (days >= fewest) {
            tallies.computeIfAbsent(timing, none -> new Tally()).add(days);
        }
    }
}
