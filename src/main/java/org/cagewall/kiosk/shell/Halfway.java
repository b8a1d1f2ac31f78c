package org.cagewall.kiosk.shell;

import java.util.Optional;

/**
 * What somebody had touched half-way on a screen that was left: it is there again when one comes back. Kept by the window
 * as long as it is open, and never in the record. Free of Swing; used on the event thread.
 */
public final class Halfway<T> {

    private Optional<T> kept = Optional.empty();

    public void keep(T what) {
        kept = Optional.of(what);
    }

    public Optional<T> kept() {
        return kept;
    }

    public void clear() {
        kept = Optional.empty();
    }
}
