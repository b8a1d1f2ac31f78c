package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.CardCode;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/** What a scanned text means in a birdroom: it opens a cage, or there is something to say. Immutable; any thread. */
public sealed interface Meaning {

    /**
     * The card of a cage that is in use.
     *
     * @param outOfDate whether the card says something else than it should, or is not the one that was printed last
     * @param changes what is different, as far as it is known
     */
    record Opens(Cage cage, boolean outOfDate, List<Message> changes) implements Meaning {}

    /** Nothing is opened and nothing changes; why, as a sentence. */
    record Says(Message sentence) implements Meaning {}

    static Meaning of(CardCode.Reading reading, Room room) {
        if (reading instanceof CardCode.Valid valid) {
            return of(valid.card(), room);
        }
        return reading instanceof CardCode.Damaged
                ? new Says(Message.of("scan.reading.damaged"))
                : new Says(Message.of("scan.reading.foreign", reading.text()));
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
        boolean outOfDate = CardFaces.isOutOfDate(room, cage, code);
        return new Opens(cage, outOfDate, outOfDate ? CardFaces.changes(room, cage) : List.of());
    }
}
