package org.cagewall.almanac;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;

/**
 * What this room's own birds of a species do: how long their eggs take, how far apart they lay, when chicks are ringed,
 * leave the box and feed themselves. It draws the timetable towards itself, the more the more there is of it. Dates that
 * were guessed and eggs that were ever moved are left aside. Pure; immutable; any thread.
 *
 * @param days the room's own days for each value, shortest first
 */
public record OwnNumbers(String species, Map<Timing, List<Integer>> days) {

    /** How many of the room's own dates the timetable is worth; chosen so that a handful of hatchings moves nothing. */
    public static final int BOOK_IS_WORTH = 10;

    /** From how many own dates on they are used at all; below, the timetable holds as it is written. */
    public static final int USED_FROM = 10;

    /** The share of its own dates that a window from the room's own numbers holds. */
    public static final double SHARE_HELD = 0.9;

    /** A longer gap between two eggs is taken for the gap between two rounds; as the screens ask after ten days. */
    private static final int LONGEST_GAP_DAYS = 9;

    public OwnNumbers {
        days = Map.copyOf(days);
    }

    /** Of all the room has ever recorded of a species. */
    static OwnNumbers of(Room room, Timetable table) {
        Map<String, Boolean> same = new HashMap<>();
        Map<Long, List<PastEgg>> rounds = everyEgg(room)
                .filter(egg -> same.computeIfAbsent(
                        egg.species().orElse(room.settings().species()),
                        species -> Timetables.areSame(species, table.species())))
                .collect(Collectors.groupingBy(PastEgg::round));
        Map<Timing, List<Integer>> days = new EnumMap<>(Timing.class);
        for (List<PastEgg> round : rounds.values()) {
            List<PastEgg> laid = asLaid(round);
            add(days, Timing.INCUBATION, incubations(laid, table));
            add(days, Timing.LAY_GAP, gaps(laid));
            add(days, Timing.RINGING, ages(laid, PastEgg::ringed));
            add(days, Timing.OUT_OF_BOX, ages(laid, PastEgg::left));
            add(days, Timing.INDEPENDENT, ages(laid, PastEgg::weaned));
        }
        days.replaceAll((timing, all) -> all.stream().sorted().toList());
        return new OwnNumbers(table.species(), days);
    }

    /** The eggs of all pairs the room knows of, those held and those long gone. */
    static Stream<PastEgg> everyEgg(Room room) {
        return Stream.concat(
                room.past().stream(), room.pairs().stream().flatMap(pair -> PastEgg.of(pair, room.bird(pair.hen()))));
    }

    /** From how many own dates a value could be drawn. */
    public int count(Timing timing) {
        return days.getOrDefault(timing, List.of()).size();
    }

    /**
     * The shortest run of days that holds nine tenths of the room's own, with their middle between; of several as short the
     * one that holds the most. Empty where there are none.
     */
    public Optional<Span> own(Timing timing) {
        List<Integer> sorted = days.getOrDefault(timing, List.of());
        return sorted.isEmpty() ? Optional.empty() : Optional.of(shortest(sorted));
    }

    /** The timetable drawn towards the room's own numbers: not what the owner has set, and nothing from too few dates. */
    Timetable draw(Timetable table) {
        Timetable drawn = table;
        for (Timing timing : days.keySet()) {
            Optional<Value> value = table.value(timing).filter(it -> it.origin() == Origin.BOOK);
            if (value.isPresent() && count(timing) >= USED_FROM) {
                drawn = drawn.with(value.get().drawnTo(mixed(value.get().span(), timing), count(timing)));
            }
        }
        return drawn;
    }

    private Span mixed(Span book, Timing timing) {
        Span own = shortest(days.get(timing));
        return new Span(
                mixed(book.earliest(), own.earliest(), count(timing)),
                mixed(book.expected(), own.expected(), count(timing)),
                mixed(book.latest(), own.latest(), count(timing)));
    }

    /** Shrinkage to the timetable, whose worth is that of ten own dates; to the nearest day. */
    private static int mixed(int book, int own, int count) {
        return (int) Math.round((double) (BOOK_IS_WORTH * book + count * own) / (BOOK_IS_WORTH + count));
    }

    private static Span shortest(List<Integer> sorted) {
        int held = (int) Math.ceil(SHARE_HELD * sorted.size());
        int from = sorted.get(0);
        int to = sorted.get(sorted.size() - 1);
        int most = 0;
        for (int first = 0; first + held <= sorted.size(); first = after(sorted, first)) {
            int low = sorted.get(first);
            int high = sorted.get(first + held - 1);
            int holds = after(sorted, first + held - 1) - first;
            if (high - low < to - from || high - low == to - from && holds > most) {
                from = low;
                to = high;
                most = holds;
            }
        }
        int middle = sorted.get(sorted.size() / 2);
        return new Span(from, Math.max(from, Math.min(middle, to)), to);
    }

    /** Where the days begin that are longer than the one at that place. */
    private static int after(List<Integer> sorted, int place) {
        int next = place + 1;
        while (next < sorted.size() && sorted.get(next).equals(sorted.get(place))) {
            next++;
        }
        return next;
    }

    private static List<PastEgg> asLaid(Collection<PastEgg> round) {
        return round.stream()
                .sorted(Comparator.comparing(PastEgg::laid)
                        .thenComparing(egg -> egg.mark().length())
                        .thenComparing(PastEgg::mark))
                .toList();
    }

    private static Stream<Integer> incubations(List<PastEgg> laid, Timetable table) {
        Optional<LocalDate> start = start(laid, table);
        return start.stream().flatMap(begun -> laid.stream()
                .filter(egg -> !egg.moved() && !egg.about() && egg.hatched().isPresent())
                .map(egg -> days(Window.later(egg.laid(), begun), egg.hatched().orElseThrow()))
                .filter(days -> days > 0));
    }

    private static Optional<LocalDate> start(List<PastEgg> laid, Timetable table) {
        return laid.get(0).sitting().or(() -> table.expected(Timing.SITS_FROM)
                .filter(nth -> nth >= 1 && nth <= laid.size())
                .map(nth -> laid.get(nth - 1))
                .filter(egg -> !egg.about())
                .map(PastEgg::laid));
    }

    private static Stream<Integer> gaps(List<PastEgg> laid) {
        List<Integer> gaps = new ArrayList<>();
        for (int i = 1; i < laid.size(); i++) {
            if (!laid.get(i - 1).about() && !laid.get(i).about()) {
                gaps.add(days(laid.get(i - 1).laid(), laid.get(i).laid()));
            }
        }
        return gaps.stream().filter(gap -> gap > 0 && gap <= LONGEST_GAP_DAYS);
    }

    private static Stream<Integer> ages(List<PastEgg> laid, Function<PastEgg, Optional<LocalDate>> event) {
        return laid.stream()
                .filter(egg -> !egg.about())
                .flatMap(egg ->
                        egg.hatched().flatMap(hatched -> event.apply(egg).map(day -> days(hatched, day))).stream())
                .filter(age -> age >= 0);
    }

    private static int days(LocalDate from, LocalDate to) {
        return (int) ChronoUnit.DAYS.between(from, to);
    }

    private static void add(Map<Timing, List<Integer>> days, Timing timing, Stream<Integer> more) {
        List<Integer> all = days.computeIfAbsent(timing, none -> new ArrayList<>());
        more.forEach(all::add);
    }
}
