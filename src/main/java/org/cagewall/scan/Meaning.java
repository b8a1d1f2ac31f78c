package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.text.Message;

/** What a scanned text means in a birdroom: it opens a cage, or there is something to say. Immutable; any thread. */
public sealed interface Meaning {

    /** A code may hold thousands of letters; the first n tell what it is. */
    int MOST_TOLD = 160;

    /**
     * The card of a cage that is in use.
     *
     * @param age whether the card says what it should
     * @param changes what is different, as far as it is known
     */
    record Opens(Cage cage, CardFaces.Age age, List<Message> changes) implements Meaning {

        public Opens {
            changes = List.copyOf(changes);
        }

        public boolean isOutOfDate() {
            return age != CardFaces.Age.UP_TO_DATE;
        }

        /** What is to be done about a card that is out of date. */
        public Message old() {
            return Message.of(
                    age == CardFaces.Age.REPLACED ? "scan.reading.replaced-card" : "scan.reading.old-card",
                    cage.name());
        }
    }

    /** Nothing is opened and nothing changes; why, as a sentence. */
    record Says(Message sentence) implements Meaning {}

    static Meaning of(CardCode.Reading reading, Room room) {
        if (reading instanceof CardCode.Valid valid) {
            return of(valid.card(), room);
        }
        return reading instanceof CardCode.Damaged
                ? new Says(Message.of("scan.reading.damaged"))
                : new Says(Message.of("scan.reading.foreign", legible(reading.text())));
    }

    /** The beginning of a text from anywhere: what would be no letter on a screen is left blank there. */
    private static String legible(String text) {
        String plain = text.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Co}\\p{Cn}\\p{Zl}\\p{Zp}]+", " ")
                .strip();
        int letters = plain.codePointCount(0, plain.length());
        return letters <= MOST_TOLD ? plain : plain.substring(0, plain.offsetByCodePoints(0, MOST_TOLD)) + "\u2026";
    }

    private static Meaning of(CardCode code, Room room) {
        if (!code.room().equals(room.code())) {
            return new Says(Message.of("scan.reading.other-room"));
        }
        Optional<Cage> found = room.cageNumbered(code.number());
        if (found.isEmpty()) {
            return new Says(Message.of("scan.reading.no-cage"));
        }
        Cage cage = found.get();
        if (!cage.inUse()) {
            return new Says(Message.of("scan.reading.retired", cage.name()));
        }
        CardFaces.Age age = CardFaces.age(room, cage, code);
        return new Opens(cage, age, age == CardFaces.Age.CHANGED ? CardFaces.changes(room, cage) : List.of());
    }
}
