package org.cagewall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.FaceChoice;
import org.cagewall.cards.Order;
import org.cagewall.cards.TrialPdf;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Line;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Draws cage cards as a PDF and, where somebody is named, records them as printed. */
@Command(
        name = "cards",
        header = "Draws cage cards as a PDF, in walking order or for the cages named.",
        description = "They are recorded as printed only where --by says who prints them.")
final class CardsCommand implements Callable<Integer> {

    private static final int MOST_COPIES = 99;

    @ParentCommand
    private Cagewall cagewall;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The PDF to write.")
    private Path out;

    @Option(names = "--sheet", paramLabel = "NAME", description = "The sheet to print on; a4-85x54 if left out.")
    private String sheet = Sheets.BUILT_IN.get(0);

    @Option(
            names = "--face",
            paramLabel = "FACE",
            description = "How the cards are laid out: by-use (the flights' own for flights and nurseries), plain,"
                    + " large, flight; by-use if left out.")
    private String face = FaceChoice.BY_USE.word();

    @Option(
            names = "--places",
            paramLabel = "PLACES",
            description = "The free places of a part-used first sheet, counted row by row: 4- is from the fourth on,"
                    + " 2,5-7 just these. All if left out.")
    private Optional<String> places;

    @Option(names = "--copies", paramLabel = "N", description = "How many of each card; one if left out.")
    private int copies = 1;

    @Option(
            names = "--trial",
            description = "No cards, but a page with the outlines of the sheet's places and rulers, to set its shift.")
    private boolean trial;

    @Option(names = "--changed", description = "Only cages without a card, or whose card no longer matches.")
    private boolean changed;

    @Option(names = "--by", paramLabel = "PERSON", description = "Who prints them.")
    private Optional<String> by;

    @Parameters(paramLabel = "CAGE", arity = "0..*", description = "Cages; all that are in use if left out.")
    private List<String> cages = List.of();

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::draw);
    }

    private int draw(AtDesk desk) {
        Sheet paper = sheet(desk);
        if (trial) {
            return drawTrial(desk, paper);
        }
        Order order = new Order(PlacesOption.read(places, paper), face(), copies());
        List<Cage> wanted = wanted(desk);
        if (wanted.isEmpty()) {
            tell(List.of(), 0, "command.cards-none");
            return Main.DONE;
        }
        Room room = desk.room();
        List<CardToPrint> cards =
                wanted.stream().map(cage -> CardToPrint.of(room, cage)).toList();
        byte[] pdf =
                CardsPdf.drawn(cards, order, desk.today(), cagewall.console().words());
        write(pdf, () -> by.ifPresent(person -> recordAsPrinted(desk, wanted, person)));
        tell(wanted, order.sheetsFor(cards.size()), "command.cards-drawn");
        return Main.DONE;
    }

    private int drawTrial(AtDesk desk, Sheet paper) {
        write(TrialPdf.drawn(paper, desk.today(), cagewall.console().words()), () -> {});
        tell(List.of(), 1, "command.cards-trial");
        return Main.DONE;
    }

    private FaceChoice face() {
        return FaceChoice.named(face)
                .orElseThrow(() -> Refusal.of(
                        "command.cards-no-face",
                        face,
                        Stream.of(FaceChoice.values()).map(FaceChoice::word).toList()));
    }

    private int copies() {
        if (copies < 1 || copies > MOST_COPIES) {
            throw Refusal.of("command.cards-copies", MOST_COPIES);
        }
        return copies;
    }

    private Sheet sheet(AtDesk desk) {
        Sheets.Found found = CardsPdf.sheets(desk.desk().folder().labels()).find(sheet);
        return found.sheet().orElseThrow(() -> new Refusal(found.reason().orElseThrow()));
    }

    private List<Cage> wanted(AtDesk desk) {
        List<Cage> named = cages.isEmpty()
                ? desk.room().walk().toList()
                : cages.stream().map(name -> inUse(desk.cage(name))).distinct().toList();
        return changed
                ? named.stream()
                        .filter(cage -> cage.card().isEmpty() || CardFaces.isOutOfDate(desk.room(), cage))
                        .toList()
                : named;
    }

    private static Cage inUse(Cage cage) {
        if (!cage.inUse()) {
            throw Refusal.of("command.cards-not-in-use", cage.name());
        }
        return cage;
    }

    private static void recordAsPrinted(AtDesk desk, List<Cage> cages, String person) {
        Circumstances told = Circumstances.on(desk.today(), person);
        desk.record(cages.stream()
                .map(cage -> new Line(new CardDeed.CardPrinted(cage.name(), Optional.empty()), told))
                .toList());
    }

    /** Puts the file in its place only after the rest has gone well, and leaves an older one alone until then. */
    private void write(byte[] pdf, Runnable rest) {
        Path whole = out.toAbsolutePath();
        Path part = whole.resolveSibling(whole.getFileName() + ".part");
        try {
            if (Files.isDirectory(whole)) {
                throw Refusal.of("command.not-written", out.toString());
            }
            Files.write(part, pdf);
            try {
                rest.run();
                Files.move(part, whole, StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw Refusal.of("command.not-written", out.toString());
        }
    }

    private void tell(List<Cage> drawn, int sheets, String key) {
        Json json = Json.object()
                .with("file", sheets == 0 ? Optional.empty() : Optional.of(out.toString()))
                .with("sheet", sheet)
                .with("face", face)
                .with("sheets", sheets)
                .with("cages", drawn.stream().map(Cage::name).toList())
                .with("recorded", by.isPresent() && !drawn.isEmpty());
        cagewall.answer(json, key, drawn.size(), out.toString());
    }
}
