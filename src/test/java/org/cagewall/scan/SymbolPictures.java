package org.cagewall.scan;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;

/** Clean pictures of symbols, as a camera has them that is held straight before a new card. */
public final class SymbolPictures {

    private static final int MODULE = 8;
    private static final int WIDTH = 640;
    private static final int HEIGHT = 480;

    private SymbolPictures() {}

    /** A picture of 640 x 480 with the symbol in its middle. */
    public static BufferedImage of(String text) {
        return picture(WIDTH, brush -> draw(brush, text, WIDTH / 2));
    }

    /** A wider picture with the one in its middle and the other to the right of it. */
    public static BufferedImage of(String middle, String right) {
        return picture(2 * WIDTH, brush -> {
            draw(brush, middle, WIDTH);
            draw(brush, right, 3 * WIDTH / 2);
        });
    }

    private static BufferedImage picture(int width, Consumer<Graphics2D> drawn) {
        BufferedImage picture = new BufferedImage(width, HEIGHT, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D brush = picture.createGraphics();
        brush.setColor(new Color(0x8a8f88));
        brush.fillRect(0, 0, width, HEIGHT);
        drawn.accept(brush);
        brush.dispose();
        return picture;
    }

    private static void draw(Graphics2D brush, String text, int middle) {
        Symbol symbol = Symbols.matrix(text);
        int left = middle - symbol.side() * MODULE / 2;
        int top = (HEIGHT - symbol.side() * MODULE) / 2;
        brush.setColor(new Color(0xf4f2ea));
        brush.fillRect(left - 60, top - 50, symbol.side() * MODULE + 120, symbol.side() * MODULE + 100);
        brush.setColor(new Color(0x202020));
        for (int row = 0; row < symbol.side(); row++) {
            for (int column = 0; column < symbol.side(); column++) {
                if (symbol.isDark(column, row)) {
                    brush.fillRect(left + column * MODULE, top + row * MODULE, MODULE, MODULE);
                }
            }
        }
    }

    public static void write(Path file, String text) {
        try {
            ImageIO.write(of(text), "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
