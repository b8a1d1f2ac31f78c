package org.cagewall.kiosk.shell;

import org.cagewall.room.Cage;

/** Where a cage is being chosen, its card answers as well as a touch. Used on the event thread. */
@FunctionalInterface
public interface CardTaker {

    /** Whether somebody waited for this cage's card and has it now; else it opens its cage as ever. */
    boolean takes(Cage cage);
}
