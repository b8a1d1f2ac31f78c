package org.cagewall.kiosk.shell;

import org.cagewall.text.Message;

/** Says what was done, without asking; free of Swing. Used on the event thread. */
public interface Notices {

    /**
     * A line in the heading's place until the next touch: "Done: all well, B3." There it covers nothing that one may
     * want to touch next.
     */
    void done(Message what);

    /** The same with a button that takes it back. */
    void done(Message what, Runnable undo);

    /** The calm page after something went wrong, with the code that is also in the log. */
    void failed(String code);
}
