package org.cagewall.paper;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;

/**
 * A page as it will come out of the printer, in pixels, to be looked at before. Nobody changes its pixels. Making one
 * takes its time: not for the event thread.
 */
public final class Raster {

    private final int width;
    private final int height;
    private final int[] pixels;

    private Raster(int width, int height, int[] pixels) {
        this.width = width;
        this.height = height;
        this.pixels = pixels;
    }

    /**
     * The first page of a document.
     *
     * @param dpi pixels for each inch of the paper
     */
    public static Raster ofFirstPage(byte[] pdf, int dpi) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            BufferedImage page = new PDFRenderer(document).renderImageWithDPI(0, dpi, ImageType.RGB);
            int width = page.getWidth();
            int height = page.getHeight();
            return new Raster(width, height, page.getRGB(0, 0, width, height, null, 0, width));
        } catch (IOException e) {
            throw new UncheckedIOException("the page could not be rendered", e);
        }
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The pixels row by row, each as 0xRRGGBB with whatever above. */
    public int[] pixels() {
        return pixels.clone();
    }
}
