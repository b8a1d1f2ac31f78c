package org.cagewall.scan;

import com.github.eduramiba.webcamcapture.drivers.NativeDriver;
import com.github.eduramiba.webcamcapture.drivers.avfoundation.driver.LibVideoCapture;
import com.github.eduramiba.webcamcapture.drivers.nokhwa.LibNokhwa;
import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** The native driver, made when it is first asked for: whoever never scans with a camera never loads it. Lane of frames. */
final class PluggedIn implements Cameras {

    private static final Path DEVICES = Path.of("/dev");

    private Optional<Cameras> driven = Optional.empty();

    @Override
    public Found find() {
        if (driven.isEmpty()) {
            driven = Optional.of(new DrivenCameras(NativeDriver::new, PluggedIn::isDenied, System::nanoTime));
        }
        return driven.get().find();
    }

    /** Whether the system keeps the program from its cameras. */
    private static boolean isDenied() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.contains("mac")) {
            return LibVideoCapture.INSTANCE.vcavf_has_videocapture_auth() == LibVideoCapture.STATUS_DENIED;
        }
        return LibNokhwa.INSTANCE.cnokhwa_has_videocapture_auth() == LibNokhwa.STATUS_DENIED
                || system.contains("linux") && isKeptFrom(DEVICES);
    }

    /** On Linux a camera is a file, which not everybody may read. */
    static boolean isKeptFrom(Path devices) {
        try (DirectoryStream<Path> cameras = Files.newDirectoryStream(devices, "video*")) {
            for (Path camera : cameras) {
                if (!Files.isReadable(camera)) {
                    return true;
                }
            }
            return false;
        } catch (IOException e) {
            return false;
        }
    }
}
