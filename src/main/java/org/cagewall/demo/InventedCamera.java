package org.cagewall.demo;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.Order;
import org.cagewall.desk.Desk;
import org.cagewall.paper.Raster;
import org.cagewall.paper.Sheet;
import org.cagewall.room.Cage;
import org.cagewall.scan.Cameras;
import org.cagewall.scan.Frame;
import org.cagewall.scan.FrameSource;
import org.cagewall.scan.Luma;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * A camera that is none: before it hangs the card of a cage, as the program prints it, a little askew on the wires. For
 * pictures of the Scan screen. Making what it sees takes its time; used on the event thread where only pictures are made.
 */
final class InventedCamera implements Cameras.One {

    private static final String SHEET = "roll-100x60";
    private static final int DPI = 150;
    private static final int WIDTH = 1280;
    private static final int HEIGHT = 960;
    private static final double ASKEW = Math.toRadians(-4);
    private static final int BETWEEN_WIRES = 64;

    private final BufferedImage seen;

    private InventedCamera(BufferedImage seen) {
        this.seen = seen;
    }

    /** Before it hangs the card of this cage. */
    static Cameras before(Desk desk, Cage cage, Words words) {
        Sheet sheet = CardsPdf.sheets().find(SHEET).sheet().orElseThrow();
        byte[] card = CardsPdf.drawn(List.of(CardToPrint.of(desk.room(), cage)), Order.on(sheet), desk.today(), words);
        return Cameras.none().and(new InventedCamera(onTheWires(Raster.ofFirstPage(card, DPI))));
    }

    @Override
    public String id() {
        return "invented";
    }

    @Override
    public Message name() {
        return Message.of("scan.camera.name", id());
    }

    @Override
    public FrameSource open() {
        return () -> Optional.of(new Frame.Picture(Luma.of(seen)));
    }

    private static BufferedImage onTheWires(Raster card) {
        BufferedImage picture = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = picture.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        brush.setColor(new Color(0x3f453f));
        brush.fillRect(0, 0, WIDTH, HEIGHT);
        brush.setColor(new Color(0xa9aca6));
        for (int x = BETWEEN_WIRES / 2; x < WIDTH; x += BETWEEN_WIRES) {
            brush.fillRect(x, 0, 6, HEIGHT);
        }
        brush.fillRect(0, 60, WIDTH, 10);
        brush.fillRect(0, HEIGHT - 70, WIDTH, 10);
        AffineTransform place = AffineTransform.getRotateInstance(ASKEW, WIDTH / 2.0, HEIGHT / 2.0);
        place.translate((WIDTH - card.width()) / 2.0, (HEIGHT - card.height()) / 2.0);
        brush.drawImage(image(card), place, null);
        brush.dispose();
        return picture;
    }

    private static BufferedImage image(Raster card) {
        BufferedImage image = new BufferedImage(card.width(), card.height(), BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, card.width(), card.height(), card.pixels(), 0, card.width());
        return image;
    }
}
