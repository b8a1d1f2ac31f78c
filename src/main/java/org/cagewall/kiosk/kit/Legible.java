package org.cagewall.kiosk.kit;

/** A part that can say whether its words are all there, so that tests find every text cut short. Event thread. */
public interface Legible {

    /** Whether the whole text shows at the size that the part has now. */
    boolean isWhole();
}
