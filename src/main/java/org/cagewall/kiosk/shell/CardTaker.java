package org.cagewall.kiosk.shell;

import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.room.Cage;

/** Where a cage is being chosen, its card answers as well as a touch. Used on the event thread. */
@FunctionalInterface
public interface CardTaker {

    /** What follows for the cage whose card has come, if one is waited for; after that it is waited for no more. */
    Optional<Consumer<Cage>> awaited();
}
