package org.cagewall.kiosk.shell;

import javax.swing.Timer;

/** Does something again and again, this often, while it is on: the one way to do so. Used on the event thread. */
public final class Beat {

    private final Timer timer;

    public Beat(int millis, Runnable each) {
        this.timer = new Timer(millis, event -> each.run());
    }

    public void start() {
        timer.start();
    }

    public void stop() {
        timer.stop();
    }
}
