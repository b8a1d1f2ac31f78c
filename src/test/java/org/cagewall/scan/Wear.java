package org.cagewall.scan;

import java.util.List;

/** What makes a hanging card hard to read, one cause at a time or all that a birdroom does together. */
public enum Wear {
    BLUR,
    TILT,
    ROLL,
    DIRT,
    DIRT_OFF_FINDERS,
    LOW_LIGHT,
    GLARE,
    CURL,
    DISTANCE,
    MOTION,
    MIXED,
    HARD,
    FILTHY;

    /** The causes that come alone. */
    public static final List<Wear> SINGLES =
            List.of(BLUR, TILT, ROLL, DIRT, DIRT_OFF_FINDERS, LOW_LIGHT, GLARE, CURL, DISTANCE, MOTION);
}
