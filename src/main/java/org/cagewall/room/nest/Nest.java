package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What lies, or ever lay, in one cage's nest box: eggs and chicks of its own pairs and those moved in, oldest first.
 * Immutable; any thread.
 */
public record Nest(long cage, List<Lying> all) {

    private static final Comparator<Lying> OLDEST_FIRST = Comparator.<Lying, LocalDate>comparing(
                    lying -> lying.egg().laid())
            .thenComparing(lying -> lying.egg().mark().length())
            .thenComparing(lying -> lying.egg().mark())
            .thenComparing(lying -> lying.egg().entry());

    public Nest {
        all = List.copyOf(all);
    }

    public static Nest of(long cage, Collection<Pair> pairs) {
        return new Nest(
                cage,
                pairs.stream()
                        .flatMap(pair -> pair.rounds().stream()
                                .flatMap(round -> round.eggs().stream().map(egg -> new Lying(pair, round, egg))))
                        .filter(lying -> lying.egg().cage() == cage
                                || lying.egg().moves().stream().anyMatch(move -> move.cage() == cage))
                        .sorted(OLDEST_FIRST)
                        .toList());
    }

    /** The eggs that lie here now, be they clear or not. */
    public List<Lying> eggs() {
        return here().filter(lying -> lying.egg().isLying()).toList();
    }

    /** The chicks in the care of this cage, in the box and out of it. */
    public List<Lying> chicks() {
        return here().filter(lying -> lying.chick().filter(Chick::isInCare).isPresent())
                .toList();
    }

    public List<Lying> chicksInBox() {
        return chicks().stream()
                .filter(lying -> lying.chick().flatMap(Chick::outOfBox).isEmpty())
                .toList();
    }

    private Stream<Lying> here() {
        return all.stream().filter(lying -> lying.egg().nest() == cage);
    }

    /**
     * The egg or chick meant by a name on a day: a letter, a ring, or the mark of an egg laid here; of several the one in
     * the youngest open round, and one that was in the nest that day before one that was not.
     */
    public Optional<Lying> find(String name, Optional<String> round, LocalDate day) {
        return all.stream()
                .filter(lying -> lying.answersTo(name))
                .filter(lying -> round.filter(number ->
                                !number.equals(Integer.toString(lying.round().number())))
                        .isEmpty())
                .max(Comparator.<Lying, Boolean>comparing(lying -> lying.egg().wasIn(cage, day))
                        .thenComparing(lying -> !isItsMarkElsewhere(lying, name))
                        .thenComparing(lying -> lying.egg().isInNest())
                        .thenComparing(lying -> lying.round().isOpen())
                        .thenComparing(lying -> lying.round().begun())
                        .thenComparing(lying -> lying.round().id()));
    }

    /** A number means an egg laid here before one that was moved in and has a letter. */
    private boolean isItsMarkElsewhere(Lying lying, String name) {
        return lying.egg().cage() != cage && lying.egg().mark().equals(name);
    }
}
