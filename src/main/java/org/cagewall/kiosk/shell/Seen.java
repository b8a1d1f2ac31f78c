package org.cagewall.kiosk.shell;

import java.util.List;
import java.util.Optional;
import org.cagewall.room.Sign;

/** What somebody saw that was different, by the choices and in words of their own. Immutable; any thread. */
public record Seen(List<Sign> signs, Optional<String> note) {

    public Seen {
        signs = List.copyOf(signs);
    }
}
