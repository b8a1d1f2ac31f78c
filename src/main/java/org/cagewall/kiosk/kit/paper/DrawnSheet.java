package org.cagewall.kiosk.kit.paper;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.FingerUI;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.kit.Tall;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/**
 * A sheet of paper as it will come out of the printer, as large as its place allows; its places may be buttons.
 * Used on the event thread.
 */
public final class DrawnSheet extends JPanel implements Tall {

    private static final long serialVersionUID = 1L;

    private static final int USUAL_HEIGHT = 420;

    private final transient IntConsumer onPress;
    private transient Optional<SheetPlan> plan = Optional.empty();
    private transient Optional<BufferedImage> picture = Optional.empty();

    /** Tells which place was pressed, counted from 0 in the order of the plan. */
    public DrawnSheet(String name, IntConsumer onPress) {
        super(null);
        this.onPress = onPress;
        setName(name);
        setOpaque(false);
    }

    public void show(SheetPlan shown) {
        List<SheetPlan.Place> places = shown.places();
        if (plan.map(SheetPlan::places).map(List::size).orElse(-1) != places.size()) {
            removeAll();
            for (int index = 0; index < places.size(); index++) {
                int pressed = index;
                add(new PlacePart(() -> onPress.accept(pressed)));
            }
        }
        for (int index = 0; index < places.size(); index++) {
            ((PlacePart) getComponent(index))
                    .show(places.get(index), shown.picture().isPresent());
            getComponent(index).setEnabled(shown.touched());
        }
        if (!plan.flatMap(SheetPlan::picture).equals(shown.picture())) {
            picture = shown.picture().map(DrawnSheet::image);
        }
        plan = Optional.of(shown);
        revalidate();
        repaint();
    }

    private static BufferedImage image(SheetPlan.Picture from) {
        BufferedImage image = new BufferedImage(from.width(), from.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, from.width(), from.height(), from.pixels(), 0, from.width());
        return image;
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet()
                ? super.getPreferredSize()
                : new Dimension(Sizes.px(USUAL_HEIGHT), heightFor(Sizes.px(USUAL_HEIGHT)));
    }

    /** High enough for every place to be touched, and for the whole to be looked at. */
    @Override
    public int heightFor(int width) {
        return plan.map(shown -> {
                    double least = shown.places().stream()
                            .mapToDouble(place -> Math.min(place.width(), place.height()))
                            .min()
                            .orElse(shown.height());
                    double scale = Math.max(Sizes.target() / least, Sizes.px(USUAL_HEIGHT) / shown.height());
                    return (int) Math.ceil(shown.height() * Math.min(scale, (width - 2) / shown.width())) + 4;
                })
                .orElse(Sizes.target());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.target(), Sizes.target());
    }

    @Override
    public void doLayout() {
        plan.ifPresent(shown -> {
            Rectangle paper = paper(shown);
            double scale = paper.width / shown.width();
            for (int index = 0; index < shown.places().size(); index++) {
                SheetPlan.Place place = shown.places().get(index);
                int left = paper.x + (int) Math.round(place.left() * scale);
                int top = paper.y + (int) Math.round(place.top() * scale);
                int right = paper.x + (int) Math.round((place.left() + place.width()) * scale);
                int bottom = paper.y + (int) Math.round((place.top() + place.height()) * scale);
                getComponent(index).setBounds(left, top, right - left, bottom - top);
            }
        });
    }

    private Rectangle paper(SheetPlan shown) {
        double scale = Math.min((getWidth() - 2) / shown.width(), (getHeight() - 2) / shown.height());
        int width = Math.max(1, (int) Math.round(shown.width() * scale));
        int height = Math.max(1, (int) Math.round(shown.height() * scale));
        return new Rectangle((getWidth() - width) / 2, (getHeight() - height) / 2, width, height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        plan.ifPresent(shown -> {
            Graphics2D brush = Brush.on(graphics);
            Rectangle paper = paper(shown);
            brush.setColor(Tone.SYMBOL_GROUND.color());
            brush.fill(paper);
            brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
            picture.ifPresent(image -> brush.drawImage(image, paper.x, paper.y, paper.width, paper.height, null));
            brush.setColor(Tone.LINE.color());
            brush.setStroke(new BasicStroke(Sizes.px(1.5f)));
            brush.draw(paper);
            brush.dispose();
        });
    }

    /** One place of the sheet. */
    private static final class PlacePart extends JButton implements Legible {

        private static final long serialVersionUID = 1L;

        private transient SheetPlan.Place place = new SheetPlan.Place("", 0, 0, 0, 0, "", "", SheetPlan.Look.FREE);
        private boolean pictured;

        PlacePart(Runnable onPress) {
            addActionListener(event -> onPress.run());
        }

        @Override
        public void updateUI() {
            setUI(new FingerUI());
        }

        void show(SheetPlan.Place shown, boolean onPicture) {
            place = shown;
            pictured = onPicture;
            setName(shown.name());
            setSelected(shown.look() == SheetPlan.Look.TAKEN);
            getAccessibleContext().setAccessibleName(shown.said());
        }

        @Override
        public boolean isWhole() {
            return isShownByPicture() || words().whole();
        }

        private boolean isShownByPicture() {
            return pictured && place.look() == SheetPlan.Look.TAKEN;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D brush = Brush.on(graphics);
            Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
            float radius = Sizes.px(4f);
            if (getModel().isPressed() && getModel().isArmed()) {
                Brush.fill(brush, Tone.TILE_PRESSED_SOFT.color(), box, radius);
            } else if (place.look() == SheetPlan.Look.USED) {
                Brush.fill(brush, Tone.EMPTY.color(), box, radius);
            }
            boolean taken = place.look() == SheetPlan.Look.TAKEN;
            Brush.outline(
                    brush, (taken ? Tone.LIKELY_EDGE : Tone.LINE).color(), Sizes.px(taken ? 2f : 1.5f), box, radius);
            if (!isShownByPicture()) {
                Flow words = words();
                brush.setColor((place.look() == SheetPlan.Look.USED ? Tone.SOFT : Tone.SYMBOL).color());
                words.paintCentred(
                        brush, Sizes.px(4), (getHeight() - words.height()) / 2f, getWidth() - 2 * Sizes.px(4));
            }
            FocusRing.paint(brush, this, Tone.SYMBOL.color(), box, radius);
            brush.dispose();
        }

        private Flow words() {
            return Flow.fitting(
                    place.title(),
                    List.of(
                            TextStyle.LEAD.font(),
                            TextStyle.BUTTON.font(),
                            TextStyle.TAG.font(),
                            TextStyle.MARK.font()),
                    Math.max(1, getWidth() - 2 * Sizes.px(4)),
                    1);
        }
    }
}
