package org.cagewall.deed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.Absence;
import org.cagewall.room.Bird;
import org.cagewall.room.Cage;
import org.cagewall.room.Departure;
import org.cagewall.room.Pair;
import org.cagewall.room.Room;
import org.cagewall.room.Sex;
import org.cagewall.room.Stay;
import org.cagewall.text.Message;

/**
 * What must hold of the room after any deed and any strike, in whatever order they came. Pure; any thread.
 */
public final class Standing {

    private final Room room;
    private final List<Message> problems = new ArrayList<>();

    private Standing(Room room) {
        this.room = room;
    }

    /** What does not hold of these parts of the room; empty when all is well. */
    public static List<Message> problems(Room room, Set<Subject> touched) {
        Standing standing = new Standing(room);
        for (Subject subject : touched) {
            switch (subject.kind()) {
                case ROOM -> standing.checkAbsences();
                case CAGE -> room.cage(subject.id()).ifPresent(standing::checkCage);
                case BIRD -> room.bird(subject.id()).ifPresent(standing::checkBird);
                case PAIR ->
                    room.pairs().stream()
                            .filter(pair -> pair.id() == subject.id())
                            .forEach(standing::checkPair);
            }
        }
        return List.copyOf(standing.problems);
    }

    private void checkAbsences() {
        List<Absence> all = room.absences();
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
        cage.place()
                .flatMap(room::cageAt)
                .filter(other -> other.id() != cage.id())
                .ifPresent(other -> {
                    if (cage.retired().isEmpty()) {
                        wrong("place", cage.name(), other.name());
                    }
                });
        if (cage.retired().isPresent() && !room.birdsIn(cage).isEmpty()) {
            wrong("retired", cage.name());
        }
        if (cage.flock() < 0) {
            wrong("flock", cage.name());
        }
        checkOnePair(cage);
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
        if (room.birds().stream().anyMatch(other -> other.id() != bird.id() && other.answersTo(bird.ring()))) {
            wrong("same-bird", bird.ring());
        }
        bird.cage().flatMap(room::cage).ifPresent(cage -> {
            if (cage.retired().isPresent()) {
                wrong("retired", cage.name());
            }
            checkOnePair(cage);
        });
        room.pairs().stream()
                .filter(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())
                .forEach(this::checkSexes);
    }

    private void checkPair(Pair pair) {
        checkSexes(pair);
        room.cage(pair.cage()).ifPresent(this::checkOnePair);
        boolean early = pair.rounds().stream()
                .flatMap(round -> round.eggs().stream())
                .anyMatch(egg -> egg.laid().isBefore(pair.since()));
        if (early) {
            wrong("egg-before-pair", room.cageName(pair.cage()));
        }
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
