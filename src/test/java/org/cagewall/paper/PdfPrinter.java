package org.cagewall.paper;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A printer of this machine that a real spooler feeds and that lays its paper, as PDF files, into a folder. Set up by
 * .ci/run with CUPS and CUPS-PDF; where there is none the test is skipped or fails. Used on the test's thread.
 */
public final class PdfPrinter {

    public static final String NAME = "Cagewall-PDF";

    /** The environment's variable with the folder that the printer writes to. */
    private static final String FOLDER = "CAGEWALL_PRINTED";

    private static final String PPD = "/usr/share/ppd/cups-pdf/CUPS-PDF_opt.ppd";
    private static final long PATIENCE_NANOS = 60_000_000_000L;
    private static final long GLANCE_NANOS = 50_000_000L;

    private final Path folder;
    private final List<Path> before;

    private PdfPrinter(Path folder) {
        this.folder = folder;
        this.before = files();
    }

    /** Skips the test when there is no such printer, unless the run demands that none is skipped. */
    public static PdfPrinter need() {
        Optional<String> folder = Optional.ofNullable(System.getenv(FOLDER));
        boolean there = folder.isPresent() && Printers.ofThisMachine().names().contains(NAME);
        String reason = "no printer " + NAME + " that prints into the folder " + FOLDER + ": run .ci/run";
        if (!there && Boolean.getBoolean("cagewall.requireDisplay")) {
            fail(reason);
        }
        assumeTrue(there, reason);
        return new PdfPrinter(Path.of(folder.orElseThrow()));
    }

    /** Waits, at most a minute, for the next whole document of this many pages. */
    public byte[] document(int pages) {
        long end = System.nanoTime() + PATIENCE_NANOS;
        while (System.nanoTime() < end) {
            for (Path file : files()) {
                if (!before.contains(file) && isWhole(file, pages)) {
                    return read(file);
                }
            }
            LockSupport.parkNanos(GLANCE_NANOS);
        }
        throw new AssertionError("waited in vain for " + pages + " printed pages; there are " + files());
    }

    /** All that has come out since. */
    public List<Path> documents() {
        return files().stream().filter(file -> !before.contains(file)).toList();
    }

    /** Takes the printer away from its spooler while this is done, and puts it back. */
    public void awayDuring(Runnable deed) throws IOException, InterruptedException {
        String address = lines("lpstat", "-v", NAME).get(0).replaceFirst(".*: ", "");
        lines("lpadmin", "-x", NAME);
        try {
            deed.run();
        } finally {
            lines("lpadmin", "-p", NAME, "-v", address, "-E", "-P", PPD);
        }
    }

    /** Plugs one more printer in while this is done, and takes it out again. */
    public static void besides(String another, Runnable deed) throws IOException, InterruptedException {
        String address = lines("lpstat", "-v", NAME).get(0).replaceFirst(".*: ", "");
        lines("lpadmin", "-p", another, "-v", address, "-E", "-P", PPD);
        try {
            deed.run();
        } finally {
            lines("lpadmin", "-x", another);
        }
    }

    /** Has the spooler hand it no more than it has had already while this is done. */
    public void sparedDuring(Runnable deed) throws IOException, InterruptedException {
        lines("lpadmin", "-p", NAME, "-o", "job-quota-period=3600", "-o", "job-k-limit=1");
        try {
            deed.run();
        } finally {
            lines("lpadmin", "-p", NAME, "-o", "job-quota-period=0", "-o", "job-k-limit=0");
        }
    }

    private static List<String> lines(String... command) throws IOException, InterruptedException {
        Process process =
                new ProcessBuilder(command).redirectError(Redirect.DISCARD).start();
        List<String> lines = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8)
                .lines()
                .toList();
        if (process.waitFor() != 0) {
            fail("the spooler did not do " + List.of(command));
        }
        return lines;
    }

    private static boolean isWhole(Path file, int pages) {
        try (PDDocument document = Loader.loadPDF(read(file))) {
            return document.getNumberOfPages() == pages;
        } catch (IOException stillBeingWritten) {
            return false;
        }
    }

    private static byte[] read(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private List<Path> files() {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".pdf")).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
