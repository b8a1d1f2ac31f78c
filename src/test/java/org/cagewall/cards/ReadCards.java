package org.cagewall.cards;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.cagewall.paper.Box;
import org.cagewall.paper.Sheet;

/**
 * Reads cards as strangers would: pages rendered by pdftoppm (Poppler), each card cut out where the sheet says, its
 * symbol read by zbarimg (ZBar). Neither program knows anything of this one.
 */
final class ReadCards {

    private final Path folder;
    private final Sheet sheet;
    private final int dpi;

    private ReadCards(Path folder, Sheet sheet, int dpi) {
        this.folder = folder;
        this.sheet = sheet;
        this.dpi = dpi;
    }

    /** The pages of this PDF, rendered into the folder. */
    static ReadCards rendered(Path folder, byte[] pdf, Sheet sheet, int dpi) throws IOException, InterruptedException {
        OutsidePrograms.need("pdftoppm", "zbarimg");
        Files.write(folder.resolve("cards.pdf"), pdf);
        OutsidePrograms.run(folder, List.of("pdftoppm", "-r", "" + dpi, "-png", "cards.pdf", "page"));
        return new ReadCards(folder, sheet, dpi);
    }

    /** What stands in the symbol of each card, in the order in which cards are laid on sheets. */
    List<String> texts(int count) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("zbarimg", "-q", "--raw", "-Sdisable", "-Sqrcode.enable"));
        for (int first = 0; first < count; first += sheet.cards()) {
            BufferedImage page = page(first / sheet.cards() + 1);
            for (int index = 0; index < Math.min(sheet.cards(), count - first); index++) {
                String file = "card-%02d.png".formatted(first + index);
                ImageIO.write(
                        part(page, sheet.place(index), dpi),
                        "png",
                        folder.resolve(file).toFile());
                command.add(file);
            }
        }
        return OutsidePrograms.run(folder, command);
    }

    /** A rendered page, the first is 1. */
    BufferedImage page(int number) throws IOException {
        return ImageIO.read(folder.resolve("page-" + number + ".png").toFile());
    }

    static BufferedImage part(BufferedImage page, Box box, int dpi) {
        double dot = 25.4 / dpi;
        return page.getSubimage((int) (box.left() / dot), (int) (box.top() / dot), (int) (box.width() / dot), (int)
                (box.height() / dot));
    }
}
