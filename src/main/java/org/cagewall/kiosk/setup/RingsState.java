package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.room.RingBody;
import org.cagewall.room.RingsOf;

/**
 * What the part of rings shows: a line a stock, and what would be filled in for the next. Immutable; free of Swing.
 *
 * @param of of which year rings are when they are issued
 * @param body whose rings they are, where that was said
 * @param next the ring that is offered for the next chick, as a sentence
 */
record RingsState(
        List<Stock> stocks, String next, Order order, RingsOf of, Optional<RingBody> body, Optional<Problem> problem) {

    /** A stock: how many are left, of what year, size and colour, and what became of the others. */
    record Stock(String name, String left, String first, String second) {}

    /** Rings about to be added. */
    record Order(int year, String size, String form, String colour, String first, String last) {}

    RingsState {
        stocks = List.copyOf(stocks);
    }

    RingsState wrong(String part, String words) {
        return new RingsState(stocks, next, order, of, body, Optional.of(new Problem(part, words)));
    }
}
