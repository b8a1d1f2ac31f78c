package org.cagewall.kiosk;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;
import org.cagewall.kiosk.theme.TextSize;

/**
 * What belongs to this tablet rather than to the birdroom: kept in {@code kiosk.properties} in the data folder.
 * Immutable; any thread.
 */
public record KioskSettings(TextSize textSize) {

    /** The settings of that file; a missing or unreadable one means the usual settings. */
    public static KioskSettings read(Path file) {
        Properties kept = new Properties();
        if (Files.isReadable(file)) {
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                kept.load(in);
            } catch (IOException | IllegalArgumentException e) {
                kept.clear();
            }
        }
        return new KioskSettings(TextSize.named(kept.getProperty("text-size", "normal")));
    }
}
