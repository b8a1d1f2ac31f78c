package org.cagewall.kiosk.cards;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.function.IntConsumer;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.Order;
import org.cagewall.cards.TrialPdf;
import org.cagewall.paper.FreePlaces;
import org.cagewall.paper.Printers;
import org.cagewall.paper.Raster;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.paper.Size;
import org.cagewall.paper.Stop;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Draws cards and puts them into a file or on a printer. All of it takes its time: for the study lane, never the event
 * thread.
 */
final class CardsJob {

    private static final int MOST_FILES_A_DAY = 1000;

    /** An A4 sheet is then twice as fine as it is shown on a screen of 1280 x 800. */
    private static final int PREVIEW_DPI = 110;

    private final Words words;
    private final Path folder;
    private final Sheets sheets;
    private final Printers printers;

    CardsJob(Words words, Path folder, Sheets sheets, Printers printers) {
        this.words = words;
        this.folder = folder;
        this.sheets = sheets;
        this.printers = printers;
    }

    /** What there is to print on. */
    record Means(List<Named> sheets, List<String> printers) {}

    /** A sheet by its name, found usable or not. */
    record Named(String name, Sheets.Found found) {}

    /** What came of it: where the cards are now, or why they are nowhere; neither where the person stopped it. */
    record Result(Optional<String> where, Optional<Message> problem) {

        static Result of(String where) {
            return new Result(Optional.of(where), Optional.empty());
        }

        static Result not(Message why) {
            return new Result(Optional.empty(), Optional.of(why));
        }

        static Result stopped() {
            return new Result(Optional.empty(), Optional.empty());
        }
    }

    Means means() {
        List<Named> named = sheets.names().stream()
                .map(name -> new Named(name, sheets.find(name)))
                .toList();
        return new Means(named, printers.names());
    }

    Optional<Message> doubt(String printer, Size paper) {
        return printers.doubt(printer, paper);
    }

    /** One sheet as it will be printed, counted from 0. */
    Raster preview(List<CardToPrint> cards, Order order, int sheet, LocalDate day) {
        SortedMap<Integer, CardToPrint> here = order.spread(cards).get(sheet);
        Order alone = order.with(FreePlaces.of(order.sheet(), here.keySet())).copied(1);
        return Raster.ofFirstPage(CardsPdf.drawn(List.copyOf(here.values()), alone, day, words), PREVIEW_DPI);
    }

    Result save(List<CardToPrint> cards, Order order, LocalDate day) {
        return save("cards", CardsPdf.drawn(cards, order, day, words), day);
    }

    Result print(List<CardToPrint> cards, Order order, String printer, LocalDate day, Stop stop, IntConsumer begun) {
        return print(printer, "cards.card.title", CardsPdf.drawn(cards, order, day, words), stop, begun);
    }

    Result saveTrial(Sheet sheet, LocalDate day) {
        return save("trial", TrialPdf.drawn(sheet, day, words), day);
    }

    Result printTrial(Sheet sheet, String printer, LocalDate day, Stop stop, IntConsumer begun) {
        return print(printer, "cards.trial.title", TrialPdf.drawn(sheet, day, words), stop, begun);
    }

    private Result print(String printer, String title, byte[] pdf, Stop stop, IntConsumer begun) {
        Printers.Outcome outcome = printers.print(printer, words.say(title), pdf, stop, begun);
        if (outcome instanceof Printers.Stopped) {
            return Result.stopped();
        }
        return outcome.reason().map(Result::not).orElseGet(() -> Result.of(printer));
    }

    private Result save(String name, byte[] pdf, LocalDate day) {
        try {
            Path file = free(name, day);
            Path part = folder.resolve(file.getFileName() + ".part");
            Files.write(part, pdf);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            return Result.of(file.getFileName().toString());
        } catch (IOException e) {
            return Result.not(Message.of("cardscreen.not-saved", folder.toString()));
        }
    }

    private Path free(String name, LocalDate day) throws IOException {
        for (int number = 1; number < MOST_FILES_A_DAY; number++) {
            Path file = folder.resolve(name + "-" + day + (number == 1 ? "" : "-" + number) + ".pdf");
            if (Files.notExists(file)) {
                return file;
            }
        }
        throw new IOException("no name left for this day");
    }
}
