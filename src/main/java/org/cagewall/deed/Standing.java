package org.cagewall.deed;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Departure;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.nest.BoxTrip;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickLoss;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.NestMove;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Weaning;
import org.cagewall.text.Message;

/**
 * What must hold of the room after any deed and any strike, in whatever order they came. Pure; any thread.
 */
public final class Standing {

    private final Room room;
    private final Register register;
    private final List<Message> problems = new ArrayList<>();

    private Standing(Room room, Register register) {
        this.room = room;
        this.register = register;
    }

    /** What does not hold of these parts of the room; empty when all is well. */
    public static List<Message> problems(Room room, Register register, Set<Subject> touched) {
        Standing standing = new Standing(room, register);
        for (Subject subject : touched) {
            switch (subject.kind()) {
                case ROOM -> {
                    standing.checkPeople();
                    standing.checkAbsences();
                }
                case CAGE -> room.cage(subject.id()).ifPresent(standing::checkCage);
                case BIRD -> standing.known(subject.id()).ifPresent(standing::checkBird);
                case PAIR ->
                    room.pairs().stream()
                            .filter(pair -> pair.id() == subject.id())
                            .forEach(standing::checkPair);
            }
        }
        return List.copyOf(standing.problems);
    }

    /** A bird of the room, or one long gone. */
    private Optional<Bird> known(long id) {
        return room.bird(id).or(() -> register.bird(id));
    }

    private void checkPeople() {
        if (room.owner().isEmpty()) {
            wrong("no-owner");
        }
    }

    private void checkAbsences() {
        List<Absence> all = room.absences();
        all.stream()
                .flatMap(absence -> Stream.of(
                                Stream.of(absence.sitter()), absence.second().stream(), absence.feeder().stream())
                        .flatMap(names -> names))
                .filter(name -> room.person(name).isEmpty())
                .forEach(name -> wrong("no-sitter", name));
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                boolean apart = all.get(i).last().isBefore(all.get(j).from())
                        || all.get(j).last().isBefore(all.get(i).from());
                if (!apart) {
                    wrong("absences");
                }
            }
        }
    }

    private void checkCage(Cage cage) {
        if (cage.retired().isEmpty()) {
            room.cages().stream()
                    .filter(other -> other.id() != cage.id() && other.retired().isEmpty())
                    .filter(other -> cage.place().isPresent() && other.place().equals(cage.place()))
                    .forEach(other -> wrong("place", cage.name(), other.name()));
        }
        if (!room.birdsOf(cage).isEmpty()) {
            checkTakesBirds(cage);
        }
        if (cage.flock() < 0) {
            wrong("flock", cage.name());
        }
        checkOnePair(cage);
    }

    private void checkTakesBirds(Cage cage) {
        if (cage.retired().isPresent()) {
            wrong("retired", cage.name());
        }
        cage.joinedTo().ifPresent(partner -> wrong("joined", cage.name(), room.cageName(partner)));
    }

    private void checkOnePair(Cage cage) {
        long together = room.pairs().stream()
                .filter(pair -> pair.cage() == cage.id() && room.together(pair))
                .count();
        if (together > 1) {
            wrong("two-pairs", cage.name());
        }
    }

    private void checkBird(Bird bird) {
        Optional<LocalDate> gone = bird.left().map(Departure::day);
        if (gone.isPresent() && bird.stays().stream().map(Stay::since).anyMatch(day -> day.isAfter(gone.get()))) {
            wrong("after-leaving", bird.ring());
        }
        Stream.concat(Stream.of(bird.ring()), bird.called().stream())
                .filter(name -> register.birds(name).stream().anyMatch(other -> other.id() != bird.id()))
                .forEach(name -> wrong("same-bird", name));
        if (isItsOwnAncestor(bird)) {
            wrong("own-ancestor", bird.ring());
        }
        bird.cage().flatMap(room::cage).ifPresent(cage -> {
            checkTakesBirds(cage);
            checkOnePair(cage);
        });
        room.pairs().stream()
                .filter(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())
                .forEach(pair -> {
                    checkSexes(pair);
                    checkPairedWhilePresent(pair, bird);
                });
    }

    private boolean isItsOwnAncestor(Bird bird) {
        Set<Long> seen = new HashSet<>();
        Deque<Long> open = new ArrayDeque<>(parents(bird));
        while (!open.isEmpty()) {
            long next = open.pop();
            if (next == bird.id()) {
                return true;
            }
            if (seen.add(next)) {
                known(next).map(Standing::parents).ifPresent(open::addAll);
            }
        }
        return false;
    }

    private static List<Long> parents(Bird bird) {
        return Stream.concat(bird.father().stream(), bird.mother().stream()).toList();
    }

    private void checkPairedWhilePresent(Pair pair, Bird bird) {
        if (bird.left().filter(gone -> gone.day().isBefore(pair.since())).isPresent()) {
            wrong("paired-after-leaving", bird.ring());
        }
    }

    private void checkPair(Pair pair) {
        checkSexes(pair);
        Stream.of(pair.cock(), pair.hen())
                .flatMap(id -> known(id).stream())
                .forEach(bird -> checkPairedWhilePresent(pair, bird));
        room.cage(pair.cage()).ifPresent(this::checkOnePair);
        boolean early = pair.rounds().stream()
                .flatMap(round -> round.eggs().stream())
                .anyMatch(egg -> egg.laid().isBefore(pair.since()));
        if (early) {
            wrong("egg-before-pair", room.cageName(pair.cage()));
        }
        pair.allEggs().forEach(this::checkEgg);
    }

    private void checkEgg(Egg egg) {
        String cage = room.cageName(egg.nest());
        if (egg.chick().isPresent() && egg.removed().isPresent()) {
            problems.add(Message.of("nest.wrong.out-and-hatched", egg.mark(), cage));
        }
        boolean early = Stream.of(
                        egg.candlings().stream().map(Candling::day),
                        egg.pipped().stream(),
                        egg.moves().stream().map(NestMove::day),
                        egg.removed().stream().map(Removal::day),
                        egg.chick().stream().map(Chick::hatched))
                .flatMap(days -> days)
                .anyMatch(day -> day.isBefore(egg.laid()));
        if (early) {
            problems.add(Message.of("nest.wrong.before-laid", egg.mark(), cage));
        }
        egg.chick()
                .filter(chick -> daysOf(chick).anyMatch(day -> day.isBefore(chick.hatched())))
                .ifPresent(chick -> problems.add(Message.of("nest.wrong.before-hatched", egg.mark(), cage)));
        egg.letter()
                .filter(letter -> egg.isInNest()
                        && room.lettersInUse().stream()
                                        .filter(letter::equalsIgnoreCase)
                                        .count()
                                > 1)
                .ifPresent(letter -> problems.add(Message.of("nest.wrong.letter-twice", letter)));
    }

    private static Stream<LocalDate> daysOf(Chick chick) {
        return Stream.of(
                        chick.ring().stream().map(ChickRing::day),
                        chick.trips().stream().map(BoxTrip::day),
                        chick.lost().stream().map(ChickLoss::day),
                        chick.weaned().stream().map(Weaning::day))
                .flatMap(days -> days);
    }

    private void checkSexes(Pair pair) {
        boolean cockIsHen =
                room.bird(pair.cock()).filter(bird -> bird.sex() == Sex.HEN).isPresent();
        boolean henIsCock =
                room.bird(pair.hen()).filter(bird -> bird.sex() == Sex.COCK).isPresent();
        if (cockIsHen || henIsCock) {
            wrong("sexes", room.ring(pair.cock()), room.ring(pair.hen()));
        }
    }

    private void wrong(String what, Object... args) {
        problems.add(Message.of("deed.wrong." + what, args));
    }
}
