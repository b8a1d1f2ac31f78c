package org.cagewall.paper;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;

/**
 * Which places of the first sheet are still free, so that a part-used sheet is used up; every later sheet is whole.
 * Immutable; any thread.
 *
 * @param sheet the sheet
 * @param free the free places of the first one, counted from 0, row by row
 */
public record FreePlaces(Sheet sheet, SortedSet<Integer> free) {

    public FreePlaces {
        free = java.util.Collections.unmodifiableSortedSet(new TreeSet<>(free));
        if (free.isEmpty() || free.first() < 0 || free.last() >= sheet.cards()) {
            throw new IllegalArgumentException("free places of a sheet of " + sheet.cards() + " are not " + free);
        }
    }

    /** A whole sheet. */
    public static FreePlaces all(Sheet sheet) {
        return of(sheet, IntStream.range(0, sheet.cards()).boxed().toList());
    }

    public static FreePlaces of(Sheet sheet, Collection<Integer> free) {
        return new FreePlaces(sheet, new TreeSet<>(free));
    }

    /** How many sheets n cards need. */
    public int sheetsFor(int cards) {
        if (cards == 0) {
            return 0;
        }
        int left = Math.max(0, cards - free.size());
        return 1 + (left + sheet.cards() - 1) / sheet.cards();
    }

    /** What lies in which place, sheet by sheet: the free places of the first one, then whole sheets. */
    public <T> List<SortedMap<Integer, T>> spread(List<T> cards) {
        List<SortedMap<Integer, T>> sheets = new ArrayList<>();
        List<Integer> places = List.copyOf(free);
        int next = 0;
        while (next < cards.size()) {
            SortedMap<Integer, T> here = new TreeMap<>();
            for (int i = 0; i < places.size() && next < cards.size(); i++) {
                here.put(places.get(i), cards.get(next));
                next++;
            }
            sheets.add(here);
            places = List.copyOf(all(sheet).free());
        }
        return sheets;
    }
}
