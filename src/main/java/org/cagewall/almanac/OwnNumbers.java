package org.cagewall.almanac;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.Room;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;

/**
 * What this room's own birds of a species do: how long they take to their first egg and from round to round, how long
 * their eggs take, how far apart they lay, when chicks are ringed, leave the box and feed themselves. It draws the
 * timetable towards itself, the more the more there is of it. Dates that were guessed are left aside, and of eggs that
 * were ever moved how long they took. Pure; immutable; any thread.
 */
public final class OwnNumbers {

    /** How many of the room's own dates the timetable is worth; chosen so that a handful of hatchings moves nothing. */
    public static final int BOOK_IS_WORTH = 10;

    /** From how many own dates on they are used at all; below, the timetable holds as it is written. */
    public static final int USED_FROM = 10;

    /**
     * The share of its own dates that a window from the room's own numbers holds. It is to hold at least 0.87 of what comes,
     * and no window a day shorter 0.9: half-way between, chance in the dates does least harm to either.
     */
    public static final double SHARE_HELD = 0.885;

    /** So many days from egg to egg are never late, unless the species' own timetable has fewer; common practice, no source. */
    private static final int GAP_NOT_LATE_DAYS = 3;

    private static final Tally NONE = new Tally();

    private final Map<Timing, Tally> tallies;

    private OwnNumbers(Map<Timing, Tally> tallies) {
        this.tallies = tallies;
    }

    /** Of all the room has ever recorded of the timetable's species. */
    static OwnNumbers of(Room room, Timetable table) {
        return new OwnNumbers(OwnDays.of(room, table));
    }

    /** From how many own dates a value could be drawn. */
    public int count(Timing timing) {
        return tally(timing).count();
    }

    /** The room's own days for a value, shortest first. */
    List<Integer> days(Timing timing) {
        return tally(timing).days();
    }

    /**
     * The shortest run of days that holds its share of the room's own, with their middle between; of several as short the
     * one that holds the most. Empty where there are none.
     */
    public Optional<Span> own(Timing timing) {
        return Optional.of(tally(timing)).filter(tally -> tally.count() > 0).map(tally -> tally.shortest(SHARE_HELD));
    }

    private Tally tally(Timing timing) {
        return tallies.getOrDefault(timing, NONE);
    }

    /** The timetable drawn towards the room's own numbers: not what the owner has set, and nothing from too few dates. */
    Timetable draw(Timetable table) {
        Timetable drawn = table;
        for (Timing timing : tallies.keySet()) {
            int count = count(timing);
            Optional<Value> value = table.value(timing).filter(it -> it.origin() == Origin.BOOK && count >= USED_FROM);
            if (value.isPresent()) {
                Span own = tally(timing).shortest(SHARE_HELD);
                Span book = value.get().span();
                drawn = drawn.with(value.get().drawnTo(withinNature(timing, book, mixed(book, own, count)), count));
            }
        }
        return drawn;
    }

    /**
     * What a room's birds and habits move is what is expected; what nature sets stays as the timetable has it: until when a
     * closed ring goes over the foot, and from when a chick can feed itself. A hen is not called late after one day without
     * an egg, however regular the others were.
     */
    private static Span withinNature(Timing timing, Span book, Span drawn) {
        return switch (timing) {
            case RINGING ->
                new Span(
                        Math.min(drawn.earliest(), book.latest()),
                        Math.min(drawn.expected(), book.latest()),
                        book.latest());
            case INDEPENDENT ->
                new Span(
                        book.earliest(),
                        Math.max(drawn.expected(), book.earliest()),
                        Math.max(drawn.latest(), book.earliest()));
            case LAY_GAP ->
                new Span(
                        drawn.earliest(),
                        drawn.expected(),
                        Math.max(drawn.latest(), Math.min(book.latest(), GAP_NOT_LATE_DAYS)));
            default -> drawn;
        };
    }

    private static Span mixed(Span book, Span own, int count) {
        return new Span(
                mixed(book.earliest(), own.earliest(), count),
                mixed(book.expected(), own.expected(), count),
                mixed(book.latest(), own.latest(), count));
    }

    /** Shrinkage to the timetable, whose worth is that of ten own dates; to the nearest day. */
    private static int mixed(int book, int own, int count) {
        return (int) Math.round((double) (BOOK_IS_WORTH * book + count * own) / (BOOK_IS_WORTH + count));
    }
}
