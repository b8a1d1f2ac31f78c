package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The owner's days away. Immutable; any thread.
 *
 * @param from the first day away
 * @param to the last day away
 * @param vet how the vet is reached, as the owner wrote it
 * @param feeder who feeds the cages that are left alone
 * @param leaveAlone ids of the cages the sitter does not touch
 * @param ended the day the owner was back, when that has been said
 * @param plans how it was planned and planned anew, in the order in which that was told
 */
public record Absence(
        long id,
        LocalDate from,
        LocalDate to,
        String sitter,
        Optional<String> second,
        Optional<String> vet,
        Optional<String> feeder,
        List<Long> leaveAlone,
        Optional<LocalDate> ended,
        List<Plan> plans) {

    /**
     * How the days away were planned from a day on.
     *
     * @param told the day on which it was said
     */
    public record Plan(LocalDate told, LocalDate from, LocalDate to, String sitter) {}

    public Absence {
        leaveAlone = List.copyOf(leaveAlone);
        plans = List.copyOf(plans);
    }

    /** As it was planned on that day; before the first plan was told, as that has it. */
    public Plan planOn(LocalDate day) {
        return plans.stream()
                .filter(plan -> !plan.told().isAfter(day))
                .reduce((earlier, later) -> later)
                .orElseGet(() -> plans.get(0));
    }

    public boolean runsOn(LocalDate day) {
        return !day.isBefore(from)
                && !day.isAfter(to)
                && ended.filter(back -> !day.isBefore(back)).isEmpty();
    }

    /** Whether there was any day of it: the owner may have stayed at home. */
    public boolean cameAbout() {
        return !last().isBefore(from);
    }

    /** Who looked after the birds, one after another. */
    public List<String> sitters() {
        return cameAbout()
                ? from.datesUntil(last().plusDays(1))
                        .map(day -> planOn(day).sitter())
                        .distinct()
                        .toList()
                : List.of();
    }

    /** Its first day that has not gone by on that day. */
    public LocalDate firstFrom(LocalDate today) {
        return from.isAfter(today) ? from : today;
    }

    /** The last day the owner was away, as far as it is known. */
    public LocalDate last() {
        return ended.map(back -> back.minusDays(1))
                .filter(day -> day.isBefore(to))
                .orElse(to);
    }
}
