package org.cagewall.kiosk.cards;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.Order;
import org.cagewall.cards.PrintedCard;
import org.cagewall.paper.Printers;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Draws cards and puts them into a file or on a printer. All of it takes its time: for the study lane, never the event
 * thread.
 */
final class CardsJob {

    private static final int MOST_FILES_A_DAY = 1000;

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

    /** What came of it: where the cards are now, or why they are nowhere. */
    record Result(Optional<String> where, Optional<Message> problem) {

        static Result of(String where) {
            return new Result(Optional.of(where), Optional.empty());
        }

        static Result not(Message why) {
            return new Result(Optional.empty(), Optional.of(why));
        }
    }

    Means means() {
        List<Named> named = sheets.names().stream()
                .map(name -> new Named(name, sheets.find(name)))
                .toList();
        return new Means(named, printers.names());
    }

    Result save(List<PrintedCard> cards, String sheet, LocalDate day) {
        Sheets.Found found = sheets.find(sheet);
        if (found.sheet().isEmpty()) {
            return Result.not(found.reason().orElseThrow());
        }
        byte[] pdf = drawn(cards, found.sheet().get(), day);
        try {
            Path file = free(day);
            Path part = folder.resolve(file.getFileName() + ".part");
            Files.write(part, pdf);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            return Result.of(file.getFileName().toString());
        } catch (IOException e) {
            return Result.not(Message.of("cardscreen.not-saved", folder.toString()));
        }
    }

    Result print(List<PrintedCard> cards, String sheet, String printer, LocalDate day) {
        Sheets.Found found = sheets.find(sheet);
        if (found.sheet().isEmpty()) {
            return Result.not(found.reason().orElseThrow());
        }
        Printers.Outcome outcome = printers.print(
                printer,
                words.say("cards.card.title"),
                drawn(cards, found.sheet().get(), day));
        return outcome.reason().map(Result::not).orElseGet(() -> Result.of(printer));
    }

    private byte[] drawn(List<PrintedCard> cards, Sheet sheet, LocalDate day) {
        return CardsPdf.drawn(cards, Order.on(sheet), day, words);
    }

    private Path free(LocalDate day) throws IOException {
        for (int number = 1; number < MOST_FILES_A_DAY; number++) {
            Path file = folder.resolve("cards-" + day + (number == 1 ? "" : "-" + number) + ".pdf");
            if (Files.notExists(file)) {
                return file;
            }
        }
        throw new IOException("no name left for this day");
    }
}
