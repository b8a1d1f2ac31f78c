package org.cagewall.kiosk;

import java.awt.AWTException;
import java.awt.Component;
import java.awt.Container;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.Window;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.Shell;
import org.cagewall.kiosk.shell.WindowMode;
import org.cagewall.text.Words;

/**
 * Works a real window as a person would: presses what can be seen, waits for what follows, and keeps a picture when it
 * does not come. Called on the test's thread.
 */
public final class Live implements AutoCloseable {

    private static final EventThread EVENTS = new EventThread();
    private static final long PATIENCE_NANOS = 15_000_000_000L;
    private static final long HAND_NANOS = 100_000_000L;
    private static final long GLANCE_NANOS = 5_000_000L;
    private static final Path PICTURES = Path.of("target", "pictures");

    private final Shell shell;

    private Live(Shell shell) {
        this.shell = shell;
    }

    /** Makes and opens the shell on the event thread, and waits until its window is there. */
    public static Live open(Supplier<Shell> opened) {
        Live live = new Live(onEvents(opened));
        live.waitUntil("the window is on the screen", () -> live.window().isShowing());
        return live;
    }

    /** Opens the whole kiosk on this desk, in a window of the tablet's size. */
    public static Live kiosk(Desk desk) {
        return kiosk(desk, made -> {});
    }

    /** The same, and hands the kiosk to whoever would look behind the window. */
    static Live kiosk(Desk desk, Consumer<Kiosk> made) {
        return open(() -> {
            Kiosk kiosk =
                    Kiosk.open(desk, WindowMode.Window.parse("1280x800").orElseThrow(), Words.english(), () -> {});
            made.accept(kiosk);
            return kiosk.shell().orElseThrow();
        });
    }

    public Shell shell() {
        return shell;
    }

    /** Presses the button of this name once it can be seen, is not covered, and is on. */
    public Live press(String name) {
        return waitUntil(name + " can be pressed", () -> {
            Optional<Component> part = maybe(name).filter(this::canBePressed);
            part.ifPresent(Live::press);
            return part.isPresent();
        });
    }

    /** Whether the button of this name can be pressed just now. On the event thread. */
    public boolean canPress(String name) {
        return maybe(name).filter(this::canBePressed).isPresent();
    }

    private static void press(Component part) {
        AbstractButton button = (AbstractButton) part;
        button.getModel().setArmed(true);
        button.getModel().setPressed(true);
        button.getModel().setPressed(false);
        button.getModel().setArmed(false);
    }

    /** Writes into the field of this name, in place of what is there. */
    public Live write(String name, String text) {
        waitUntil(name + " is there", () -> maybe(name).isPresent());
        EVENTS.finish(() -> ((JTextComponent) maybe(name).orElseThrow()).setText(text));
        return this;
    }

    /** Waits until a part of this name can be seen. */
    public Live see(String name) {
        return waitUntil(name + " can be seen", () -> maybe(name).isPresent());
    }

    /** Waits until these words stand anywhere on the screen. */
    public Live read(String words) {
        return waitUntil(
                "\"" + words + "\" can be read", () -> texts().stream().anyMatch(text -> text.contains(words)));
    }

    public Live gone(String name) {
        return waitUntil(name + " is gone", () -> maybe(name).isEmpty());
    }

    /** Waits, at most 15 s, until this holds; it is asked on the event thread. */
    public Live waitUntil(String what, BooleanSupplier holds) {
        if (!comes(PATIENCE_NANOS, holds)) {
            picture("failure-" + what.replaceAll("[^A-Za-z0-9]+", "-"));
            throw new AssertionError("waited in vain until " + what + "; there are " + names() + " saying " + texts());
        }
        return this;
    }

    /** Whether this comes to hold within that while; it is asked on the event thread. */
    boolean comes(long nanos, BooleanSupplier holds) {
        long end = System.nanoTime() + nanos;
        while (!onEvents(holds::getAsBoolean)) {
            if (System.nanoTime() - end > 0) {
                return false;
            }
            pause(GLANCE_NANOS);
        }
        return true;
    }

    public <C extends Component> C find(String name, Class<C> kind) {
        see(name);
        return onEvents(() -> kind.cast(maybe(name).orElseThrow()));
    }

    /** Where the keyboard goes with each Tab, once round. */
    public List<String> focusOrder() {
        return onEvents(() -> {
            List<String> order = new ArrayList<>();
            Container root = shell.stage().getFocusCycleRootAncestor();
            Component first = root.getFocusTraversalPolicy().getFirstComponent(root);
            Component each = first;
            do {
                order.add(String.valueOf(each.getName()));
                each = root.getFocusTraversalPolicy().getComponentAfter(root, each);
            } while (each != null && each != first);
            return order;
        });
    }

    public List<String> names() {
        return onEvents(() -> all().stream()
                .map(Component::getName)
                .filter(name -> name != null)
                .toList());
    }

    /** All words on the screen, in its order. */
    public List<String> texts() {
        return onEvents(() -> {
            List<String> texts = new ArrayList<>();
            for (Component each : all()) {
                if (each instanceof JLabel label) {
                    texts.add(label.getText());
                } else if (each instanceof AbstractButton button) {
                    texts.add(button.getAccessibleContext().getAccessibleName());
                } else if (each instanceof JTextComponent field) {
                    texts.add(field.getText());
                }
            }
            return texts;
        });
    }

    /** Writes target/pictures/NAME.png. */
    public Live picture(String name) {
        BufferedImage picture = onEvents(() -> {
            JComponent stage = shell.stage();
            BufferedImage image = new BufferedImage(
                    Math.max(1, stage.getWidth()), Math.max(1, stage.getHeight()), BufferedImage.TYPE_INT_RGB);
            stage.printAll(image.getGraphics());
            return image;
        });
        Painted.write(picture, PICTURES.resolve(name + ".png"));
        return this;
    }

    /** Types this on a real keyboard, as a fast scanner does: letters A to Z, figures, blanks, tabs, '\n' for Enter. */
    public Live type(String text) {
        return type(text, 0);
    }

    /** The same with this pause between two keys. */
    public Live type(String text, long pauseNanos) {
        waitUntil("the window has the keyboard", () -> window().isFocused());
        Robot robot = robot();
        robot.setAutoWaitForIdle(false);
        for (char c : text.toCharArray()) {
            int key = c == '\n' ? KeyEvent.VK_ENTER : KeyEvent.getExtendedKeyCodeForChar(c);
            if (Character.isUpperCase(c)) {
                robot.keyPress(KeyEvent.VK_SHIFT);
            }
            robot.keyPress(key);
            robot.keyRelease(key);
            if (Character.isUpperCase(c)) {
                robot.keyRelease(KeyEvent.VK_SHIFT);
            }
            pause(pauseNanos);
        }
        robot.waitForIdle();
        return this;
    }

    /** A hand presses a real key, and the next one no sooner than a hand does. */
    public Live key(int code) {
        waitUntil("the window has the keyboard", () -> window().isFocused());
        Robot robot = robot();
        robot.setAutoWaitForIdle(false);
        robot.keyPress(code);
        robot.keyRelease(code);
        pause(code == KeyEvent.VK_TAB ? HAND_NANOS : 2 * HAND_NANOS);
        robot.waitForIdle();
        return this;
    }

    /** A real finger comes down in the middle of the part, moves by this much, and lifts. */
    public Live drag(String name, int dx, int dy) {
        pause(2 * HAND_NANOS);
        Point from = middle(name);
        Robot robot = robot();
        robot.mouseMove(from.x, from.y);
        robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
        int steps = Math.max(1, Math.max(Math.abs(dx), Math.abs(dy)) / 6);
        for (int step = 1; step <= steps; step++) {
            robot.mouseMove(from.x + dx * step / steps, from.y + dy * step / steps);
        }
        robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
        robot.waitForIdle();
        return this;
    }

    /** A real finger touches the middle of the part. */
    public Live tap(String name) {
        return drag(name, 0, 0);
    }

    @Override
    public void close() {
        EVENTS.finish(shell::close);
    }

    private Window window() {
        return SwingUtilities.getWindowAncestor(shell.stage());
    }

    private Optional<Component> maybe(String name) {
        return all().stream().filter(each -> name.equals(each.getName())).findFirst();
    }

    private List<Component> all() {
        List<Component> found = new ArrayList<>();
        collect(shell.stage(), found);
        return found;
    }

    private static void collect(Component component, List<Component> found) {
        if (component.isShowing()) {
            found.add(component);
            if (component instanceof Container container) {
                for (Component child : container.getComponents()) {
                    collect(child, found);
                }
            }
        }
    }

    private boolean canBePressed(Component part) {
        if (!part.isEnabled() || part.getWidth() == 0) {
            return false;
        }
        Rectangle visible = ((JComponent) part).getVisibleRect();
        if (visible.isEmpty()) {
            ((JComponent) part).scrollRectToVisible(new Rectangle(part.getSize()));
            return false;
        }
        Point middle = SwingUtilities.convertPoint(
                part, visible.x + visible.width / 2, visible.y + visible.height / 2, shell.stage());
        Component top = SwingUtilities.getDeepestComponentAt(shell.stage(), middle.x, middle.y);
        return top != null && SwingUtilities.isDescendingFrom(top, part);
    }

    private Point middle(String name) {
        waitUntil(
                name + " can be touched",
                () -> maybe(name).filter(this::canBePressed).isPresent());
        return onEvents(() -> {
            Component part = maybe(name).orElseThrow();
            Point at = part.getLocationOnScreen();
            at.translate(part.getWidth() / 2, part.getHeight() / 2);
            return at;
        });
    }

    /** So long at least: a park alone may end at once, where another wait has left its permit behind. */
    private static void pause(long nanos) {
        long end = System.nanoTime() + nanos;
        for (long left = nanos; left > 0; left = end - System.nanoTime()) {
            LockSupport.parkNanos(left);
        }
    }

    private static Robot robot() {
        try {
            Robot robot = new Robot();
            robot.setAutoDelay(2);
            robot.setAutoWaitForIdle(true);
            return robot;
        } catch (AWTException e) {
            throw new AssertionError("this display takes no keys and touches", e);
        }
    }

    private static <R> R onEvents(Supplier<R> work) {
        AtomicReference<R> result = new AtomicReference<>();
        EVENTS.finish(() -> result.set(work.get()));
        return result.get();
    }
}
