package org.cagewall.almanac;

import java.util.Optional;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.text.Message;

/**
 * One value of a timetable and where it comes from. Immutable; any thread.
 *
 * @param span days, or a count for {@link Timing#SITS_FROM} and {@link Timing#CLUTCH}
 * @param source where the shipped value comes from, in words; empty where none is shipped
 * @param count from how many of the room's own dates it was drawn; 0 where it was not
 * @param book the shipped value, which holds again when the owner's is taken back
 */
public record Value(Timing timing, Span span, Origin origin, String source, int count, Optional<Span> book) {

    static Value ofBook(Timing timing, Span span, String source) {
        return new Value(timing, span, Origin.BOOK, source, 0, Optional.of(span));
    }

    static Value ofOwner(Timing timing, Span span) {
        return new Value(timing, span, Origin.OWNER, "", 0, Optional.empty());
    }

    Value setByOwner(Span set) {
        return new Value(timing, set, Origin.OWNER, source, 0, book);
    }

    Value drawnTo(Span own, int from) {
        return new Value(timing, own, Origin.OWN_NUMBERS, source, from, book);
    }

    /** Where it comes from, as a sentence. */
    public Message told() {
        return switch (origin) {
            case BOOK -> Message.of("almanac.from-book", source);
            case OWNER -> Message.of("almanac.from-owner");
            case OWN_NUMBERS -> Message.of("almanac.from-own-numbers", count, source);
        };
    }
}
