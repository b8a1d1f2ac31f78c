package org.cagewall.kiosk.scan;

import java.util.List;

/**
 * What is said beside the picture of the camera. Immutable; any thread.
 *
 * @param line what the camera does, or what is wrong and what to do
 * @param picture whether the last picture still holds
 * @param mayLook whether a touch makes it look again
 * @param cameras what can be looked through
 * @param chosen the id of the one in use; empty when there is none
 * @param small whether the small view stays on
 */
record ScanState(String line, boolean picture, boolean mayLook, List<Camera> cameras, String chosen, boolean small) {

    ScanState {
        cameras = List.copyOf(cameras);
    }

    /** A camera to choose. */
    record Camera(String id, String name) {}
}
