package org.cagewall.store;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.Absence;
import org.cagewall.room.Call;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.nest.Pair;

/**
 * What a room holds on its day, and what is still held of it on a later one when nothing has been recorded since. Pure;
 * any thread.
 */
final class Later {

    private Later() {}

    /**
     * The same room on a later day.
     *
     * @param day the room's own day or a later one
     */
    static Room on(Room room, LocalDate day) {
        LocalDate since = since(room.absences(), day);
        Map<Long, Pair> pairs = room.pairs().stream()
                .collect(Collectors.toMap(Pair::id, pair -> pair, (one, other) -> one, TreeMap::new));
        Map<Long, Bird> birds = room.birds().stream()
                .collect(Collectors.toMap(Bird::id, bird -> bird, (one, other) -> one, TreeMap::new));
        List<PastEgg> past = Stream.concat(room.past().stream(), letGo(pairs, birds, day).stream())
                .sorted(PastReader.IN_ORDER)
                .toList();
        return new Room(
                room.head(),
                room.code(),
                day,
                since,
                room.settings(),
                room.walls(),
                room.cages(),
                List.copyOf(birds.values()),
                List.copyOf(pairs.values()),
                room.plans(),
                room.people(),
                room.absences(),
                kept(room.visits(), visit -> !visit.day().isBefore(since)),
                room.unread(),
                kept(room.outcomes(), outcome -> isHeld(outcome, since, day)),
                kept(room.calls(), call -> isHeld(call, since, day)),
                room.rings(),
                room.ringsSpoilt(),
                room.ringsWorn(),
                past);
    }

    /** The outcomes of tasks of one day as long as its visits; the others as long as the task may be asked for. */
    static boolean isHeld(TaskOutcome outcome, LocalDate since, LocalDate today) {
        return !outcome.day().isBefore(since)
                || outcome.mayBeAskedAgain() && !outcome.day().isBefore(outcomesFrom(since, today));
    }

    /** A call as long as the visits of its day; one in which something was agreed, as long as that holds. */
    private static boolean isHeld(Call call, LocalDate since, LocalDate today) {
        return !call.day().isBefore(since)
                || call.lastDay().filter(last -> !last.isBefore(today)).isPresent();
    }

    /** The day of the oldest outcome that may be held. */
    static LocalDate outcomesFrom(LocalDate since, LocalDate today) {
        LocalDate again = today.minusDays(Room.OUTCOME_HELD_DAYS);
        return since.isBefore(again) ? since : again;
    }

    /** From when visits and outcomes are held: since yesterday, or since the days away began that have not ended. */
    static LocalDate since(List<Absence> absences, LocalDate today) {
        return absences.stream()
                .filter(absence -> absence.runsOn(today))
                .map(Absence::from)
                .filter(from -> from.isBefore(today.minusDays(1)))
                .findFirst()
                .orElse(today.minusDays(1));
    }

    /**
     * Takes away the pairs that are held no longer, and the birds that have left and belong to none that is.
     *
     * @return the eggs of the pairs taken away
     */
    static List<PastEgg> letGo(Map<Long, Pair> pairs, Map<Long, Bird> birds, LocalDate today) {
        List<Pair> gone = pairs.values().stream()
                .filter(pair -> !isHeld(pair, birds, today))
                .toList();
        List<PastEgg> past = gone.stream()
                .flatMap(pair -> PastEgg.of(pair, Optional.ofNullable(birds.get(pair.hen()))))
                .toList();
        gone.forEach(pair -> pairs.remove(pair.id()));
        Set<Long> needed = new HashSet<>();
        pairs.values().forEach(pair -> {
            needed.add(pair.cock());
            needed.add(pair.hen());
        });
        birds.values().removeIf(bird -> !bird.isPresent() && !needed.contains(bird.id()));
        return past;
    }

    private static boolean isHeld(Pair pair, Map<Long, Bird> birds, LocalDate today) {
        LocalDate bound = today.minusDays(Room.PAIR_HELD_DAYS);
        LocalDate laid = today.minusDays(Room.YOUNG_HELD_DAYS);
        return isIn(birds.get(pair.cock()), pair, bound)
                || isIn(birds.get(pair.hen()), pair, bound)
                || pair.allEggs().anyMatch(egg -> egg.isYoung() && !egg.laid().isBefore(laid));
    }

    private static boolean isIn(Bird bird, Pair pair, LocalDate bound) {
        return bird != null
                && bird.outOf(pair).filter(out -> out.isBefore(bound)).isEmpty();
    }

    private static <T> List<T> kept(List<T> all, Predicate<T> which) {
        return all.stream().filter(which).toList();
    }
}
