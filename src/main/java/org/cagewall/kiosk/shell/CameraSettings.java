package org.cagewall.kiosk.shell;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;

/**
 * What this tablet scans cards with, as {@code kiosk.properties} tells it. Immutable; any thread.
 *
 * @param camera the id of the camera that was chosen last; empty before any was
 * @param small whether the small view stays on
 * @param folder pictures that stand in for a camera
 * @param rate pictures a second
 */
public record CameraSettings(String camera, SmallView small, Optional<Path> folder, double rate) {

    static final String CAMERA = "camera";
    static final String SMALL_VIEW = "camera-small";
    private static final String FOLDER = "camera-folder";
    private static final String RATE = "camera-folder-rate";

    private static final double USUAL_RATE = 1;

    /** Whether the small view stays on. */
    public enum SmallView {
        ON,
        OFF
    }

    static CameraSettings of(Properties kept) {
        return new CameraSettings(
                kept.getProperty(CAMERA, ""),
                kept.getProperty(SMALL_VIEW, "").equals("on") ? SmallView.ON : SmallView.OFF,
                folder(kept.getProperty(FOLDER, "")),
                rate(kept.getProperty(RATE, "")));
    }

    private static Optional<Path> folder(String written) {
        try {
            return written.isBlank() ? Optional.empty() : Optional.of(Path.of(written.strip()));
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static double rate(String written) {
        try {
            double rate = Double.parseDouble(written);
            return rate > 0 && rate <= 100 ? rate : USUAL_RATE;
        } catch (NumberFormatException e) {
            return USUAL_RATE;
        }
    }
}
