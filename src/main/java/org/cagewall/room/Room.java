package org.cagewall.room;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.RingStock;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Nest;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PairPlan;

/**
 * The birdroom as it stands: whatever is open, whatever the year. All that is shown is worked out from it. Immutable;
 * any thread.
 *
 * @param head the number of the last entry it knows
 * @param code three characters that tell this birdroom's cards from another's
 * @param day the day it was read for
 * @param since the day from which visits and outcomes of tasks are held; outcomes of tasks that may be asked for again
 *     are held for 150 days
 * @param birds those present, and those of the pairs held
 * @param pairs those together, up to 60 days after both birds are out, and those with eggs or chicks in a nest
 * @param visits checks since that day, oldest first
 * @param unread reports of something different that the owner has not read, oldest first
 * @param ringsWorn those of the rings bought that a bird or chick wears or wore
 * @param calls those since that day, and those whose agreement still holds, oldest first
 * @param past the eggs of pairs no longer held, by pair, round and mark, for the room's own numbers
 */
public record Room(
        long head,
        String code,
        LocalDate day,
        LocalDate since,
        Settings settings,
        List<Wall> walls,
        List<Cage> cages,
        List<Bird> birds,
        List<Pair> pairs,
        List<PairPlan> plans,
        List<Person> people,
        List<Absence> absences,
        List<Visit> visits,
        List<Visit> unread,
        List<TaskOutcome> outcomes,
        List<Call> calls,
        List<RingStock> rings,
        List<String> ringsSpoilt,
        List<String> ringsWorn,
        List<PastEgg> past) {

    /** How long a pair is held after both birds are out, in days. */
    public static final int PAIR_HELD_DAYS = 60;

    /** How long after an egg was laid its pair is held while it, or its chick, is in a nest, in days. */
    public static final int YOUNG_HELD_DAYS = 150;

    /** How long the outcome of a task that may be asked for again is held, in days: as long as what a nest asks for. */
    public static final int OUTCOME_HELD_DAYS = YOUNG_HELD_DAYS;

    public Room {
        walls = List.copyOf(walls);
        cages = List.copyOf(cages);
        birds = List.copyOf(birds);
        pairs = List.copyOf(pairs);
        plans = List.copyOf(plans);
        people = List.copyOf(people);
        absences = List.copyOf(absences);
        visits = List.copyOf(visits);
        unread = List.copyOf(unread);
        outcomes = List.copyOf(outcomes);
        calls = List.copyOf(calls);
        rings = List.copyOf(rings);
        ringsSpoilt = List.copyOf(ringsSpoilt);
        ringsWorn = List.copyOf(ringsWorn);
        past = List.copyOf(past);
    }

    /**
     * The room with its nests and the birds of its pairs as they were on the eve of a day, so far as that is remembered:
     * without what was laid, seen, done or moved on it. That a parting was begun, or a stage left out, still stands.
     */
    public Room before(LocalDate date) {
        return new Room(
                head,
                code,
                day,
                since,
                settings,
                walls,
                cages.stream().map(cage -> cage.before(date)).toList(),
                birds.stream().map(bird -> bird.before(date)).toList(),
                pairs.stream().map(pair -> pair.before(date)).toList(),
                plans,
                people,
                absences,
                visits,
                unread,
                outcomes,
                calls,
                rings,
                ringsSpoilt,
                ringsWorn,
                past);
    }

    /** The room with these pairs in place of those it holds. */
    public Room withPairs(List<Pair> others) {
        return new Room(
                head,
                code,
                day,
                since,
                settings,
                walls,
                cages,
                birds,
                others,
                plans,
                people,
                absences,
                visits,
                unread,
                outcomes,
                calls,
                rings,
                ringsSpoilt,
                ringsWorn,
                past);
    }

    /** The room as it would be with these visits, reports and outcomes in place of those it holds, and since that day. */
    public Room holding(LocalDate from, List<Visit> seen, List<Visit> reports, List<TaskOutcome> told) {
        return new Room(
                head,
                code,
                day,
                from,
                settings,
                walls,
                cages,
                birds,
                pairs,
                plans,
                people,
                absences,
                seen,
                reports,
                told,
                calls,
                rings,
                ringsSpoilt,
                ringsWorn,
                past);
    }

    public boolean isEmpty() {
        return head == 0;
    }

    public Optional<Cage> cage(String name) {
        return cages.stream().filter(cage -> same(cage.name(), name)).findFirst();
    }

    public Optional<Cage> cage(long id) {
        return cages.stream().filter(cage -> cage.id() == id).findFirst();
    }

    /** The cage's name; a cage that is no more is shown by a dash. */
    public String cageName(long id) {
        return cage(id).map(Cage::name).orElse("-");
    }

    public Optional<Wall> wall(String name) {
        return walls.stream().filter(wall -> same(wall.name(), name)).findFirst();
    }

    public Optional<Wall> wall(long id) {
        return walls.stream().filter(wall -> wall.id() == id).findFirst();
    }

    public Optional<Cage> cageAt(Place place) {
        return cages.stream()
                .filter(cage -> cage.retired().isEmpty())
                .filter(cage -> cage.place().filter(place::equals).isPresent())
                .findFirst();
    }

    public Optional<Person> person(String name) {
        return people.stream().filter(person -> same(person.name(), name)).findFirst();
    }

    public Optional<Person> owner() {
        return people.stream().filter(person -> person.role() == Role.OWNER).findFirst();
    }

    /** A bird in the room by its ring or its name. */
    public Optional<Bird> bird(String name) {
        return birds.stream().filter(bird -> bird.answersTo(name)).min(Comparator.comparing(bird -> !bird.isPresent()));
    }

    public Optional<Bird> bird(long id) {
        return birds.stream().filter(bird -> bird.id() == id).findFirst();
    }

    /** The bird's ring; one that is not held is shown by a dash. */
    public String ring(long id) {
        return bird(id).map(Bird::ring).orElse("-");
    }

    /** The birds standing in a cage now, those out at a show or the vet left aside. */
    public List<Bird> birdsIn(Cage cage) {
        return birdsOf(cage).stream()
                .filter(bird -> bird.out().isEmpty() && !bird.loose())
                .toList();
    }

    /** A bird standing in a cage that is unfit to have eggs or chicks of others. */
    public Optional<Bird> harmingYoungIn(Cage cage) {
        return birdsIn(cage).stream()
                .filter(bird -> bird.harmsYoung().isPresent())
                .findFirst();
    }

    /** The birds whose cage it is now, those out for a time or loose with them. */
    public List<Bird> birdsOf(Cage cage) {
        return birds.stream()
                .filter(bird -> bird.cage().filter(id -> id == cage.id()).isPresent())
                .toList();
    }

    /** How many birds stand in a cage, those not known one by one with them. */
    public int headsIn(Cage cage) {
        return birdsIn(cage).size() + cage.flock();
    }

    /** Whether anything that eats is in a cage: a bird, or a chick in its nest. */
    public boolean isLivedIn(Cage cage) {
        return headsIn(cage) > 0 || !nest(cage).chicks().isEmpty();
    }

    /** The youngest pair of a cage of which at least one bird still stands there. */
    public Optional<Pair> pairIn(Cage cage) {
        return pairs.stream()
                .filter(pair -> pair.cage() == cage.id())
                .filter(pair -> cockOut(pair).isEmpty() || henOut(pair).isEmpty())
                .max(Comparator.comparing(Pair::since).thenComparing(Pair::id));
    }

    /** What lies in the cage's nest box, and what ever lay there of the pairs held. */
    public Nest nest(Cage cage) {
        return Nest.of(cage.id(), pairs);
    }

    /** The letters on eggs and chicks that are in a nest now. */
    public List<String> lettersInUse() {
        return pairs.stream()
                .flatMap(Pair::allEggs)
                .filter(Egg::isInNest)
                .flatMap(egg -> egg.letter().stream())
                .toList();
    }

    /** The first letter of the alphabet, then the first two, that no egg and no chick in a nest has. */
    public String nextLetter() {
        Set<String> used = lettersInUse().stream()
                .map(letter -> letter.toUpperCase(Locale.ROOT))
                .collect(Collectors.toSet());
        return Stream.concat(alphabet(), alphabet().flatMap(first -> alphabet().map(second -> first + second)))
                .filter(letter -> !used.contains(letter))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<String> alphabet() {
        return Stream.iterate('A', letter -> (char) (letter + 1)).limit(26).map(String::valueOf);
    }

    /** The species of a pair: the hen's, else the room's. */
    public String speciesOf(Pair pair) {
        return bird(pair.hen()).map(this::speciesOf).orElse(settings.species());
    }

    /** The species of a bird; the room's where none was told. */
    public String speciesOf(Bird bird) {
        return bird.species().orElse(settings.species());
    }

    /** The day the cock left his hen's cage. */
    public Optional<LocalDate> cockOut(Pair pair) {
        return bird(pair.cock()).flatMap(cock -> cock.outOf(pair));
    }

    /** The day the hen left the breeding cage. */
    public Optional<LocalDate> henOut(Pair pair) {
        return bird(pair.hen()).flatMap(hen -> hen.outOf(pair));
    }

    public boolean together(Pair pair) {
        return cockOut(pair).isEmpty() && henOut(pair).isEmpty();
    }

    /** The cage that has this number on its cards. */
    public Optional<Cage> cageNumbered(int number) {
        return cages.stream().filter(cage -> cage.number() == number).findFirst();
    }

    public Optional<Absence> absenceOn(LocalDate date) {
        return absences.stream().filter(absence -> absence.runsOn(date)).findFirst();
    }

    /** The absence that comes next, the running one left aside. */
    public Optional<Absence> absenceAfter(LocalDate date) {
        return absences.stream()
                .filter(absence -> absence.ended().isEmpty() && absence.from().isAfter(date))
                .min(Comparator.comparing(Absence::from));
    }

    /** The youngest absence that lies behind that day. */
    public Optional<Absence> absenceBefore(LocalDate date) {
        return absences.stream()
                .filter(absence -> absence.last().isBefore(date))
                .max(Comparator.comparing(Absence::last));
    }

    public List<Visit> visitsOf(Cage cage, LocalDate date) {
        return visits.stream()
                .filter(visit -> visit.cage() == cage.id() && visit.day().equals(date))
                .toList();
    }

    /**
     * The last day, up to {@code date}, on which somebody looked into a cage: by a check, or by a deed that needs a look.
     * Who has looked has not fed.
     */
    public Optional<LocalDate> lookedInto(Cage cage, LocalDate date) {
        return new LookedInto(this, cage).lastBy(date);
    }

    /** The last unread report of something different at a cage. */
    public Optional<Visit> unreadAt(Cage cage) {
        return unread.stream().filter(visit -> visit.cage() == cage.id()).reduce((earlier, later) -> later);
    }

    /** The calls that day, oldest first. */
    public List<Call> callsOn(LocalDate date) {
        return calls.stream().filter(call -> call.day().equals(date)).toList();
    }

    /** The calls in which something was agreed that holds on that day, oldest first. */
    public List<Call> agreedOn(LocalDate date) {
        return calls.stream()
                .filter(call -> call.holdsOn(date))
                .filter(call -> calls.stream().noneMatch(call::isReplacedBy))
                .toList();
    }

    /** What was agreed about a cage and holds on that day. */
    public List<Call> agreedAt(Cage cage, LocalDate date) {
        return agreedOn(date).stream()
                .filter(call -> call.cage().filter(id -> id == cage.id()).isPresent())
                .toList();
    }

    public Optional<TaskOutcome> outcome(String task) {
        return outcomes.stream().filter(outcome -> outcome.task().equals(task)).reduce((earlier, later) -> later);
    }

    /** Cages that are in use, in walking order: wall by wall, row by row, from the left; those without a place last. */
    public Stream<Cage> walk() {
        return cages.stream().filter(Cage::inUse).sorted(walkingOrder());
    }

    private Comparator<Cage> walkingOrder() {
        return Comparator.<Cage>comparingInt(cage ->
                        cage.place().map(place -> wallIndex(place.wall())).orElse(Integer.MAX_VALUE))
                .thenComparingInt(cage -> cage.place().map(Place::row).orElse(0))
                .thenComparingInt(cage -> cage.place().map(Place::column).orElse(0))
                .thenComparing(Cage::name);
    }

    private int wallIndex(long id) {
        for (int i = 0; i < walls.size(); i++) {
            if (walls.get(i).id() == id) {
                return i;
            }
        }
        return walls.size();
    }

    private static boolean same(String one, String other) {
        return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
    }
}
