package org.cagewall.deed;

/** What a fact tells something about, and so what must be read again when it comes or goes. Immutable; any thread. */
public record Subject(Kind kind, long id) {

    /** The parts in which a room is read. */
    public enum Kind {
        ROOM,
        CAGE,
        BIRD,
        PAIR
    }

    public static final Subject ROOM = new Subject(Kind.ROOM, 0);

    static Subject cage(long id) {
        return new Subject(Kind.CAGE, id);
    }

    static Subject bird(long id) {
        return new Subject(Kind.BIRD, id);
    }

    static Subject pair(long id) {
        return new Subject(Kind.PAIR, id);
    }
}
