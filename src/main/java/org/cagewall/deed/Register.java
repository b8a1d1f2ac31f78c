package org.cagewall.deed;

import java.util.Optional;
import org.cagewall.room.Bird;

/** What lies outside the room: rules ask it about the past. Implementations are bound to the thread that reads. */
public interface Register {

    /** A bird that was ever in the record, by its ring or name. */
    Optional<Bird> bird(String name);

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
