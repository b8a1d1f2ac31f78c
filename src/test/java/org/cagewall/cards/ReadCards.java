package org.cagewall.cards;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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

    /** What stands in the upper right symbol of each card, in the order in which cards are laid on sheets. */
    List<String> texts(int count) throws IOException, InterruptedException {
        return textsAt(IntStream.range(0, count).boxed().toList());
    }

    /** What stands in the upper right symbols in these places, counted through all sheets; an empty one adds nothing. */
    List<String> textsAt(List<Integer> places) throws IOException, InterruptedException {
        List<Path> files = new ArrayList<>();
        for (int place : places) {
            Box card = sheet.place(place % sheet.cards());
            Box right = new Box(card.left() + card.width() * 0.4, card.top(), card.width() * 0.6, card.height());
            BufferedImage page = page(place / sheet.cards() + 1);
            files.add(picture("card-%03d".formatted(place), part(page, right, dpi)));
        }
        return OutsidePrograms.symbols(folder, files);
    }

    /** Writes a picture into the folder. */
    Path picture(String name, BufferedImage picture) throws IOException {
        Path file = folder.resolve(name + ".png");
        ImageIO.write(picture, "png", file.toFile());
        return file;
    }

    /** A rendered page, the first is 1; Poppler writes as many figures as the last page's number has. */
    BufferedImage page(int number) throws IOException {
        Path file = Stream.of("page-%d.png", "page-%02d.png", "page-%03d.png")
                .map(name -> folder.resolve(name.formatted(number)))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
        return ImageIO.read(file.toFile());
    }

    static BufferedImage part(BufferedImage page, Box box, int dpi) {
        double dot = 25.4 / dpi;
        return page.getSubimage((int) (box.left() / dot), (int) (box.top() / dot), (int) (box.width() / dot), (int)
                (box.height() / dot));
    }
}
