package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.event.InputEvent;
import java.awt.event.MouseEvent;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JLayer;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextSize;

/**
 * A screen or a part laid out and painted with no window, to be looked at and measured. All work is done on the event
 * thread; may be called from any.
 */
public final class Painted {

    private static final EventThread EVENTS = new EventThread();
    private static final Path PICTURES = Path.of("target", "pictures");

    private final int width;
    private final int height;
    private final Ground part;
    private long moment = 1_000_000_000_000L;

    private Painted(int width, int height, Ground part) {
        this.width = width;
        this.height = height;
        this.part = part;
    }

    /** The part by day, at the normal text size. */
    public static Painted of(int width, int height, Supplier<? extends JComponent> maker) {
        return of(Light.DAY, TextSize.NORMAL, width, height, maker);
    }

    /** A whole screen of the usual tablet: 1280 x 800. */
    public static Painted screen(Supplier<? extends JComponent> maker) {
        return of(1280, 800, maker);
    }

    public static Painted of(Light light, TextSize size, int width, int height, Supplier<? extends JComponent> maker) {
        return onEvents(() -> {
            light.start(size);
            Painted painted = new Painted(width, height, new Ground(maker.get()));
            painted.settle();
            return painted;
        });
    }

    /** Does this on the event thread in that light, at the normal text size. */
    public static void in(Light light, Runnable work) {
        in(light, TextSize.NORMAL, work);
    }

    public static void in(Light light, TextSize size, Runnable work) {
        EVENTS.finish(() -> {
            light.start(size);
            work.run();
        });
    }

    /** Changes something and lays everything out again. */
    public Painted after(Runnable change) {
        EVENTS.finish(() -> {
            change.run();
            settle();
        });
        return this;
    }

    /** Presses the button of this name, as a finger does. */
    public Painted press(String name) {
        AbstractButton button = find(name, AbstractButton.class);
        assertThat(button.isEnabled()).as("%s can be pressed", name).isTrue();
        return after(() -> {
            button.getModel().setArmed(true);
            button.getModel().setPressed(true);
            button.getModel().setPressed(false);
            button.getModel().setArmed(false);
        });
    }

    /** A finger comes down in the middle of the part, moves by this much in steps of 4 px, and lifts. */
    public Painted drag(String name, int dx, int dy) {
        Component target = find(name, Component.class);
        return after(() -> {
            int x = target.getWidth() / 2;
            int y = target.getHeight() / 2;
            finger(target, MouseEvent.MOUSE_PRESSED, x, y);
            int steps = Math.max(1, Math.max(Math.abs(dx), Math.abs(dy)) / 4);
            Point start = SwingUtilities.convertPoint(target, x, y, part);
            for (int step = 1; step <= steps; step++) {
                Point at = SwingUtilities.convertPoint(
                        part, start.x + dx * step / steps, start.y + dy * step / steps, target);
                finger(target, MouseEvent.MOUSE_DRAGGED, at.x, at.y);
            }
            Point end = SwingUtilities.convertPoint(part, start.x + dx, start.y + dy, target);
            finger(target, MouseEvent.MOUSE_RELEASED, end.x, end.y);
            moment += 1_000;
        });
    }

    /** Touches the middle of the part of this name at this moment, in milliseconds. */
    public Painted tap(String name, long millis) {
        moment = millis;
        return drag(name, 0, 0);
    }

    private void finger(Component target, int what, int x, int y) {
        int held = what == MouseEvent.MOUSE_RELEASED ? 0 : InputEvent.BUTTON1_DOWN_MASK;
        target.dispatchEvent(new MouseEvent(target, what, moment, held, x, y, 1, false, MouseEvent.BUTTON1));
    }

    /** The visible part of this name. */
    public <C extends Component> C find(String name, Class<C> kind) {
        return maybe(name)
                .map(kind::cast)
                .orElseThrow(() -> new AssertionError("nothing is called " + name + "; there are " + names()));
    }

    public Optional<Component> maybe(String name) {
        return all().stream().filter(each -> name.equals(each.getName())).findFirst();
    }

    /** What can be read, part by part. */
    public List<String> texts() {
        return all().stream()
                .map(each -> each instanceof JLabel label
                        ? label.getText()
                        : each instanceof AbstractButton button ? button.getText() : "")
                .filter(text -> text != null && !text.isEmpty())
                .toList();
    }

    public List<String> names() {
        return all().stream()
                .map(Component::getName)
                .filter(name -> name != null)
                .toList();
    }

    /** Every visible part, in the order of the screen. */
    public List<Component> all() {
        return onEvents(() -> {
            List<Component> found = new ArrayList<>();
            collect(part, found);
            return found;
        });
    }

    /** All that can be touched or written into. */
    public List<Component> interactive() {
        return all().stream().filter(Painted::isInteractive).toList();
    }

    public BufferedImage picture() {
        return onEvents(() -> {
            BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
            Graphics2D brush = picture.createGraphics();
            brush.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            part.printAll(brush);
            brush.dispose();
            return picture;
        });
    }

    /** Writes target/pictures/NAME.png. */
    public Painted png(String name) {
        write(picture(), PICTURES.resolve(name + ".png"));
        return this;
    }

    static void write(BufferedImage picture, Path file) {
        try {
            Files.createDirectories(file.getParent());
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All that is asked of every screen. */
    public Painted assertFit() {
        assertTextIsWhole();
        assertTargetsAreLargeEnough();
        assertEverythingHasAName();
        assertNothingOverlaps();
        return this;
    }

    public Painted assertTextIsWhole() {
        each(component -> {
            if (component instanceof Legible legible && component.getWidth() > 0) {
                assertThat(legible.isWhole())
                        .as("the whole text of %s", said(component))
                        .isTrue();
            } else if (component instanceof JLabel label && !label.getText().isEmpty()) {
                assertThat(label.getWidth())
                        .as("the width of %s", said(component))
                        .isGreaterThanOrEqualTo(label.getPreferredSize().width);
            }
        });
        return this;
    }

    /** At least 48 px each way: WCAG 2.2 asks for 44 (2.5.5) or 24 (2.5.8) CSS pixels. */
    public Painted assertTargetsAreLargeEnough() {
        each(component -> {
            if (isInteractive(component)) {
                assertThat(component.getWidth())
                        .as("the width of %s", said(component))
                        .isGreaterThanOrEqualTo(Sizes.target());
                assertThat(component.getHeight())
                        .as("the height of %s", said(component))
                        .isGreaterThanOrEqualTo(Sizes.target());
            }
        });
        return this;
    }

    /** Each interactive part has a name for those who cannot see it (WCAG 2.2, 4.1.2) and one for tests. */
    public Painted assertEverythingHasAName() {
        each(component -> {
            if (isInteractive(component)) {
                assertThat(component.getName())
                        .as("the test name of %s", said(component))
                        .isNotBlank();
                assertThat(component.getAccessibleContext().getAccessibleName())
                        .as("the accessible name of %s", component.getName())
                        .isNotBlank();
                assertThat(component.isFocusable())
                        .as("%s takes the keyboard", said(component))
                        .isTrue();
            }
        });
        return this;
    }

    /** Parts beside one another do not lie over one another, and none sticks out of what holds it. */
    public Painted assertNothingOverlaps() {
        each(component -> {
            if (component instanceof Container container && container.isVisible()) {
                assertChildrenFit(container);
            }
        });
        return this;
    }

    private static void assertChildrenFit(Container container) {
        if (container instanceof JLayeredPane || container instanceof JViewport || container instanceof JLayer) {
            return;
        }
        List<Component> children = new ArrayList<>();
        for (Component child : container.getComponents()) {
            if (child.isVisible() && child.getWidth() > 0 && child.getHeight() > 0) {
                children.add(child);
            }
        }
        Rectangle room = new Rectangle(container.getSize());
        for (int i = 0; i < children.size(); i++) {
            Rectangle here = children.get(i).getBounds();
            assertThat(room.contains(here))
                    .as("%s at %s stays within %s", said(children.get(i)), here, said(container))
                    .isTrue();
            for (Component other : children.subList(i + 1, children.size())) {
                assertThat(here.intersects(other.getBounds()))
                        .as("%s lies over %s", said(children.get(i)), said(other))
                        .isFalse();
            }
        }
    }

    private void each(Consumer<Component> check) {
        List<Component> all = all();
        EVENTS.finish(() -> all.forEach(check));
    }

    /** Lays out as a window does: only what is invalid, until nothing asks for another size. */
    private void settle() {
        part.setSize(width, height);
        if (!part.isDisplayable()) {
            part.addNotify();
        }
        for (int pass = 0; pass < 8 && !part.isValid(); pass++) {
            part.validate();
        }
        assertThat(part.isValid()).as("the layout comes to rest").isTrue();
    }

    /** Holds the part as a window would, but says that nothing of it is on a screen. */
    private static final class Ground extends JPanel {

        private static final long serialVersionUID = 1L;

        Ground(JComponent part) {
            super(new BorderLayout());
            add(part);
        }

        @Override
        public boolean isShowing() {
            return false;
        }
    }

    private static void collect(Component component, List<Component> found) {
        if (!component.isVisible()) {
            return;
        }
        found.add(component);
        if (component instanceof Container container) {
            for (Component child : container.getComponents()) {
                collect(child, found);
            }
        }
    }

    private static boolean isInteractive(Component component) {
        return component instanceof AbstractButton || component instanceof JTextComponent;
    }

    private static String said(Component component) {
        String text = component instanceof AbstractButton button
                ? button.getText()
                : component instanceof JLabel label ? label.getText() : "";
        return component.getClass().getSimpleName() + " " + component.getName() + " \"" + text + "\" "
                + component.getBounds();
    }

    private static <R> R onEvents(Supplier<R> work) {
        AtomicReference<R> result = new AtomicReference<>();
        EVENTS.finish(() -> result.set(work.get()));
        return result.get();
    }
}
