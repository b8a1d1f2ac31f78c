package org.cagewall.kiosk.kit;

import java.awt.Container;
import java.awt.Point;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.cagewall.kiosk.theme.Sizes;

/**
 * Passes over the second touch of a shaking hand, wherever it lands: on the same button, on its neighbour at once, or on
 * what has slid under the finger meanwhile, such as the next cage's row, which nobody has looked at. Kept on the outermost part; used on the
 * event thread.
 */
final class DoubleTouch {

    private static final String LAST = "kiosk.lastTouch";
    private static final String QUICK = "kiosk.quick";

    /** Longer than the half second of desktops: so slow were the double touches seen in trials (common practice, no source). */
    private static final long BOUNCE_MILLIS = 800;

    /** Within this no hand has moved to another part: two fingers, or a broad one, touched both. Common practice, no source. */
    private static final long AT_ONCE_MILLIS = 120;

    /** What a touch did, where, and when it was lifted. */
    private record Touch(long millis, Point at) {}

    private DoubleTouch() {}

    /** This part may be touched again as fast as one likes: it counts, turns or writes, and records nothing. */
    static void allow(JComponent part) {
        part.putClientProperty(QUICK, Boolean.TRUE);
    }

    /** This touch does something. */
    static void remember(JComponent part, MouseEvent lifted) {
        outermost(part).putClientProperty(LAST, new Touch(lifted.getWhen(), at(part, lifted)));
    }

    static boolean isSecond(JComponent part, MouseEvent pressed) {
        if (Boolean.TRUE.equals(part.getClientProperty(QUICK))
                || !(outermost(part).getClientProperty(LAST) instanceof Touch last)) {
            return false;
        }
        long since = pressed.getWhen() - last.millis();
        boolean atOnce = since < AT_ONCE_MILLIS;
        boolean again = since < BOUNCE_MILLIS && last.at().distance(at(part, pressed)) <= Sizes.target();
        return since >= 0 && (atOnce || again);
    }

    private static Point at(JComponent part, MouseEvent event) {
        return SwingUtilities.convertPoint(part, event.getPoint(), outermost(part));
    }

    private static JComponent outermost(JComponent part) {
        JComponent outer = part;
        for (Container each = part.getParent(); each != null; each = each.getParent()) {
            if (each instanceof JComponent wider) {
                outer = wider;
            }
        }
        return outer;
    }
}
