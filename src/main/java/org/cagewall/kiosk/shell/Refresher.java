package org.cagewall.kiosk.shell;

import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.desk.Desk;
import org.cagewall.room.Room;

/**
 * Keeps a presenter up to date for as long as its screen is shown: it is told when something has been recorded and when
 * the pen has changed hands. Free of Swing; used on the event thread.
 */
public final class Refresher {

    private final Desk desk;
    private final Optional<Pen> pen;
    private final Runnable refresh;
    private final Runnable handedOn;
    private final Consumer<Room> recorded;

    /** Tells of what is recorded. */
    public Refresher(Desk desk, Runnable refresh) {
        this(desk, Optional.empty(), refresh, refresh);
    }

    /** Tells of what is recorded and, in another way, of a pen that has changed hands. */
    public Refresher(Desk desk, Runnable refresh, Pen pen, Runnable handedOn) {
        this(desk, Optional.of(pen), refresh, handedOn);
    }

    private Refresher(Desk desk, Optional<Pen> pen, Runnable refresh, Runnable handedOn) {
        this.desk = desk;
        this.pen = pen;
        this.refresh = refresh;
        this.handedOn = handedOn;
        this.recorded = room -> refresh.run();
    }

    /** The screen is shown: it is brought up to date, and kept so. */
    public void start() {
        desk.listen(recorded);
        pen.ifPresent(it -> it.listen(handedOn));
        refresh.run();
    }

    public void stop() {
        desk.ignore(recorded);
        pen.ifPresent(it -> it.ignore(handedOn));
    }
}
