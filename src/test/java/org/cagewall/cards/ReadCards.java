package org.cagewall.cards;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.cagewall.paper.Area;
import org.cagewall.paper.Sheet;

/**
 * Reads cards as strangers would: pages rendered by pdftoppm (Poppler), each card cut out where the sheet says, its
 * symbol read by zbarimg (ZBar). Neither program knows anything of this one.
 */
public final class ReadCards {

    private final Path folder;
    private final Sheet sheet;
    private final int dpi;

    /** The page that was read last, by its number: reading one takes longer than all its cards. */
    private final Map<Integer, BufferedImage> last = new HashMap<>();

    private ReadCards(Path folder, Sheet sheet, int dpi) {
        this.folder = folder;
        this.sheet = sheet;
        this.dpi = dpi;
    }

    /** The pages of this PDF, rendered into the folder. */
    public static ReadCards rendered(Path folder, byte[] pdf, Sheet sheet, int dpi)
            throws IOException, InterruptedException {
        OutsidePrograms.need("pdftoppm", "zbarimg");
        Files.write(folder.resolve("cards.pdf"), pdf);
        OutsidePrograms.run(folder, List.of("pdftoppm", "-r", "" + dpi, "-png", "cards.pdf", "page"));
        return new ReadCards(folder, sheet, dpi);
    }

    /** What stands in the upper right symbol of each card, in the order in which cards are laid on sheets. */
    public List<String> texts(int count) throws IOException, InterruptedException {
        return textsAt(IntStream.range(0, count).boxed().toList());
    }

    /** What stands in the upper right symbols in these places, counted through all sheets; an empty one adds nothing. */
    List<String> textsAt(List<Integer> places) throws IOException, InterruptedException {
        List<Path> files = new ArrayList<>();
        for (int place : places) {
            Area card = sheet.place(place % sheet.cards());
            Area right = new Area(card.left() + card.width() * 0.4, card.top(), card.width() * 0.6, card.height());
            BufferedImage page = page(place / sheet.cards() + 1);
            files.add(picture("card-%03d".formatted(place), part(page, right, dpi)));
        }
        return OutsidePrograms.symbols(folder, files);
    }

    /** A picture of the whole card in this place, counted through all sheets. */
    public Path card(int place) throws IOException {
        Area card = sheet.place(place % sheet.cards());
        return picture("whole-%03d".formatted(place), part(page(place / sheet.cards() + 1), card, dpi));
    }

    /** The words on the card in this place as pdftotext (Poppler) finds them, in lines. */
    public String words(int place) throws IOException, InterruptedException {
        OutsidePrograms.need("pdftotext");
        Area card = sheet.place(place % sheet.cards());
        List<String> command = new ArrayList<>(List.of("pdftotext", "-layout", "-enc", "UTF-8", "-r", "" + dpi));
        option(command, "-f", place / sheet.cards() + 1);
        option(command, "-l", place / sheet.cards() + 1);
        option(command, "-x", dots(card.left()));
        option(command, "-y", dots(card.top()));
        option(command, "-W", dots(card.width()));
        option(command, "-H", dots(card.height()));
        command.addAll(List.of("cards.pdf", "-"));
        return String.join("\n", OutsidePrograms.run(folder, command));
    }

    private static void option(List<String> command, String name, int value) {
        command.addAll(List.of(name, "" + value));
    }

    private int dots(double mm) {
        return (int) (mm * dpi / 25.4);
    }

    /** Writes a picture into the folder. */
    Path picture(String name, BufferedImage picture) throws IOException {
        Path file = folder.resolve(name + ".png");
        ImageIO.write(picture, "png", file.toFile());
        return file;
    }

    /** A rendered page, the first is 1. */
    BufferedImage page(int number) throws IOException {
        if (!last.containsKey(number)) {
            last.clear();
            last.put(number, read(number));
        }
        return last.get(number);
    }

    /** Poppler writes as many figures as the last page's number has. */
    private BufferedImage read(int number) throws IOException {
        Path file = Stream.of("page-%d.png", "page-%02d.png", "page-%03d.png")
                .map(name -> folder.resolve(name.formatted(number)))
                .filter(Files::exists)
                .findFirst()
                .orElseThrow();
        return ImageIO.read(file.toFile());
    }

    static BufferedImage part(BufferedImage page, Area box, int dpi) {
        double dot = 25.4 / dpi;
        return page.getSubimage((int) (box.left() / dot), (int) (box.top() / dot), (int) (box.width() / dot), (int)
                (box.height() / dot));
    }
}
