package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.nest.Lying;

/**
 * What ought to have come at a nest and has not, or can no more: the one place from which the wall and the lists have it.
 * Immutable; any thread.
 *
 * @param since the first day on which it was late
 * @param whom the eggs or chicks it is about; none where it is about an egg that has not been laid
 */
public record Overdue(What what, LocalDate since, List<Lying> whom) {

    /** What did not come, the most pressing first. */
    public enum What {
        /** An egg has not hatched. */
        HATCH,
        /** The hen has not laid. */
        EGG,
        /** A chick has outgrown its ring. */
        RING
    }

    /** So long after its day an egg that never hatched, or a first egg, is thought of. Common practice, no source. */
    private static final int EGG_DAYS = 30;

    /** So long it is said of a chick that it missed its ring. Common practice, no source. */
    private static final int RING_SAID_DAYS = 14;

    public Overdue {
        whom = List.copyOf(whom);
    }

    /**
     * The most pressing first.
     *
     * @param today the day for which it is asked
     */
    public static List<Overdue> at(Outlook nest, LocalDate today) {
        return Stream.of(hatch(nest, today), egg(nest, today), ring(nest, today))
                .flatMap(Optional::stream)
                .toList();
    }

    /** One of them. */
    public static Optional<Overdue> at(Outlook nest, LocalDate today, What what) {
        return at(nest, today).stream().filter(each -> each.what() == what).findFirst();
    }

    private static Optional<Overdue> hatch(Outlook nest, LocalDate today) {
        List<EggOutlook> eggs = nest.eggsHere().stream()
                .filter(egg -> egg.overdueFrom()
                        .filter(from -> isNow(from, EGG_DAYS, today))
                        .isPresent())
                .toList();
        return eggs.stream()
                .flatMap(egg -> egg.overdueFrom().stream())
                .min(Comparator.naturalOrder())
                .map(since -> new Overdue(
                        What.HATCH, since, eggs.stream().map(EggOutlook::lying).toList()));
    }

    private static Optional<Overdue> egg(Outlook nest, LocalDate today) {
        Optional<LocalDate> next = nest.nextEgg()
                .filter(egg -> today.isBefore(egg.givenUp()))
                .flatMap(NextEgg::tooLongFrom)
                .filter(from -> !from.isAfter(today));
        Optional<LocalDate> first = nest.firstEgg()
                .filter(Due::isOpen)
                .map(due -> due.window().latest().plusDays(1))
                .filter(from -> isNow(from, EGG_DAYS, today));
        return next.or(() -> first).map(since -> new Overdue(What.EGG, since, List.of()));
    }

    private static Optional<Overdue> ring(Outlook nest, LocalDate today) {
        List<ChickOutlook> chicks = nest.chicksHere().stream()
                .filter(chick -> missed(chick)
                        .filter(from -> isNow(from, RING_SAID_DAYS, today))
                        .isPresent())
                .toList();
        return chicks.stream()
                .flatMap(chick -> missed(chick).stream())
                .min(Comparator.naturalOrder())
                .map(since -> new Overdue(
                        What.RING,
                        since,
                        chicks.stream().map(ChickOutlook::lying).toList()));
    }

    /** The day from which a chick that wears no ring is too old for a closed one. */
    public static Optional<LocalDate> missed(ChickOutlook chick) {
        return chick.ringing()
                .filter(Due::isOpen)
                .map(due -> due.window().latest().plusDays(Coming.RING_DAYS + 1L));
    }

    private static boolean isNow(LocalDate from, int days, LocalDate today) {
        return !today.isBefore(from) && today.isBefore(from.plusDays(days));
    }
}
