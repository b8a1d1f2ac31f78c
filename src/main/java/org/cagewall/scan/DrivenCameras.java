package org.cagewall.scan;

import com.github.eduramiba.webcamcapture.drivers.WebcamDeviceWithId;
import com.github.sarxos.webcam.WebcamDevice;
import com.github.sarxos.webcam.WebcamDriver;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;
import java.util.function.Supplier;
import org.cagewall.text.Message;

/**
 * Cameras by a driver of webcam-capture. Its devices are used as they are: the library's own facade would bring threads
 * that look for cameras and locks on files, which one window does not need. Lane of frames.
 */
final class DrivenCameras implements Cameras {

    private final Supplier<WebcamDriver> maker;
    private final BooleanSupplier denied;
    private final LongSupplier nanos;
    private Optional<WebcamDriver> driver = Optional.empty();

    /**
     * @param denied whether the system keeps the program from cameras; asked only when there is none or one does not open
     * @param nanos the machine's running time
     */
    DrivenCameras(Supplier<WebcamDriver> maker, BooleanSupplier denied, LongSupplier nanos) {
        this.maker = maker;
        this.denied = denied;
        this.nanos = nanos;
    }

    @Override
    public Found find() {
        try {
            List<One> found = devices();
            return new Found(found, found.isEmpty() ? Optional.of(whyNone()) : Optional.empty());
        } catch (LinkageError e) {
            return nothing("no-driver");
        } catch (RuntimeException e) {
            return nothing("none");
        }
    }

    private static Found nothing(String why) {
        return new Found(List.of(), Optional.of(sentence(why)));
    }

    private Message whyNone() {
        return sentence(denied.getAsBoolean() ? "denied" : "none");
    }

    private List<One> devices() {
        if (driver.isEmpty()) {
            driver = Optional.of(maker.get());
        }
        List<One> found = new ArrayList<>();
        for (WebcamDevice device : driver.get().getDevices()) {
            found.add(new Driven(device, name(device, found)));
        }
        return found;
    }

    /** Two of a kind are told apart by a number. */
    private static Message name(WebcamDevice device, List<One> before) {
        Message name = Message.of("scan.camera.name", device.getName().strip());
        return before.stream().map(One::name).noneMatch(name::equals)
                ? name
                : Message.of("scan.camera.name-again", device.getName().strip(), before.size() + 1);
    }

    private static String idOf(WebcamDevice device) {
        return device instanceof WebcamDeviceWithId named ? named.getId() : device.getName();
    }

    private boolean isThere(String id) {
        try {
            return devices().stream().anyMatch(each -> each.id().equals(id));
        } catch (LinkageError | RuntimeException e) {
            return false;
        }
    }

    static Message sentence(String what) {
        return Message.of("scan.camera." + what);
    }

    private final class Driven implements One {

        private final WebcamDevice device;
        private final Message name;

        Driven(WebcamDevice device, Message name) {
            this.device = device;
            this.name = name;
        }

        @Override
        public String id() {
            return idOf(device);
        }

        @Override
        public Message name() {
            return name;
        }

        @Override
        public FrameSource open() {
            return new DrivenSource(device, denied, () -> isThere(id()), nanos);
        }
    }
}
