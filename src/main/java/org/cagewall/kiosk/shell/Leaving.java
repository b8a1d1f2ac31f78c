package org.cagewall.kiosk.shell;

/** The way out of the kiosk, which a full screen has no frame to offer. Free of Swing; used on the event thread. */
public interface Leaving {

    /** Asks whether the kiosk is to be closed, and closes it if so. */
    void askToLeave();
}
