package org.cagewall.room;

import java.util.Map;
import java.util.Optional;

/**
 * What the owner has said of the rings that are bought. Immutable; any thread.
 *
 * @param of the year that they bear when they are issued; empty where nothing was said
 * @param body whose rings they are; empty where nothing was said, and then no colour is known
 * @param colours the owner's own word for a year's colour, by the year
 */
public record RingCustom(Optional<RingsOf> of, Optional<RingBody> body, Map<Integer, String> colours) {

    /** What the name of a setting begins with that holds a year's colour. */
    public static final String COLOUR = "ring-colour.";

    public static final RingCustom NONE = new RingCustom(Optional.empty(), Optional.empty(), Map.of());

    public RingCustom {
        colours = Map.copyOf(colours);
    }
}
