package org.cagewall.kiosk.handover;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.cards.CardsPdf;
import org.cagewall.desk.DataFolder;
import org.cagewall.handover.Pack;
import org.cagewall.handover.PackPdf;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.paper.Printers;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Size;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Draws the pack and puts it into a file or on a printer. All of it takes its time: for the study lane, never the event
 * thread.
 */
final class PackJob {

    private static final int MOST_FILES_A_DAY = 1000;

    private final Words words;
    private final DataFolder data;
    private final Path folder;
    private final Printers printers;

    PackJob(Words words, DataFolder data, Printers printers) {
        this.words = words;
        this.data = data;
        this.folder = data.path();
        this.printers = printers;
    }

    /** What came of it: where the pages are now, or why they are nowhere. */
    record Result(Optional<String> where, Optional<Message> problem) {

        static Result of(String where) {
            return new Result(Optional.of(where), Optional.empty());
        }

        static Result not(Message why) {
            return new Result(Optional.empty(), Optional.of(why));
        }
    }

    List<String> printers() {
        return printers.names();
    }

    Result save(Pack pack) {
        byte[] pdf = PackPdf.drawn(pack, paper(), words);
        try {
            Path file = free(pack.made());
            Path part = folder.resolve(file.getFileName() + ".part");
            Files.write(part, pdf);
            Files.move(part, file, StandardCopyOption.ATOMIC_MOVE);
            return Result.of(file.getFileName().toString());
        } catch (IOException e) {
            return Result.not(Message.of("handover.pack-not-saved", folder.toString()));
        }
    }

    Result print(Pack pack, String printer) {
        Printers.Outcome outcome =
                printers.print(printer, words.say("pack.title"), PackPdf.drawn(pack, paper(), words));
        return outcome.reason().map(Result::not).orElseGet(() -> Result.of(printer));
    }

    /** What the cards of this room are printed on is what its printer holds. */
    private Size paper() {
        String sheet = KioskSettings.read(data.kioskProperties()).sheet();
        return CardsPdf.sheets(data.labels())
                .find(sheet)
                .sheet()
                .map(Sheet::paper)
                .filter(Size.LETTER::equals)
                .orElse(Size.A4);
    }

    private Path free(LocalDate day) throws IOException {
        for (int number = 1; number < MOST_FILES_A_DAY; number++) {
            Path file = folder.resolve("pack-" + day + (number == 1 ? "" : "-" + number) + ".pdf");
            if (Files.notExists(file)) {
                return file;
            }
        }
        throw new IOException("no name left for this day");
    }
}
