package org.cagewall.deed;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.Pair;

/** What lies outside the room: rules ask it about the past. Implementations are bound to the thread that reads. */
public interface Register {

    /** All birds that were ever in the record and answer to that ring or name; those present first. */
    List<Bird> birds(String name);

    /** A bird that was ever in the record, by its ring or name. */
    default Optional<Bird> bird(String name) {
        return birds(name).stream().findFirst();
    }

    /** A bird that was ever in the record, by the number of the entry that added it. */
    Optional<Bird> bird(long id);

    /** The youngest pair put together in the cage by that day of which at least one bird was then still there. */
    Optional<Pair> pairAt(long cage, LocalDate day);

    /** The numbers of all pairs of which an egg was laid in that cage or moved into it. */
    List<Long> pairsWithEggsIn(long cage);

    /** A pair that was ever in the record, by its number. */
    Optional<Pair> pair(long id);

    /** What is needed to know of an entry before it is struck out. */
    Optional<Recorded> entry(long number);

    /** The highest number given to a cage, a struck one left aside; 0 when there is none. */
    int highestCageNumber();

    /** The highest number that serves as a pair's label; 0 when there is none. */
    int highestPairLabel();

    /** The highest revision of a cage's card; 0 when it has none. */
    int highestRevision(long cage);

    /**
     * An entry as a strike sees it.
     *
     * @param leaning the first later entry whose facts lean on it
     */
    record Recorded(long number, String by, String deed, Optional<Long> struckBy, Optional<Long> leaning) {}
}
