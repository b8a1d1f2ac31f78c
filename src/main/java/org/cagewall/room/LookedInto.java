package org.cagewall.room;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.care.Headcount;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.BoxTrip;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickLoss;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.NestLook;
import org.cagewall.room.nest.NestMove;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Weaning;

/**
 * When somebody last looked into a cage: by a check, or by what could not be done without a look, in its nest or to its
 * birds. It says nothing of food and water. Pure; any thread.
 */
final class LookedInto {

    private final Room room;
    private final Cage cage;

    LookedInto(Room room, Cage cage) {
        this.room = room;
        this.cage = cage;
    }

    /** The last such day that is not after {@code date}. */
    Optional<LocalDate> lastBy(LocalDate date) {
        return Stream.of(
                        cage.lastVisit().map(Visit::day).stream(),
                        cage.looks().stream().map(NestLook::day),
                        cage.counted().map(Headcount::day).stream(),
                        box(cage.box()),
                        room.nest(cage).all().stream().flatMap(this::ofLying),
                        room.birds().stream().flatMap(this::ofBird))
                .flatMap(days -> days)
                .filter(day -> !day.isAfter(date))
                .max(Comparator.naturalOrder());
    }

    private static Stream<LocalDate> box(Box box) {
        return Stream.of(box.on(), box.turned(), box.off(), box.cleaned()).flatMap(Optional::stream);
    }

    private Stream<LocalDate> ofLying(Lying lying) {
        Egg egg = lying.egg();
        return Stream.of(
                        Stream.of(egg.laid()).filter(day -> !egg.about()),
                        egg.candlings().stream().map(Candling::day),
                        egg.pipped().stream(),
                        egg.moves().stream().map(NestMove::day),
                        egg.removed().map(Removal::day).stream(),
                        egg.chick().stream().flatMap(LookedInto::ofChick))
                .flatMap(days -> days)
                .filter(day -> egg.wasIn(cage.id(), day));
    }

    private static Stream<LocalDate> ofChick(Chick chick) {
        return Stream.of(
                        Stream.of(chick.hatched()).filter(day -> !chick.about()),
                        chick.ring().stream()
                                .flatMap(worn -> Stream.concat(
                                        Stream.of(worn.day()).filter(day -> !worn.about()), worn.checked().stream())),
                        chick.trips().stream().filter(trip -> !trip.about()).map(BoxTrip::day),
                        chick.lost().map(ChickLoss::day).stream(),
                        chick.weaned().filter(weaning -> !weaning.about()).map(Weaning::day).stream())
                .flatMap(days -> days);
    }

    private Stream<LocalDate> ofBird(Bird bird) {
        Stream<LocalDate> moved = bird.stays().stream()
                .skip(1)
                .map(Stay::since)
                .filter(day -> stoodHere(bird, day) || stoodHere(bird, day.minusDays(1)));
        Stream<LocalDate> treated = bird.treated().filter(day -> stoodHere(bird, day)).stream();
        return Stream.concat(moved, treated);
    }

    private boolean stoodHere(Bird bird, LocalDate day) {
        return bird.cageOn(day).filter(id -> id == cage.id()).isPresent();
    }
}
