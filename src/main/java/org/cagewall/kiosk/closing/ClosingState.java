package org.cagewall.kiosk.closing;

import java.util.List;
import org.cagewall.kiosk.kit.RowFace;

/**
 * What the end of the day shows. Immutable; any thread.
 *
 * @param left what is still open, each a line that leads back to the list
 * @param reasons whether the reasons for what is left are being asked
 */
public record ClosingState(String title, String subtitle, String word, String text, List<RowFace> left, Step step) {

    public ClosingState {
        left = List.copyOf(left);
    }

    /** How far the day is closed. */
    public enum Step {
        LEFT,
        WHY,
        DONE
    }

    ClosingState at(Step other) {
        return new ClosingState(title, subtitle, word, text, left, other);
    }
}
