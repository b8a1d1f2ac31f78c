package org.cagewall.room.care;

import java.util.Optional;
import org.cagewall.room.FoodKind;
import org.cagewall.room.FoodWords;

/**
 * One line of a cage's routine: what is given, how much, and on which round. Immutable; any thread.
 *
 * @param kind what the owner said it is; empty in a line of an early version
 */
public record FeedLine(String what, String amount, DayPart when, Optional<FoodKind> kind) {

    /** A line of which nobody said what it is. */
    public FeedLine(String what, String amount, DayPart when) {
        this(what, amount, when, Optional.empty());
    }

    /** The same line, said to be of that kind. */
    public FeedLine as(FoodKind said) {
        return new FeedLine(what, amount, when, Optional.of(said));
    }

    /** As the owner said, else as its words tell. */
    public FoodKind knownAs() {
        return kind.orElseGet(() -> FoodKind.guess(what));
    }

    /** Whether it reads like a medicine, which is never food: it is written as the label and the vet say. */
    public boolean isMedicine() {
        return FoodWords.isMedicine(what, amount);
    }
}
