package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.Bird;
import org.cagewall.room.Box;
import org.cagewall.room.BoxStep;
import org.cagewall.room.Cage;
import org.cagewall.room.Chick;
import org.cagewall.room.ChickRing;
import org.cagewall.room.Departure;
import org.cagewall.room.Egg;
import org.cagewall.room.Pair;
import org.cagewall.room.Removal;
import org.cagewall.room.Room;
import org.cagewall.room.Round;
import org.cagewall.room.WhyRemoved;

/**
 * A room without what its nests asked for and what was done on one day: beside the room as it stands it shows which tasks
 * were closed that day. Pure; any thread.
 */
final class Eve {

    private final Room room;
    private final LocalDate day;
    private final Map<Long, Set<Kind>> answered = new HashMap<>();

    Eve(Room room, LocalDate day) {
        this.room = room;
        this.day = day;
        room.cages().forEach(this::boxes);
        room.pairs().forEach(this::pair);
    }

    /** What was done for the nest of that cage on the day. */
    Set<Kind> answered(Cage cage) {
        return answered.getOrDefault(cage.id(), Set.of());
    }

    boolean isQuiet() {
        return answered.isEmpty();
    }

    private void boxes(Cage cage) {
        note(cage.id(), Kind.BOX_TURNED, cage.box().turned());
        note(cage.id(), Kind.BOX_OFF, cage.box().off());
    }

    private void pair(Pair pair) {
        note(pair.cage(), Kind.COCK_OUT, room.cockOut(pair));
        note(pair.cage(), Kind.HEN_OUT, room.henOut(pair));
        pair.allEggs().forEach(egg -> {
            egg.candlings().forEach(look -> note(egg.nest(), Kind.CANDLE, Optional.of(look.day())));
            note(
                    egg.nest(),
                    Kind.CLEAR_EGGS,
                    egg.removed().filter(Eve::wasOffered).map(Removal::day));
            egg.chick().ifPresent(chick -> chick(egg.nest(), chick));
        });
    }

    private void chick(long cage, Chick chick) {
        note(cage, Kind.HATCH, Optional.of(chick.hatched()));
        note(cage, Kind.RING, chick.ring().map(ring -> ring.day()));
        note(cage, Kind.RING_CHECK, chick.ring().flatMap(ring -> ring.checked()));
        note(cage, Kind.OUT_OF_BOX, chick.outOfBox());
        note(cage, Kind.WEAN, chick.weaned().map(weaning -> weaning.day()));
    }

    private void note(long cage, Kind kind, Optional<LocalDate> done) {
        done.filter(day::equals).ifPresent(that -> answered.computeIfAbsent(cage, any -> EnumSet.noneOf(Kind.class))
                .add(kind));
    }

    private static boolean wasOffered(Removal removal) {
        return removal.why() == WhyRemoved.CLEAR || removal.why() == WhyRemoved.ADDLED;
    }

    Room room() {
        return new Room(
                room.head(),
                room.code(),
                room.day(),
                room.since(),
                room.settings(),
                room.walls(),
                room.cages().stream().map(this::before).toList(),
                room.birds().stream().map(this::before).toList(),
                room.pairs().stream().map(this::before).toList(),
                room.plans(),
                room.people(),
                room.absences(),
                room.visits(),
                room.unread(),
                room.outcomes(),
                room.rings(),
                room.ringsSpoilt(),
                room.ringsWorn(),
                room.past());
    }

    private Cage before(Cage cage) {
        return new Cage(
                cage.id(),
                cage.number(),
                cage.name(),
                cage.place(),
                cage.use(),
                cage.keeps(),
                cage.retired(),
                cage.joinedTo(),
                cage.routine(),
                cage.flock(),
                before(cage.box()),
                cage.dummies(),
                cage.nestLook(),
                cage.cleaned(),
                cage.counted(),
                cage.card(),
                cage.lastVisit());
    }

    private Box before(Box box) {
        Optional<LocalDate> turned = before(box.turned());
        Optional<LocalDate> off = before(box.off());
        if (turned.equals(box.turned()) && off.equals(box.off())) {
            return box;
        }
        boolean wasTurned =
                turned.filter(last -> box.on().filter(last::isBefore).isEmpty()).isPresent();
        return new Box(box.on(), turned, off, box.cleaned(), Optional.of(wasTurned ? BoxStep.TURNED : BoxStep.ON));
    }

    private Optional<LocalDate> before(Optional<LocalDate> done) {
        return done.filter(that -> !that.equals(day));
    }

    /** In the cage of its pair, where it left it on the day. */
    private Bird before(Bird bird) {
        boolean leftItsPair = room.pairs().stream()
                .filter(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())
                .anyMatch(pair -> bird.outOf(pair).filter(day::equals).isPresent());
        if (!leftItsPair) {
            return bird;
        }
        Optional<Departure> left = bird.left().filter(gone -> !gone.day().equals(day));
        return new Bird(
                bird.id(),
                bird.ring(),
                bird.splitRing(),
                bird.called(),
                bird.sex(),
                bird.species(),
                bird.hatched(),
                bird.colour(),
                bird.father(),
                bird.mother(),
                bird.origin(),
                bird.stays().stream().filter(stay -> stay.since().isBefore(day)).toList(),
                bird.traits(),
                bird.look(),
                bird.treated(),
                bird.out(),
                bird.loose(),
                left);
    }

    private Pair before(Pair pair) {
        return new Pair(
                pair.id(),
                pair.label(),
                pair.cage(),
                pair.cock(),
                pair.hen(),
                pair.since(),
                pair.rounds().stream().map(this::before).toList(),
                pair.parting(),
                pair.skipped());
    }

    private Round before(Round round) {
        List<Egg> eggs = round.eggs().stream().map(this::before).toList();
        return new Round(round.id(), round.number(), round.begun(), round.ended(), round.sitting(), eggs);
    }

    private Egg before(Egg egg) {
        return new Egg(
                egg.mark(),
                egg.laid(),
                egg.about(),
                egg.place(),
                egg.cage(),
                egg.entry(),
                egg.candlings().stream().filter(look -> !look.day().equals(day)).toList(),
                egg.pipped(),
                egg.moves(),
                egg.removed()
                        .filter(removal ->
                                !wasOffered(removal) || !removal.day().equals(day)),
                egg.chick().filter(chick -> !chick.hatched().equals(day)).map(this::before));
    }

    private Chick before(Chick chick) {
        return new Chick(
                chick.hatched(),
                chick.about(),
                chick.ring()
                        .filter(ring -> !ring.day().equals(day))
                        .map(ring -> new ChickRing(ring.ring(), ring.day(), before(ring.checked()))),
                chick.trips().stream()
                        .filter(trip -> !trip.out() || !trip.day().equals(day))
                        .toList(),
                chick.traits(),
                chick.lost(),
                chick.weaned().filter(weaning -> !weaning.day().equals(day)));
    }
}
