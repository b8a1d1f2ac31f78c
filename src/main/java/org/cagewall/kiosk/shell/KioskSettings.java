package org.cagewall.kiosk.shell;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import org.cagewall.kiosk.theme.TextSize;

/**
 * What belongs to this tablet rather than to the birdroom: kept in {@code kiosk.properties} in the data folder.
 * Immutable; any thread.
 *
 * @param sheet the name of the sheet that cards were last meant for; empty before any was chosen
 * @param face the face that cards last got; empty before any was chosen
 * @param printer the printer that cards were last meant for; empty before any was chosen
 * @param camera what cards are scanned with
 */
public record KioskSettings(TextSize textSize, String sheet, String face, String printer, CameraSettings camera) {

    private static final String TEXT_SIZE = "text-size";
    private static final String SHEET = "cards-sheet";
    private static final String FACE = "cards-face";
    private static final String PRINTER = "cards-printer";

    /** The settings of that file; a missing or unreadable one means the usual settings. */
    public static KioskSettings read(Path file) {
        Properties kept = properties(file);
        return new KioskSettings(
                TextSize.named(kept.getProperty(TEXT_SIZE, "normal")),
                kept.getProperty(SHEET, ""),
                kept.getProperty(FACE, ""),
                kept.getProperty(PRINTER, ""),
                CameraSettings.of(kept));
    }

    /**
     * Keeps what cards are printed on and with, and leaves everything else in the file as it is.
     *
     * @throws UncheckedIOException when the file cannot be written
     */
    public static void keepForCards(Path file, String sheet, String face, String printer) {
        keep(file, Map.of(SHEET, sheet, FACE, face, PRINTER, printer));
    }

    /**
     * Keeps which camera was chosen, and leaves everything else in the file as it is.
     *
     * @throws UncheckedIOException when the file cannot be written
     */
    public static void keepCamera(Path file, String camera) {
        keep(file, Map.of(CameraSettings.CAMERA, camera));
    }

    /**
     * Keeps whether the small view of the camera stays on, and leaves everything else in the file as it is.
     *
     * @throws UncheckedIOException when the file cannot be written
     */
    public static void keepSmallView(Path file, CameraSettings.SmallView small) {
        keep(file, Map.of(CameraSettings.SMALL_VIEW, small.name().toLowerCase(Locale.ROOT)));
    }

    private static void keep(Path file, Map<String, String> values) {
        Properties kept = properties(file);
        kept.putAll(values);
        Path unfinished = file.resolveSibling(file.getFileName() + ".new");
        try {
            try (Writer out = Files.newBufferedWriter(unfinished, StandardCharsets.UTF_8)) {
                kept.store(out, null);
            }
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Properties properties(Path file) {
        Properties kept = new Properties();
        if (Files.isReadable(file)) {
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                kept.load(in);
            } catch (IOException | IllegalArgumentException e) {
                kept.clear();
            }
        }
        return kept;
    }
}
