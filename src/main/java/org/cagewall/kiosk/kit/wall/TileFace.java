package org.cagewall.kiosk.kit.wall;

import java.util.List;

/**
 * What a tile says: three short lines and its state. Immutable; any thread, and free of Swing.
 *
 * @param name the cage's name
 * @param small beside the name, such as the pair; may be empty
 * @param big the one big word, up to two lines
 * @param foot the one date or what is due; may be empty
 * @param shorter what may be said instead of the foot, the longest first: the first that has room is shown
 * @param state how it stands out
 */
public record TileFace(String name, String small, String big, String foot, List<String> shorter, State state) {

    public TileFace {
        shorter = List.copyOf(shorter);
    }

    /** A tile whose foot is never too long. */
    public TileFace(String name, String small, String big, String foot, State state) {
        this(name, small, big, foot, List.of(), state);
    }

    /** How a tile stands out: by shape and words first. */
    public enum State {
        /** Nothing presses. */
        CALM,
        /** No bird is in it. */
        EMPTY,
        /** Something is due: the foot becomes an outlined tag. */
        DUE,
        /** Something is late: the foot becomes a solid tag, the tile has a strong line. */
        LATE,
        /** Something different was reported: its own ground and a sign. */
        DIFFERENT
    }

    String inOneSentence() {
        StringBuilder all = new StringBuilder(name);
        for (String part : new String[] {small, big, foot}) {
            if (!part.isEmpty()) {
                all.append(", ").append(part);
            }
        }
        return all.toString();
    }
}
