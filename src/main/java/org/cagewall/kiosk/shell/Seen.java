package org.cagewall.kiosk.shell;

import java.util.List;
import java.util.Optional;

/** What somebody saw that was different, in the words of the choices and in words of their own. Immutable; any thread. */
public record Seen(List<String> signs, Optional<String> note) {

    public Seen {
        signs = List.copyOf(signs);
    }
}
