package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Words;

/** The dangers as buttons in two columns where they fit, the deadliest first. Used on the event thread. */
public final class AlarmButtons extends Pane {

    private static final long serialVersionUID = 1L;

    public AlarmButtons(Words words, Consumer<Danger> onTouch) {
        super(new Columns());
        inOrder()
                .forEach(danger -> add(TouchButton.of(
                                ButtonKind.ATTENTION,
                                "alarm." + danger.word(),
                                words.say("alarm.short." + danger.word()),
                                () -> onTouch.accept(danger))
                        .type(TextStyle.SECOND)
                        .tall(48)));
    }

    private static Stream<Danger> inOrder() {
        return Stream.of(
                Danger.SMOKE,
                Danger.BREATH,
                Danger.BLEEDING,
                Danger.ILL,
                Danger.DEAD,
                Danger.LOOSE,
                Danger.MISSING,
                Danger.STUCK,
                Danger.HEAT,
                Danger.COLD,
                Danger.WATER,
                Danger.POWER,
                Danger.STRANGER,
                Danger.VERMIN);
    }

    @Override
    public int heightFor(int width) {
        return Columns.height(this, width);
    }

    /** Buttons of one size, two beside one another where their words have room. */
    private static final class Columns implements LayoutManager {

        private static final int MOST = 2;
        private static final int GAP = 6;

        private static int count(Container parent, int width) {
            int gap = Sizes.px(GAP);
            return width + gap >= MOST * (widest(parent) + gap) ? MOST : 1;
        }

        private static int widest(Container parent) {
            return Stream.of(parent.getComponents())
                    .mapToInt(part -> part.getPreferredSize().width)
                    .max()
                    .orElse(0);
        }

        private static int tallest(Container parent) {
            return Stream.of(parent.getComponents())
                    .mapToInt(part -> part.getPreferredSize().height)
                    .max()
                    .orElse(0);
        }

        static int height(Container parent, int width) {
            int columns = count(parent, width);
            int rows = (parent.getComponentCount() + columns - 1) / columns;
            return Math.max(0, rows * (tallest(parent) + Sizes.px(GAP)) - Sizes.px(GAP));
        }

        @Override
        public void layoutContainer(Container parent) {
            int gap = Sizes.px(GAP);
            int columns = count(parent, parent.getWidth());
            int across = (parent.getWidth() - (columns - 1) * gap) / columns;
            int tall = tallest(parent);
            for (int i = 0; i < parent.getComponentCount(); i++) {
                Component part = parent.getComponent(i);
                part.setBounds(i % columns * (across + gap), i / columns * (tall + gap), across, tall);
            }
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            int natural = MOST * (widest(parent) + Sizes.px(GAP)) - Sizes.px(GAP);
            return new Dimension(natural, height(parent, parent.getWidth() > 0 ? parent.getWidth() : natural));
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            return new Dimension(widest(parent), preferredLayoutSize(parent).height);
        }

        @Override
        public void addLayoutComponent(String name, Component part) {
            // Parts are laid out in their order.
        }

        @Override
        public void removeLayoutComponent(Component part) {
            // Parts are laid out in their order.
        }
    }
}
