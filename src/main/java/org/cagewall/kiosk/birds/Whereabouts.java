package org.cagewall.kiosk.birds;

import java.util.Locale;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;

/** Where birds can be, as one looks for them: by what their cage is for, out of the birdroom, or loose in it. */
enum Whereabouts {
    BREEDING,
    STOCK,
    FLIGHT,
    NURSERY,
    QUARANTINE,
    HOSPITAL,
    SHOW,
    OUT,
    LOOSE;

    static Optional<Whereabouts> of(Room room, Bird bird) {
        if (bird.loose()) {
            return Optional.of(LOOSE);
        }
        if (bird.out().isPresent()) {
            return Optional.of(OUT);
        }
        return bird.cage().flatMap(room::cage).map(Cage::use).map(Whereabouts::of);
    }

    private static Whereabouts of(Use use) {
        return switch (use) {
            case BREEDING -> BREEDING;
            case STOCK -> STOCK;
            case FLIGHT -> FLIGHT;
            case NURSERY -> NURSERY;
            case QUARANTINE -> QUARANTINE;
            case HOSPITAL -> HOSPITAL;
            case SHOW -> SHOW;
        };
    }

    /** Its name in tests and in the file of sentences. */
    String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
