package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.ToldDay;
import org.cagewall.room.nest.WhyRemoved;

/**
 * Which kinds of task were answered at each nest on one day by what was recorded of it: beside the room as it was before
 * that day it shows which tasks were closed. Pure; any thread.
 */
final class Answered {

    /** What an egg answers, whether or not a round begins with it. */
    private static final List<Kind> BY_AN_EGG = List.of(Kind.FIRST_EGG, Kind.EGG_GAP, Kind.NEXT_ROUND, Kind.UNSAT);

    private final Room room;
    private final LocalDate day;
    private final Map<Long, Set<Kind>> kinds = new HashMap<>();

    Answered(Room room, LocalDate day) {
        this.room = room;
        this.day = day;
        room.cages().forEach(this::boxes);
        room.pairs().forEach(this::pair);
    }

    Set<Kind> at(Cage cage) {
        return kinds.getOrDefault(cage.id(), Set.of());
    }

    boolean isNothing() {
        return kinds.isEmpty();
    }

    private void boxes(Cage cage) {
        note(cage.id(), Kind.BOX_TURNED, cage.box().turned());
        note(cage.id(), Kind.BOX_OFF, cage.box().off());
        cage.looks().forEach(look -> {
            note(cage.id(), Kind.NEST_LOOK, Optional.of(look.day()));
            note(cage.id(), Kind.BACKS, look.plucked().map(seen -> look.day()));
        });
    }

    private void pair(Pair pair) {
        note(pair.cage(), Kind.COCK_OUT, room.cockOut(pair));
        note(pair.cage(), Kind.HEN_OUT, room.henOut(pair));
        pair.rounds().forEach(round -> round(pair.cage(), round));
    }

    private void round(long cage, Round round) {
        BY_AN_EGG.stream()
                .filter(kind -> kind != Kind.UNSAT)
                .forEach(kind -> note(cage, kind, Optional.of(round.begun())));
        note(cage, Kind.UNSAT, round.sitting().map(ToldDay::day));
        note(cage, Kind.PUT_BACK, round.sitting().map(ToldDay::day));
        round.eggs().forEach(egg -> {
            BY_AN_EGG.forEach(kind -> note(cage, kind, Optional.of(egg.laid())));
            egg(egg.nest(), egg);
            egg(egg.nestOn(day.minusDays(1)), egg);
        });
    }

    private void egg(long nest, Egg egg) {
        egg.candlings().forEach(look -> note(nest, Kind.CANDLE, Optional.of(look.day())));
        egg.moves().forEach(move -> note(nest, Kind.UNSAT, Optional.of(move.day())));
        note(nest, Kind.UNSAT, egg.removed().map(Removal::day));
        note(nest, Kind.CLEAR_EGGS, egg.removed().filter(Answered::wasOffered).map(Removal::day));
        egg.chick().ifPresent(chick -> chick(nest, chick));
    }

    private static boolean wasOffered(Removal removal) {
        return removal.why() == WhyRemoved.CLEAR || removal.why() == WhyRemoved.ADDLED;
    }

    private void chick(long nest, Chick chick) {
        note(nest, Kind.HATCH, Optional.of(chick.hatched()));
        note(nest, Kind.RING, chick.ring().map(ring -> ring.day()));
        note(nest, Kind.RING_CHECK, chick.ring().flatMap(ring -> ring.checked()));
        note(nest, Kind.OUT_OF_BOX, chick.outOfBox());
        note(nest, Kind.WEAN, chick.weaned().map(weaning -> weaning.day()));
    }

    private void note(long cage, Kind kind, Optional<LocalDate> done) {
        done.filter(day::equals).ifPresent(that -> kinds.computeIfAbsent(cage, any -> EnumSet.noneOf(Kind.class))
                .add(kind));
    }
}
