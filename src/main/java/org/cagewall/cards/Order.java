package org.cagewall.cards;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import org.cagewall.paper.FreePlaces;
import org.cagewall.paper.Sheet;

/**
 * How cards are to be put on paper. Immutable; any thread.
 *
 * @param places the sheet, and which places of the first one are free
 * @param faces which face they get
 * @param copies how many of each card, from 1, side by side
 */
public record Order(FreePlaces places, FaceChoice faces, int copies) {

    public Order {
        if (copies < 1) {
            throw new IllegalArgumentException("a card is printed at least once, not " + copies + " times");
        }
    }

    /** Each card once on whole sheets, with the face that suits its cage. */
    public static Order on(Sheet sheet) {
        return new Order(FreePlaces.all(sheet), FaceChoice.BY_USE, 1);
    }

    public Order with(FreePlaces free) {
        return new Order(free, faces, copies);
    }

    public Order with(FaceChoice choice) {
        return new Order(places, choice, copies);
    }

    public Order copied(int times) {
        return new Order(places, faces, times);
    }

    public Sheet sheet() {
        return places.sheet();
    }

    /** How many sheets n cards need. */
    public int sheetsFor(int cards) {
        return places.sheetsFor(cards * copies);
    }

    /** What lies in which place, sheet by sheet; the copies of a card beside each other. */
    public <T> List<SortedMap<Integer, T>> spread(List<T> cards) {
        return places.spread(cards.stream()
                .flatMap(card -> Collections.nCopies(copies, card).stream())
                .toList());
    }
}
