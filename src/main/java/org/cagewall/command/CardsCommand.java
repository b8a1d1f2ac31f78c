package org.cagewall.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.PrintedCard;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Told;
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

    @ParentCommand
    private Cagewall cagewall;

    @Option(names = "--out", required = true, paramLabel = "FILE", description = "The PDF to write.")
    private Path out;

    @Option(names = "--sheet", paramLabel = "NAME", description = "The sheet to print on; a4-85x54 if left out.")
    private String sheet = Sheets.BUILT_IN.get(0);

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
        List<Cage> wanted = wanted(desk);
        if (wanted.isEmpty()) {
            tell(List.of(), "command.cards-none");
            return Main.DONE;
        }
        Room room = desk.room();
        List<PrintedCard> cards = wanted.stream()
                .map(cage -> new PrintedCard(CardFaces.of(room, cage), CardFaces.code(room, cage)))
                .toList();
        byte[] pdf =
                CardsPdf.drawn(cards, paper, desk.today(), cagewall.console().words());
        write(pdf, () -> by.ifPresent(person -> recordAsPrinted(desk, wanted, person)));
        tell(wanted, "command.cards-drawn");
        return Main.DONE;
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
        Told told = Told.on(desk.today(), person);
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

    private void tell(List<Cage> drawn, String key) {
        Json json = Json.object()
                .with("file", drawn.isEmpty() ? Optional.empty() : Optional.of(out.toString()))
                .with("sheet", sheet)
                .with("cages", drawn.stream().map(Cage::name).toList())
                .with("recorded", by.isPresent() && !drawn.isEmpty());
        cagewall.answer(json, key, drawn.size(), out.toString());
    }
}
