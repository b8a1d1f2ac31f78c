package org.cagewall.kiosk.setup;

import javax.swing.JComponent;

/** One part of the page: what one of the words at its head leads to. Used on the event thread. */
interface Part {

    JComponent view();

    /** It is on the screen now: listen to the desk. */
    void shown();

    /** It is no longer on the screen. */
    void hidden();
}
