package org.cagewall.paper;

import java.awt.print.Book;
import java.awt.print.PageFormat;
import java.awt.print.Paper;
import java.awt.print.Printable;
import java.awt.print.PrinterAbortException;
import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.print.PrintService;
import javax.print.PrintServiceLookup;
import javax.print.attribute.standard.Media;
import javax.print.attribute.standard.MediaSize;
import javax.print.attribute.standard.MediaSizeName;
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

    /** Common practice, no source: a printer's own names of papers are rounded to millimetres, or to sixteenths. */
    private static final double PAPER_TOLERANCE = 1.6;

    /** Where a spooler is fed by a command, Java puts the command in front of what it said. */
    private static final Pattern COMMAND = Pattern.compile("^error=.*?\\blpr?: (Error - )?", Pattern.DOTALL);

    /** Where this is off, Java asks the spooler each time; on, it answers for two minutes with what it knew. */
    private static final String KEEPS_OLD_ANSWERS = "sun.java2d.print.polling";

    private final Supplier<Stream<PrintService>> services;

    Printers(Supplier<Stream<PrintService>> services) {
        this.services = services;
    }

    /** The printers that the operating system knows, asked for anew each time: one that is plugged in now turns up. */
    public static Printers ofThisMachine() {
        System.setProperty(KEEPS_OLD_ANSWERS, "false");
        return new Printers(() -> Stream.of(PrintServiceLookup.lookupPrintServices(null, null)));
    }

    public List<String> names() {
        return services.get().map(PrintService::getName).sorted().toList();
    }

    /**
     * Why a sheet may not come out as it should: the printer names the papers that it takes, and this is none of them.
     * Nothing where it names none. A printer may be wrong, so it is for a person to decide.
     *
     * @param printer one of {@link #names()}; nothing is said of one that has gone
     */
    public Optional<Message> doubt(String printer, Size paper) {
        List<Size> known = service(printer).map(Printers::papers).orElse(List.of());
        boolean takes = known.isEmpty() || known.stream().anyMatch(each -> isNear(each, paper));
        return takes
                ? Optional.empty()
                : Optional.of(Message.of("paper.printer.paper", printer, paper.width(), paper.height()));
    }

    /** Prints all pages once, in their real size. */
    public Outcome print(String printer, String title, byte[] pdf) {
        return print(printer, title, pdf, new Stop(), page -> {});
    }

    /**
     * Prints all pages once, in their real size. Nothing comes out before the last page is drawn, so that a print that
     * is stopped leaves no half.
     *
     * @param printer one of {@link #names()}; it may have gone since
     * @param title the name of the job in the printer's list
     * @param pdf the document's bytes
     * @param stop whoever holds it may stop the print; once the last page is drawn it is too late
     * @param begun told the number of each page as it is drawn, from 1, on this thread
     */
    public Outcome print(String printer, String title, byte[] pdf, Stop stop, IntConsumer begun) {
        Optional<PrintService> service = service(printer);
        if (service.isEmpty()) {
            return new Refused(gone(printer));
        }
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PrinterJob job = PrinterJob.getPrinterJob();
            job.setPrintService(service.get());
            job.setJobName(title);
            job.setPageable(inRealSize(document, job, stop, begun));
            job.print();
            return new Done();
        } catch (PrinterAbortException e) {
            return new Stopped();
        } catch (PrinterException | IOException e) {
            return new Refused(Message.of("paper.printer.failed", printer, reason(e)));
        }
    }

    private Optional<PrintService> service(String printer) {
        return services.get().filter(each -> each.getName().equals(printer)).findFirst();
    }

    private static List<Size> papers(PrintService service) {
        return service.getSupportedAttributeValues(Media.class, null, null) instanceof Media[] media
                ? Stream.of(media)
                        .filter(MediaSizeName.class::isInstance)
                        .map(name -> MediaSize.getMediaSizeForName((MediaSizeName) name))
                        .filter(Objects::nonNull)
                        .map(size -> new Size(size.getX(MediaSize.MM), size.getY(MediaSize.MM)))
                        .toList()
                : List.of();
    }

    private static boolean isNear(Size known, Size paper) {
        return isNear(known.width(), paper.width()) && isNear(known.height(), paper.height())
                || isNear(known.width(), paper.height()) && isNear(known.height(), paper.width());
    }

    private static boolean isNear(double known, double mm) {
        return Math.abs(known - mm) <= PAPER_TOLERANCE;
    }

    private Message gone(String printer) {
        List<String> others = names();
        return others.isEmpty()
                ? Message.of("paper.printer.none", printer)
                : Message.of("paper.printer.gone", printer, others);
    }

    /** To stop, the job is asked to break off and the page is denied: one that throws would hand on what is drawn so far. */
    private static Book inRealSize(PDDocument document, PrinterJob job, Stop stop, IntConsumer begun) {
        Book book = new Book();
        PDFPrintable pages = new PDFPrintable(document, Scaling.ACTUAL_SIZE);
        Printable watched = (graphics, format, page) -> {
            if (stop.isAsked()) {
                job.cancel();
                return Printable.NO_SUCH_PAGE;
            }
            begun.accept(page + 1);
            return pages.print(graphics, format, page);
        };
        document.getPages().forEach(page -> book.append(watched, format(page.getMediaBox())));
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

    /** What a spooler's own failure says stands in its cause, after the command that was run. */
    private static String reason(Exception e) {
        String said = Optional.ofNullable(e.getMessage())
                .or(() -> Optional.ofNullable(e.getCause()).map(Throwable::getMessage))
                .orElse(e.getClass().getSimpleName());
        return COMMAND.matcher(said).replaceFirst("").strip().replaceFirst("\\.+$", "");
    }

    /** What came of a print. Immutable; any thread. */
    public sealed interface Outcome permits Done, Stopped, Refused {

        /** Why nothing was printed. */
        default Optional<Message> reason() {
            return Optional.empty();
        }
    }

    /** The pages have been handed to the printer. */
    public record Done() implements Outcome {}

    /** It was stopped before anything was handed to the printer. */
    public record Stopped() implements Outcome {}

    /** Nothing was printed. */
    public record Refused(Message why) implements Outcome {

        @Override
        public Optional<Message> reason() {
            return Optional.of(why);
        }
    }
}
