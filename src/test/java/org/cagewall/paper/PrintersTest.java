package org.cagewall.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javax.print.DocFlavor;
import javax.print.StreamPrintService;
import javax.print.StreamPrintServiceFactory;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

class PrintersTest {

    private static final byte[] TWO_PAGES = Pdf.drawn("Cards", LocalDate.of(2026, 4, 14), pdf -> {
        pdf.page(Size.A4).fill(new Area(50, 100, 30, 20), Ink.BLACK);
        pdf.page(Size.A4).fill(new Area(50, 100, 30, 20), Ink.BLACK);
    });

    private final Words words = Words.english();
    private final ByteArrayOutputStream paper = new ByteArrayOutputStream();
    private final StreamPrintService postScript = StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
            DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
            .getPrintService(paper);
    private final Printers printers = new Printers(() -> Stream.of(postScript));

    /** 50 mm are 141.732 points of 1/72 inch; 30 mm more 226.772; from below 297 - 120 = 177 mm are 501.732. */
    @Test
    void pagesArePrintedInTheirRealSizeAndAsShapes() {
        assertThat(printers.print(postScript.getName(), "Cards", TWO_PAGES)).isEqualTo(new Printers.Done());
        String printed = paper.toString(StandardCharsets.ISO_8859_1).split("%%EndSetup")[1];
        assertThat(printed).contains("141.732 501.732 M", "226.772 558.425 L").doesNotContain("image");
        assertThat(printed.split("showpage", -1)).hasSize(3);
    }

    @Test
    void aPrintThatIsStoppedHandsNothingOn() {
        Stop stop = new Stop();
        List<Integer> begun = new ArrayList<>();

        Printers.Outcome outcome = printers.print(postScript.getName(), "Cards", TWO_PAGES, stop, page -> {
            begun.add(page);
            stop.ask();
        });

        assertThat(outcome).isEqualTo(new Printers.Stopped());
        assertThat(begun).containsOnly(1);
        assertThat(outcome.reason()).isEmpty();
    }

    @Test
    void eachPageIsToldAsItIsBegun() {
        Set<Integer> begun = new TreeSet<>();
        printers.print(postScript.getName(), "Cards", TWO_PAGES, new Stop(), begun::add);
        assertThat(begun).containsExactly(1, 2);
    }

    @Test
    void aPrinterThatIsGoneIsRefusedWithThoseThatAreThere() {
        Printers.Outcome outcome = printers.print("Shed printer", "Cards", TWO_PAGES);
        assertThat(words.say(outcome.reason().orElseThrow()))
                .startsWith("The printer Shed printer is not there now.")
                .contains(postScript.getName());
        assertThat(paper.size()).isZero();
    }

    @Test
    void aMachineWithoutAPrinterOffersThePdf() {
        Printers none = new Printers(Stream::empty);
        assertThat(none.names()).isEmpty();
        assertThat(words.say(
                        none.print("Shed printer", "Cards", TWO_PAGES).reason().orElseThrow()))
                .isEqualTo("The printer Shed printer is not there now, and no other is. "
                        + "You can save the cards as a PDF.");
    }

    @Test
    void aPrinterThatBreaksOffSaysSo() {
        Printers broken = new Printers(() -> {
            postScript.dispose();
            return Stream.of(postScript);
        });
        Printers.Outcome outcome = broken.print(postScript.getName(), "Cards", TWO_PAGES);
        assertThat(words.say(outcome.reason().orElseThrow())).contains("did not take the cards");
    }

    @Test
    void askingThisMachineForItsPrintersNeverFails() {
        assertThat(Printers.ofThisMachine().names()).doesNotContainNull();
    }
}
