package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.BoxTrip;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.ToldDay;

/**
 * An egg of a pair that is no longer held, with what the room's own numbers are made of. Immutable; any thread.
 *
 * @param cage in which the pair stood
 * @param paired the day on which the pair was put together; empty where that is the keeper's guess
 * @param round which round it was laid in, by a number that no other round has
 * @param species of the hen, where it was told
 * @param about whether the day it was laid or hatched is the keeper's guess
 * @param moved whether it ever lay in another nest
 * @param sitting from when the hen was seen to sit
 * @param left when it first left the box
 */
public record PastEgg(
        long pair,
        long cage,
        Optional<LocalDate> paired,
        long round,
        String mark,
        Optional<String> species,
        LocalDate laid,
        boolean about,
        boolean moved,
        Optional<ToldDay> sitting,
        boolean full,
        Optional<LocalDate> hatched,
        Optional<ToldDay> ringed,
        Optional<ToldDay> left,
        Optional<ToldDay> weaned) {

    /** The eggs of a pair that is held no longer. */
    public static Stream<PastEgg> of(Pair pair, Optional<Bird> hen) {
        return pair.rounds().stream().flatMap(round -> round.eggs().stream().map(egg -> of(pair, hen, round, egg)));
    }

    private static PastEgg of(Pair pair, Optional<Bird> hen, Round round, Egg egg) {
        Optional<Chick> chick = egg.chick();
        return new PastEgg(
                pair.id(),
                pair.cage(),
                Optional.of(pair.since()).filter(day -> !pair.about()),
                round.id(),
                egg.mark(),
                hen.flatMap(Bird::species),
                egg.laid(),
                egg.about() || chick.filter(Chick::about).isPresent(),
                !egg.moves().isEmpty(),
                round.sitting(),
                egg.wasFull(),
                chick.map(Chick::hatched),
                chick.flatMap(Chick::ring).map(ring -> new ToldDay(ring.day(), ring.about())),
                chick.flatMap(PastEgg::left),
                chick.flatMap(Chick::weaned).map(weaning -> new ToldDay(weaning.day(), weaning.about())));
    }

    /** A guess where any day out of the box is one, since it might have been the first. */
    private static Optional<ToldDay> left(Chick chick) {
        List<BoxTrip> out = chick.trips().stream().filter(BoxTrip::out).toList();
        return out.stream()
                .findFirst()
                .map(first -> new ToldDay(first.day(), out.stream().anyMatch(BoxTrip::about)));
    }
}
