package org.cagewall.handover;

import java.util.concurrent.atomic.AtomicInteger;
import org.cagewall.paper.Pdf;
import org.cagewall.paper.Size;
import org.cagewall.text.Words;

/**
 * The pack as pages for a printer, in the order in which it is read. Stateless; any thread but the event thread, since
 * fonts are loaded.
 */
public final class PackPdf {

    private PackPdf() {}

    /**
     * The bytes of the document. The same pack gives the same bytes.
     *
     * @param paper {@link Size#A4} or {@link Size#LETTER}
     */
    public static byte[] drawn(Pack pack, Size paper, Words words) {
        AtomicInteger pages = new AtomicInteger();
        document(pack, paper, words, 0, pages);
        return document(pack, paper, words, pages.get(), new AtomicInteger());
    }

    private static byte[] document(Pack pack, Size paper, Words words, int of, AtomicInteger pages) {
        return Pdf.drawn(words.say("pack.title"), pack.made(), pdf -> {
            PackLeafPdf leaf = new PackLeafPdf(pdf, paper, words, PackLeafPdf.foot(pack, words), of);
            new PackDoorPdf(leaf, words).draw(pack);
            pack.walls().forEach(wall -> new PackMapPdf(leaf, words).draw(wall));
            new PackMapPdf(leaf, words).drawElsewhere(pack.elsewhere());
            new PackRoutinePdf(leaf, words).draw(pack);
            pack.days().forEach(day -> new PackDayPdf(leaf, words).draw(day));
            new PackTopicsPdf(leaf, words).draw(pack);
            pages.set(leaf.pages());
        });
    }
}
