package org.cagewall.kiosk.kit.paper;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.swing.JPanel;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.scan.Luma;

/** What a camera sees, in grey, with a frame to aim by; without a picture an empty ground. Used on the event thread. */
public final class LiveView extends JPanel {

    private static final long serialVersionUID = 1L;

    /** The frame's side as a share of the lower side of the picture. */
    private static final float AIM = 0.62f;

    private static final float CORNER = 0.22f;

    private transient Optional<BufferedImage> picture = Optional.empty();

    public LiveView(String name) {
        setName(name);
        setOpaque(false);
    }

    /** What is shown, for those who cannot see it. */
    public void say(String said) {
        getAccessibleContext().setAccessibleName(said);
    }

    public void show(Luma seen) {
        int width = seen.width();
        int height = seen.height();
        BufferedImage next = picture.filter(old -> old.getWidth() == width && old.getHeight() == height)
                .orElseGet(() -> new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB));
        int[] row = new int[width];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                row[x] = seen.at(x, y) * 0x010101;
            }
            next.setRGB(0, y, width, 1, row, 0, width);
        }
        picture = Optional.of(next);
        repaint();
    }

    /** Shows no picture. */
    public void clear() {
        picture = Optional.empty();
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : new Dimension(Sizes.px(640), Sizes.px(480));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        Brush.fill(brush, Tone.EMPTY.color(), box, Sizes.radius());
        brush.clip(box.rounded(Sizes.radius()));
        picture.ifPresentOrElse(image -> paint(brush, image), () -> stroke(brush, Tone.LINE, 4f));
        brush.dispose();
    }

    private void paint(Graphics2D brush, BufferedImage image) {
        double scale = Math.max((double) getWidth() / image.getWidth(), (double) getHeight() / image.getHeight());
        int width = (int) Math.round(image.getWidth() * scale);
        int height = (int) Math.round(image.getHeight() * scale);
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.drawImage(image, (getWidth() - width) / 2, (getHeight() - height) / 2, width, height, null);
        stroke(brush, Tone.SYMBOL, 7f);
        stroke(brush, Tone.SYMBOL_GROUND, 4f);
    }

    private void stroke(Graphics2D brush, Tone tone, float width) {
        brush.setColor(tone.color());
        brush.setStroke(new BasicStroke(Sizes.px(width), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.draw(aim());
    }

    /** Four corners round the middle. */
    private Path2D.Float aim() {
        float side = AIM * Math.min(getWidth(), getHeight());
        float arm = CORNER * side;
        float left = (getWidth() - side) / 2;
        float top = (getHeight() - side) / 2;
        Path2D.Float corners = new Path2D.Float();
        for (int across : new int[] {0, 1}) {
            for (int down : new int[] {0, 1}) {
                float x = left + across * side;
                float y = top + down * side;
                corners.moveTo(x + (across == 0 ? arm : -arm), y);
                corners.lineTo(x, y);
                corners.lineTo(x, y + (down == 0 ? arm : -arm));
            }
        }
        return corners;
    }
}
