package org.cagewall.kiosk.cage;

import java.util.Optional;
import org.cagewall.room.Room;

/** Which ring is offered for the next chick. Pure; any thread. */
final class NextRing {

    private NextRing() {}

    static Optional<String> of(Room room) {
        return Optional.empty();
    }
}
