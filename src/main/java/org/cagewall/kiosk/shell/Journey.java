package org.cagewall.kiosk.shell;

import java.util.ArrayDeque;
import java.util.Deque;

/** Where one has been, so that there is a way back. Used on the event thread. */
final class Journey {

    private static final int LONGEST = 50;

    private final Deque<Destination> before = new ArrayDeque<>();
    private final Destination first;
    private Destination here;

    Journey(Destination first) {
        this.first = first;
        this.here = first;
    }

    Destination here() {
        return here;
    }

    void go(Destination next) {
        if (next.equals(here)) {
            return;
        }
        before.push(here.comingBack());
        if (before.size() > LONGEST) {
            before.removeLast();
        }
        here = next;
    }

    /** Where one is, as one comes to it a second time. */
    Destination again() {
        here = here.comingBack();
        return here;
    }

    Destination back() {
        here = before.isEmpty() ? first : before.pop();
        return here;
    }
}
