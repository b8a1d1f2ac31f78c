package org.cagewall.kiosk.shell;

import java.awt.AWTEvent;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.GraphicsDevice;
import java.awt.GraphicsEnvironment;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Toolkit;
import java.awt.datatransfer.Transferable;
import java.awt.event.AWTEventListener;
import java.awt.event.MouseEvent;
import java.awt.event.WindowAdapter;
import java.awt.event.WindowEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JFrame;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import javax.swing.WindowConstants;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.text.Words;

/**
 * The one window: full screen without decoration, or a window on a desktop. Everything else is a layer inside it. Made
 * and used on the event thread, after the theme has started.
 */
public final class Shell {

    private final JFrame frame;
    private final Layers stage;
    private final WindowMode mode;
    private final Keys keys;
    private final DroppedPictures pictures = new DroppedPictures();
    private final AWTEventListener touches = this::touched;
    private final Timer alone = new Timer(0, event -> quiet());

    public Shell(Words words, WindowMode mode) {
        this.mode = mode;
        alone.setRepeats(false);
        stage = new Layers(words);
        frame = new JFrame(words.say("shell.name"));
        frame.setName("kiosk");
        frame.setUndecorated(mode instanceof WindowMode.FullScreen);
        frame.setDefaultCloseOperation(WindowConstants.DO_NOTHING_ON_CLOSE);
        frame.setContentPane(stage);
        frame.getRootPane().setTransferHandler(pictures);
        FocusRing.hide(frame.getRootPane());
        frame.addWindowListener(new WindowAdapter() {
            @Override
            public void windowClosing(WindowEvent event) {
                stage.askToLeave();
            }
        });
        keys = new Keys(System::nanoTime, new Keys.Commands() {
            @Override
            public void escape() {
                stage.escape();
            }

            @Override
            public boolean paste() {
                return pasted();
            }

            @Override
            public boolean movesByKey() {
                boolean begins = !isByKeys() && !(focusToBe() instanceof JTextComponent);
                FocusRing.show(frame.getRootPane());
                if (begins || !stage.keepsFocus(focusToBe())) {
                    stage.takeFocus();
                    return true;
                }
                return false;
            }

            @Override
            public Component focusToBe() {
                return frame.getMostRecentFocusOwner();
            }

            @Override
            public boolean isByKeys() {
                return FocusRing.isShown(frame.getRootPane());
            }

            @Override
            public void wake(long nanos) {
                alone.setInitialDelay(Math.toIntExact(nanos / 1_000_000) + 1);
                alone.restart();
            }
        });
    }

    /** Makes the window without showing it, and paints once, unseen, so that all that takes is loaded. */
    public void rehearse() {
        frame.pack();
        Rectangle bounds = mode.bounds(displays());
        stage.open(Screens.none(), new Destination.Wall());
        stage.setSize(bounds.getSize());
        stage.validate();
        BufferedImage unseen = new BufferedImage(bounds.width, bounds.height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = unseen.createGraphics();
        stage.printAll(brush);
        brush.dispose();
    }

    public Layers stage() {
        return stage;
    }

    /** Shows the window with this screen first. */
    public void open(Screens screens, Destination first) {
        stage.open(screens, first);
        KeyboardFocusManager.getCurrentKeyboardFocusManager().addKeyEventDispatcher(keys);
        Toolkit.getDefaultToolkit().addAWTEventListener(touches, AWTEvent.MOUSE_EVENT_MASK);
        Rectangle bounds = mode.bounds(displays());
        frame.setBounds(bounds);
        frame.setVisible(true);
        if (mode instanceof WindowMode.FullScreen) {
            frame.setBounds(bounds);
        }
    }

    /** Brings the window to the front: someone started the kiosk a second time. */
    public void forward() {
        frame.setState(java.awt.Frame.NORMAL);
        frame.toFront();
        frame.requestFocus();
    }

    /** Fills the right screen again, if it has been turned or unplugged: nobody is told of that, so it is asked for. */
    public void refit() {
        Rectangle bounds = mode.bounds(displays());
        if (mode instanceof WindowMode.FullScreen && !bounds.equals(frame.getBounds())) {
            frame.setBounds(bounds);
        }
    }

    /** Closes the window and lets go of keys and touches. */
    public void close() {
        KeyboardFocusManager.getCurrentKeyboardFocusManager().removeKeyEventDispatcher(keys);
        Toolkit.getDefaultToolkit().removeAWTEventListener(touches);
        alone.stop();
        frame.dispose();
    }

    /** Whether its window is still there. */
    public boolean isOpen() {
        return frame.isDisplayable();
    }

    /** What is done when someone wants to leave and says so again. */
    public void onLeave(Runnable then) {
        stage.onLeave(then);
    }

    /** Lets this one hear what is typed before any field does. */
    public void listen(KeySink sink) {
        keys.add(sink);
    }

    /** Lets this one have pictures that are pasted or dropped. */
    public void listen(PictureSink sink) {
        pictures.add(sink);
    }

    private void quiet() {
        keys.quiet();
    }

    private void touched(AWTEvent event) {
        if (event.getID() == MouseEvent.MOUSE_PRESSED && event.getSource() instanceof Component where) {
            if (SwingUtilities.isDescendingFrom(where, stage)) {
                FocusRing.hide(frame.getRootPane());
                if (!(where instanceof JTextComponent)) {
                    stage.requestFocusInWindow();
                }
                stage.touched(where);
            }
        }
    }

    /** Hands on the picture that is on the clipboard; says whether there is one. */
    public boolean paste() {
        return pasted();
    }

    private boolean pasted() {
        try {
            Transferable carried =
                    Toolkit.getDefaultToolkit().getSystemClipboard().getContents(frame);
            return carried != null && pictures.take(carried);
        } catch (IllegalStateException busy) {
            return false;
        }
    }

    private static List<WindowMode.Display> displays() {
        GraphicsEnvironment environment = GraphicsEnvironment.getLocalGraphicsEnvironment();
        List<WindowMode.Display> displays = new ArrayList<>();
        displays.add(display(environment.getDefaultScreenDevice()));
        for (GraphicsDevice device : environment.getScreenDevices()) {
            if (!device.equals(environment.getDefaultScreenDevice())) {
                displays.add(display(device));
            }
        }
        return displays;
    }

    private static WindowMode.Display display(GraphicsDevice device) {
        return new WindowMode.Display(
                device.getIDstring(), device.getDefaultConfiguration().getBounds());
    }
}
