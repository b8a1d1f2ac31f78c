package org.cagewall.paper;

import java.awt.print.Book;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.printing.PDFPrintable;
import org.apache.pdfbox.printing.Scaling;
import org.cagewall.text.Message;

/**
 * Sends a PDF to a printer of this machine in its real size, since a symbol that a driver has shrunk may no longer
 * scan. One thread, never the event thread: asking for printers can take seconds.
 */
public final class Printers {

    private final Supplier<Stream<PrintService>> services;

    Printers(Supplier<Stream<PrintService>> services) {
        this.services = services;
    }

    /** The printers that the operating system knows, asked for anew each time. */
    public static Printers ofThisMachine() {
        return new Printers(() -> Stream.of(PrintServiceLookup.lookupPrintServices(null, null)));
    }

    public List<String> names() {
        return services.get().map(PrintService::getName).sorted().toList();
    }

    /**
     * Prints all pages once, in their real size.
     *
     * @param printer one of {@link #names()}; it may have gone since
     * @param title the name of the job in the printer's list
     * @param pdf the document's bytes
     */
    public Outcome print(String printer, String title, byte[] pdf) {
        Optional<PrintService> service =
                services.get().filter(each -> each.getName().equals(printer)).findFirst();
        if (service.isEmpty()) {
            return new Refused(gone(printer));
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(service.get());
            job.setJobName(title);
            job.setPageable(inRealSize(document));
            job.print();
            return new Done();
        } catch (PrinterException | IOException e) {
            return new Refused(Message.of("paper.printer.failed", printer, reason(e)));
        }
    }

    private Message gone(String printer) {
        List<String> others = names();
        return others.isEmpty()
                ? Message.of("paper.printer.none", printer)
                : Message.of("paper.printer.gone", printer, others);
    }

    private static Book inRealSize(PDDocument document) {
        Book book = new Book();
        PDFPrintable pages = new PDFPrintable(document, Scaling.ACTUAL_SIZE);
        document.getPages().forEach(page -> book.append(pages, format(page.getMediaBox())));
        return book;
    }

    private static PageFormat format(PDRectangle size) {
        Paper paper = new Paper();
        paper.setSize(size.getWidth(), size.getHeight());
        paper.setImageableArea(0, 0, size.getWidth(), size.getHeight());
        PageFormat format = new PageFormat();
        format.setPaper(paper);
        return format;
    }

    /** What a spooler's own failure says stands in its cause. */
    private static String reason(Exception e) {
        return Optional.ofNullable(e.getMessage())
                .or(() -> Optional.ofNullable(e.getCause()).map(Throwable::getMessage))
                .orElse(e.getClass().getSimpleName());
    }

    /** What came of a print. Immutable; any thread. */
    public sealed interface Outcome permits Done, Refused {

        /** Why nothing was printed. */
        default Optional<Message> reason() {
            return Optional.empty();
        }
    }

    /** The pages have been handed to the printer. */
    public record Done() implements Outcome {}

    /** Nothing was printed. */
    public record Refused(Message why) implements Outcome {

        @Override
        public Optional<Message> reason() {
            return Optional.of(why);
        }
    }
}
