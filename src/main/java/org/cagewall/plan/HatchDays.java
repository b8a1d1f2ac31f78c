package org.cagewall.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * On which days the young of a nest hatch, or hatched; as counted from 1970. Young that lie further apart than twice the
 * gap allowed are two clutches: what would hatch half-way is at the stage of neither. Immutable; any thread.
 */
record HatchDays(List<Clutch> clutches) {

    /** From the first hatching to the last. */
    private record Clutch(int first, int last) {

        /** How far that day is after the last; less than 0 for days before the first; 0 among them. */
        int gap(int day) {
            return Math.max(day - last, 0) + Math.min(day - first, 0);
        }
    }

    HatchDays {
        clutches = List.copyOf(clutches);
    }

    /**
     * Of young that hatch on these days, in any order.
     *
     * @param days one or more
     */
    static HatchDays of(List<Integer> days) {
        List<Integer> rising = days.stream().sorted().toList();
        List<Clutch> clutches = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= rising.size(); i++) {
            if (i == rising.size() || rising.get(i) - rising.get(i - 1) > 2 * Fosters.MOST_GAP) {
                clutches.add(new Clutch(rising.get(first), rising.get(i - 1)));
                first = i;
            }
        }
        return new HatchDays(clutches);
    }

    /** How far that day is from the nearest clutch, in days; less than 0 for days before it, 0 within it. */
    int gap(int day) {
        return clutches.stream()
                .map(clutch -> clutch.gap(day))
                .min(Comparator.comparing(Math::abs))
                .orElseThrow();
    }
}
