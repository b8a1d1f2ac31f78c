package org.cagewall.paper;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.EnumMap;
import java.util.GregorianCalendar;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * A PDF that is lent to whoever draws it and is always closed again; the font is embedded as a subset, so that paper
 * looks the same on every machine. One thread: no event thread, since loading the font takes a moment.
 */
public final class Pdf {

    private static final double POINTS_PER_MM = 72 / 25.4;

    private final PDDocument document;
    private final Map<Weight, Typeface> typefaces = new EnumMap<>(Weight.class);
    private Optional<PDPageContentStream> open = Optional.empty();

    private Pdf(PDDocument document) {
        this.document = document;
    }

    /**
     * The bytes of a document. The same title, date and drawing give the same bytes.
     *
     * @param title the title that a reader's window shows
     * @param made the day that the document says it was made
     * @param drawing draws page after page
     */
    public static byte[] drawn(String title, LocalDate made, Consumer<Pdf> drawing) {
        try (PDDocument document = new PDDocument()) {
            describe(document, title, made);
            Pdf pdf = new Pdf(document);
            drawing.accept(pdf);
            pdf.closePage();
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            document.save(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("the pages could not be drawn", e);
        }
    }

    /** Begins a page, and with that ends the one before. */
    public Page page(Size size) {
        return page(size, 0, 0);
    }

    /** The same, with all that is drawn on it shifted to the right and down by these millimetres. */
    public Page page(Size size, double right, double down) {
        try {
            closePage();
            PDPage page = new PDPage(new PDRectangle(points(size.width()), points(size.height())));
            document.addPage(page);
            PDPageContentStream out = new PDPageContentStream(document, page);
            open = Optional.of(out);
            return new Page(size, right, down, out, this::typeface);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Typeface typeface(Weight weight) throws IOException {
        Typeface known = typefaces.get(weight);
        if (known == null) {
            known = Typeface.load(document, weight);
            typefaces.put(weight, known);
        }
        return known;
    }

    private void closePage() throws IOException {
        if (open.isPresent()) {
            open.get().close();
            open = Optional.empty();
        }
    }

    private static void describe(PDDocument document, String title, LocalDate made) {
        PDDocumentInformation about = document.getDocumentInformation();
        about.setTitle(title);
        about.setCreator("Cagewall");
        Calendar date = GregorianCalendar.from(made.atStartOfDay(ZoneOffset.UTC));
        about.setCreationDate(date);
        document.setDocumentId(made.toEpochDay());
        document.getDocumentCatalog().setLanguage(Locale.UK.toLanguageTag());
    }

    private static float points(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }
}
