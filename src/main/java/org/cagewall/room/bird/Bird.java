package org.cagewall.room.bird;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.nest.Days;
import org.cagewall.room.nest.Pair;

/**
 * One bird as it is known. Immutable; any thread.
 *
 * @param ring its ring, or the name it was added by while it has none
 * @param ringYear the year that its ring bears, where it was said
 * @param splitRing a second ring that opens
 * @param called a name beside the ring
 * @param hatched a date or a year, as it was told
 * @param stays the cages it has stood in, oldest first
 * @param treated the last day on which it was treated
 * @param backFromShow the day on which it came back from a show; empty once it has been out since
 */
public record Bird(
        long id,
        String ring,
        Optional<Integer> ringYear,
        Optional<String> splitRing,
        Optional<String> called,
        Sex sex,
        Optional<String> species,
        Optional<String> hatched,
        Optional<String> colour,
        Optional<Long> father,
        Optional<Long> mother,
        Optional<String> origin,
        List<Stay> stays,
        List<String> traits,
        Optional<LookedOver> look,
        Optional<LocalDate> treated,
        Optional<Outing> out,
        Optional<LocalDate> backFromShow,
        boolean loose,
        Optional<Departure> left) {

    /** Birds marked so are no foster parents. Common practice, no source. */
    private static final Set<String> HARM_YOUNG = Set.of("egg-eater", "plucker");

    public Bird {
        stays = List.copyOf(stays);
        traits = List.copyOf(traits);
    }

    /** The bird where it stood before that day, untreated on it. */
    public Bird before(LocalDate day) {
        return new Bird(
                id,
                ring,
                ringYear,
                splitRing,
                called,
                sex,
                species,
                hatched,
                colour,
                father,
                mother,
                origin,
                stays.stream().filter(stay -> stay.since().isBefore(day)).toList(),
                traits,
                look,
                Days.before(treated, day),
                out,
                backFromShow,
                loose,
                left.filter(gone -> gone.day().isBefore(day)));
    }

    /** What it is marked with that makes it unfit to have eggs or chicks of others. */
    public Optional<String> harmsYoung() {
        return traits.stream().filter(HARM_YOUNG::contains).findFirst();
    }

    public boolean isPresent() {
        return left.isEmpty();
    }

    /** The cage it stands in now, if it is in the birdroom and has been given one. */
    public Optional<Long> cage() {
        return isPresent() && !stays.isEmpty()
                ? Optional.of(stays.get(stays.size() - 1).cage())
                : Optional.empty();
    }

    /** The cage it stood in at the end of that day. */
    public Optional<Long> cageOn(LocalDate day) {
        if (left.filter(gone -> !gone.day().isAfter(day)).isPresent()) {
            return Optional.empty();
        }
        return stays.stream()
                .filter(stay -> !stay.since().isAfter(day))
                .reduce((earlier, later) -> later)
                .map(Stay::cage);
    }

    /** The day on which it left the cage of a pair it was put to, by a move or for good. */
    public Optional<LocalDate> outOf(Pair pair) {
        return stays.stream()
                .filter(stay -> stay.cage() != pair.cage() && comesAfter(stay, pair))
                .map(Stay::since)
                .findFirst()
                .or(() -> left.map(Departure::day));
    }

    private static boolean comesAfter(Stay stay, Pair pair) {
        return stay.since().isAfter(pair.since()) || stay.since().equals(pair.since()) && stay.entry() > pair.id();
    }

    /** Whether a keeper may mean this bird by these words: its ring or its name, in any case of letters. */
    public boolean answersTo(String name) {
        return ring.equalsIgnoreCase(name)
                || called.filter(name::equalsIgnoreCase).isPresent();
    }
}
