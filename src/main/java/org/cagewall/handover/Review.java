package org.cagewall.handover;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;

/**
 * What happened on some days, the most urgent first, and what waits now. What was missed is worked out, never recorded;
 * that the owner has read of it is. Immutable; any thread.
 *
 * @param different what was reported different
 * @param notDone tasks that were not done, said or never answered; a cage that nobody looked at all day is only among
 *     the unvisited
 * @param unvisited cages that nobody looked at, each with its day; those left alone by plan are not among them
 * @param births chicks hatched
 * @param deaths birds and chicks that died, and chicks that are missing
 * @param phoned calls, with what was agreed
 * @param entries all other entries
 * @param strip who looked at what
 * @param waiting what waits for the owner today, whatever the days
 * @param away the days away among those days, the last where there are several
 */
public record Review(
        LocalDate from,
        LocalDate to,
        List<Item> different,
        List<Undone> notDone,
        List<Unvisited> unvisited,
        List<Item> births,
        List<Item> deaths,
        List<Item> phoned,
        List<Item> entries,
        Strip strip,
        List<Waiting> waiting,
        Optional<DaysAway> away) {

    public Review {
        different = List.copyOf(different);
        notDone = List.copyOf(notDone);
        unvisited = List.copyOf(unvisited);
        births = List.copyOf(births);
        deaths = List.copyOf(deaths);
        phoned = List.copyOf(phoned);
        entries = List.copyOf(entries);
        waiting = List.copyOf(waiting);
    }

    /**
     * The review of the days from the first to the last, both counted.
     *
     * <p>Tasks and visits are missed only on days that are over. They are expected on the days of an absence; where none
     * ran within the days asked for, on each of these days from the first entry on.
     *
     * @param room the room as it stands now
     * @param entries all entries that tell of those days, in any order
     */
    public static Review of(Room room, List<LogEntry> entries, LocalDate from, LocalDate to) {
        return new Reviewing(room, entries, from, to).review();
    }

    /** All that was recorded of a cage, in order. */
    public List<Item> of(String cage) {
        return Stream.of(
                        different.stream(),
                        notDone.stream().flatMap(undone -> undone.said().stream()),
                        births.stream(),
                        deaths.stream(),
                        phoned.stream(),
                        entries.stream())
                .flatMap(items -> items)
                .filter(item -> item.cages().contains(cage))
                .sorted(Comparator.comparing(Item::day).thenComparing(Item::entry))
                .toList();
    }
}
