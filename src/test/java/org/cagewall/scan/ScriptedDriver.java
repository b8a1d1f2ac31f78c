package org.cagewall.scan;

import com.github.eduramiba.webcamcapture.drivers.WebcamDeviceWithId;
import com.github.sarxos.webcam.WebcamDevice;
import com.github.sarxos.webcam.WebcamDriver;
import com.github.sarxos.webcam.WebcamException;
import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;

/** A driver that does what a test says: cameras are plugged in and out, are in use elsewhere, denied, covered, stuck. */
public final class ScriptedDriver implements WebcamDriver {

    private final Map<String, Wired> plugged = new LinkedHashMap<>();
    private final List<String> said = new ArrayList<>();
    private boolean denied;
    private boolean inUse;

    /** Cameras as the program has them, over this driver. */
    public Cameras cameras(LongSupplier nanos) {
        return new DrivenCameras(() -> this, () -> denied, nanos);
    }

    /** Plugs a camera in that looks at this. */
    public ScriptedDriver plugIn(String name, BufferedImage view) {
        plugged.put(name, new Wired(name, view));
        return this;
    }

    public ScriptedDriver unplug(String name) {
        plugged.remove(name).pulled = true;
        return this;
    }

    public void deny() {
        denied = true;
    }

    public void allow() {
        denied = false;
    }

    /** Another program has the cameras. */
    public void useElsewhere() {
        inUse = true;
    }

    public void leaveElsewhere() {
        inUse = false;
    }

    /** Turns a camera to something else. */
    public void show(String name, BufferedImage view) {
        plugged.get(name).view = view;
        plugged.get(name).stuck = false;
    }

    /** The camera repeats what it last saw. */
    public void stick(String name) {
        plugged.get(name).stuck = true;
    }

    /** What was asked of the cameras so far, such as "open Lid". */
    public List<String> said() {
        return said;
    }

    public boolean isOpen(String name) {
        return plugged.get(name).open;
    }

    @Override
    public List<WebcamDevice> getDevices() {
        said.add("find");
        return new ArrayList<>(plugged.values());
    }

    @Override
    public boolean isThreadSafe() {
        return false;
    }

    private final class Wired implements WebcamDeviceWithId {

        private final String name;
        private BufferedImage view;
        private Dimension size = new Dimension(640, 480);
        private boolean open;
        private boolean pulled;
        private boolean stuck;
        private int frame;

        Wired(String name, BufferedImage view) {
            this.name = name;
            this.view = view;
        }

        @Override
        public String getId() {
            return "id of " + name;
        }

        @Override
        public String getName() {
            return name;
        }

        @Override
        public Dimension[] getResolutions() {
            return new Dimension[] {new Dimension(640, 480), new Dimension(1920, 1080), new Dimension(3840, 2160)};
        }

        @Override
        public Dimension getResolution() {
            return size;
        }

        @Override
        public void setResolution(Dimension wanted) {
            size = wanted;
        }

        /** A real camera's pictures are never twice the same: one pixel flickers. */
        @Override
        public BufferedImage getImage() {
            if (!open) {
                throw new WebcamException("not open");
            }
            if (!pulled && !stuck) {
                frame++;
            }
            BufferedImage seen = new BufferedImage(view.getWidth(), view.getHeight(), BufferedImage.TYPE_3BYTE_BGR);
            Graphics2D brush = seen.createGraphics();
            brush.drawImage(view, 0, 0, null);
            brush.dispose();
            seen.setRGB(0, 0, (frame % 20) * 0x010101);
            return seen;
        }

        @Override
        public void open() {
            said.add("open " + name + " at " + size.width);
            open = !denied && !inUse && !pulled;
        }

        @Override
        public void close() {
            said.add("close " + name);
            open = false;
        }

        @Override
        public void dispose() {
            close();
        }

        @Override
        public boolean isOpen() {
            return open;
        }
    }
}
