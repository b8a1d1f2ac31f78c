package org.cagewall.kiosk;

import java.awt.Component;
import java.awt.Container;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLayer;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.shell.EventThread;

/** What a real Tab key passes on its way once round the screen, and what is wrong with it. Called on the test's thread. */
final class FocusRound {

    private static final EventThread EVENTS = new EventThread();
    private static final int NEAR = 4;
    private static final int GLANCES_OF_REST = 60;

    /** After this a hand presses once more: a busy display may swallow a key, and how keys are told apart is tried elsewhere. */
    private static final long PATIENCE_OF_A_HAND_NANOS = 3_000_000_000L;

    private final Live live;
    private final List<JComponent> order = new ArrayList<>();
    private final List<String> unseen = new ArrayList<>();
    private final Set<JComponent> touchable;

    private FocusRound(Live live) {
        this.live = live;
        this.touchable = atRest();
        go();
    }

    /** Presses Tab until it comes to a part for the second time. */
    static FocusRound of(Live live) {
        return new FocusRound(live);
    }

    /** What can be touched, once all that was asked of the record has come. */
    private Set<JComponent> atRest() {
        AtomicReference<Set<JComponent>> last = new AtomicReference<>(Set.of());
        int[] calm = {0};
        live.waitUntil("the screen is at rest", () -> {
            Set<JComponent> now = touchableNow();
            calm[0] = now.equals(last.getAndSet(now)) ? calm[0] + 1 : 0;
            return calm[0] >= GLANCES_OF_REST;
        });
        return last.get();
    }

    private void go() {
        live.key(KeyEvent.VK_TAB).waitUntil("Tab finds a part", () -> owner().isPresent());
        JComponent each = onEvents(() -> owner().orElseThrow());
        while (!order.contains(each)) {
            order.add(each);
            touchable.retainAll(onEvents(this::touchableNow));
            each = next(each);
        }
        List<String> names = live.focusOrder();
        int first = names().indexOf(names.get(0));
        Collections.rotate(order, -Math.max(0, first));
    }

    private JComponent next(JComponent now) {
        Optional<String> hidden = onEvents(() -> hidden(now));
        BufferedImage with = onEvents(() -> around(now));
        live.key(KeyEvent.VK_TAB);
        if (!live.comes(PATIENCE_OF_A_HAND_NANOS, () -> hasLeft(now))) {
            live.key(KeyEvent.VK_TAB).waitUntil("Tab leaves " + now.getName(), () -> hasLeft(now));
        }
        BufferedImage without = onEvents(() -> around(now));
        hidden.ifPresent(unseen::add);
        if (differing(with, without) < now.getWidth() + now.getHeight()) {
            unseen.add(now.getName() + " looks as before");
        }
        return onEvents(() -> owner().orElseThrow());
    }

    private boolean hasLeft(JComponent part) {
        return owner().filter(now -> now != part).isPresent();
    }

    List<String> names() {
        return order.stream().map(Component::getName).toList();
    }

    /** Parts that can be touched and were never reached. */
    List<String> skipped() {
        return touchable.stream()
                .filter(part -> !order.contains(part))
                .map(Component::getName)
                .toList();
    }

    /** Parts that are not in view when they have the keyboard, or look the same with it and without it. */
    List<String> unseen() {
        return List.copyOf(unseen);
    }

    /**
     * Parts that come although another is still to come which is read first: that of the heading before that of the
     * page before that of the bar; and within these the one above in the same column, and the one left in the same row.
     */
    List<String> outOfOrder() {
        return onEvents(() -> {
            List<String> wrong = new ArrayList<>();
            for (int i = 0; i < order.size(); i++) {
                for (int j = i + 1; j < order.size(); j++) {
                    if (isReadBefore(order.get(j), order.get(i))) {
                        wrong.add(order.get(i).getName() + " before "
                                + order.get(j).getName());
                    }
                }
            }
            return wrong;
        });
    }

    private boolean isReadBefore(JComponent one, JComponent other) {
        if (band(one) != band(other)) {
            return band(one) < band(other);
        }
        Rectangle a = place(one, other);
        Rectangle b = place(other, one);
        int across = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
        int along = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
        boolean above = across > NEAR && a.y + a.height <= b.y + NEAR;
        boolean left = along > Math.min(a.height, b.height) / 2 && a.x + a.width <= b.x + NEAR;
        return above || left;
    }

    private static int band(Component part) {
        if ("person".equals(part.getName())) {
            return 0;
        }
        for (Component each = part; each != null; each = each.getParent()) {
            if (each instanceof Heading) {
                return 0;
            }
            if ("nav".equals(each.getName())) {
                return 2;
            }
        }
        return 1;
    }

    /** Where the part is on the stage; one that is scrolled away stands at the edge of its list, seen from outside. */
    private Rectangle place(JComponent part, Component from) {
        Rectangle place = SwingUtilities.convertRectangle(
                part.getParent(), part.getBounds(), live.shell().stage());
        JViewport port = (JViewport) SwingUtilities.getAncestorOfClass(JViewport.class, part);
        if (port == null || SwingUtilities.isDescendingFrom(from, port)) {
            return place;
        }
        Rectangle window = SwingUtilities.convertRectangle(
                port.getParent(), port.getBounds(), live.shell().stage());
        int top = Math.max(window.y, Math.min(place.y, window.y + window.height));
        int bottom = Math.max(window.y, Math.min(place.y + place.height, window.y + window.height));
        return new Rectangle(place.x, top, place.width, bottom - top);
    }

    private Optional<JComponent> owner() {
        Component owner = KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        return Optional.ofNullable(owner)
                .filter(part ->
                        SwingUtilities.isDescendingFrom(part, live.shell().stage()))
                .filter(JComponent.class::isInstance)
                .map(JComponent.class::cast);
    }

    private static Optional<String> hidden(JComponent part) {
        Rectangle seen = part.getVisibleRect();
        boolean whole = seen.width >= part.getWidth() - NEAR && seen.height >= part.getHeight() - NEAR;
        return whole ? Optional.empty() : Optional.of(part.getName() + " is out of view: " + seen);
    }

    /** The part with what is around it, for the edge of a field is its parent's. */
    private static BufferedImage around(JComponent part) {
        Container holder = part.getParent();
        while (holder instanceof JViewport || holder instanceof JScrollPane || holder instanceof JLayer) {
            holder = holder.getParent();
        }
        BufferedImage image = new BufferedImage(holder.getWidth(), holder.getHeight(), BufferedImage.TYPE_INT_RGB);
        holder.printAll(image.getGraphics());
        Rectangle place = SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), holder);
        place.grow(NEAR, NEAR);
        Rectangle inside = place.intersection(new Rectangle(holder.getSize()));
        return image.getSubimage(inside.x, inside.y, inside.width, inside.height);
    }

    private static int differing(BufferedImage one, BufferedImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return 0;
        }
        int count = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                count += one.getRGB(x, y) == other.getRGB(x, y) ? 0 : 1;
            }
        }
        return count;
    }

    private Set<JComponent> touchableNow() {
        Set<JComponent> found = new LinkedHashSet<>();
        collect(live.shell().stage(), found);
        return found;
    }

    private static void collect(Component part, Set<JComponent> found) {
        if (!part.isShowing()) {
            return;
        }
        if (part.isEnabled() && (part instanceof AbstractButton || part instanceof JTextComponent)) {
            found.add((JComponent) part);
        } else if (part instanceof Container container) {
            for (Component child : container.getComponents()) {
                collect(child, found);
            }
        }
    }

    private static <R> R onEvents(Supplier<R> work) {
        AtomicReference<R> result = new AtomicReference<>();
        EVENTS.finish(() -> result.set(work.get()));
        return result.get();
    }
}
