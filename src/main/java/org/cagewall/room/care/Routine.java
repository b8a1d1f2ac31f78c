package org.cagewall.room.care;

import java.util.List;
import java.util.Set;

/** What a cage is given each day, and what the sitter may do there. Immutable; any thread. */
public record Routine(List<FeedLine> feed, Set<Permission> allowed) {

    public static final Routine NONE = new Routine(List.of(), Set.of());

    public Routine {
        feed = List.copyOf(feed);
        allowed = Set.copyOf(allowed);
    }

    public boolean allows(Permission permission) {
        return allowed.contains(permission);
    }
}
