package org.cagewall.deed;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.Nest;
import org.cagewall.room.nest.Pair;

/**
 * All that a rule may look at. Lives for one judgement, on the thread that records.
 *
 * @param today the date beyond which nothing can have happened
 * @param entry the number the deed will have
 */
public record Scene(Room room, Register register, Circumstances told, LocalDate today, long entry) {

    public LocalDate on() {
        return told.on();
    }

    public Optional<Person> person() {
        return told.by().flatMap(room::person);
    }

    /** The cage of that name, which the rules have made sure of. */
    Cage theCage(String name) {
        return room.cage(name).orElseThrow(() -> new IllegalStateException("no cage " + name));
    }

    long theWall(String name) {
        return room.wall(name)
                .orElseThrow(() -> new IllegalStateException("no wall " + name))
                .id();
    }

    /** A bird of the record by its ring or name, present or gone. */
    public Optional<Bird> bird(String name) {
        return room.bird(name).or(() -> register.bird(name));
    }

    Bird theBird(String name) {
        return bird(name).orElseThrow(() -> new IllegalStateException("no bird " + name));
    }

    /** What lies or ever lay in that cage's nest, of pairs held and of pairs long gone. */
    Nest nest(long cage) {
        return Nest.of(
                cage,
                register.pairsWithEggsIn(cage).stream()
                        .flatMap(id -> pair(id).stream())
                        .toList());
    }

    private Optional<Pair> pair(long id) {
        return room.pairs().stream().filter(pair -> pair.id() == id).findFirst().or(() -> register.pair(id));
    }

    /**
     * The youngest pair put together in the cage by that date of which at least one bird was still there. The register is
     * asked and not the room, so that a line tells the same facts whenever it is read back, however long the pair is gone.
     */
    Optional<Pair> pairAt(Cage cage) {
        return register.pairAt(cage.id(), on());
    }
}
