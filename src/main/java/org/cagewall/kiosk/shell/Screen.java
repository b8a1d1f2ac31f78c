package org.cagewall.kiosk.shell;

import javax.swing.JComponent;
import org.cagewall.kiosk.kit.Heading;

/** One page of the kiosk: the shell shows its heading and its view. Used on the event thread. */
public interface Screen {

    /** Its title, above the view and beside who is recording. */
    Heading heading();

    /** What fills the place between heading and bar: 1232 x 620 at 1280 x 800. */
    JComponent view();

    /** Whether it can do with less width, so that something may stay beside it. */
    default boolean leavesRoomAside() {
        return false;
    }

    /** Whether something is filled in on it that a card which is scanned would lead away from. */
    default boolean isBegun() {
        return false;
    }

    /** It is on the screen now: listen to the desk. */
    default void shown() {}

    /** It is no longer on the screen: stop listening. */
    default void hidden() {}
}
