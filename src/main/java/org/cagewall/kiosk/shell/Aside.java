package org.cagewall.kiosk.shell;

import javax.swing.JComponent;

/** What stays beside the screens that leave room for it. Used on the event thread. */
public interface Aside {

    /** What fills the place at the right: 232 wide whatever the text size, as high as the screen's own view. */
    JComponent view();

    /** It can be seen now. */
    void shown();

    /** It can be seen no longer. */
    void hidden();
}
