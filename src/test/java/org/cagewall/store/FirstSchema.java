package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The record as the first version kept it: every kind of fact that it took, in a database packed into
 * {@code first-schema.zip}. It was packed once, by {@code mvn -o -B test -Dtest=FirstSchema} at the version that made the
 * schema, from the lines in {@code first-schema.jsonl}. Once that version is out the zip is never packed again: it stands
 * for the rooms that people have.
 */
public class FirstSchema {

    static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    static final String CODE = "K7Q";

    private static final Instant NOW = Instant.parse("2026-04-14T08:00:00Z");

    private static final Path ZIP = Path.of("src/test/resources/org/cagewall/store/first-schema.zip");

    @Test
    void pack(@TempDir Path folder) {
        Path place = folder.resolve("room");
        Store.create(place, CODE, "Europe/London");
        try (Store store = Store.open(place)) {
            for (Line line : lines()) {
                Room room = store.room(TODAY);
                Recording recording = store.record(room, List.of(line), TODAY, NOW);
                assertThat(recording)
                        .as("%s: %s", Lines.write(line), InMemory.said(recording))
                        .isInstanceOf(Recording.Done.class);
            }
        }
        zip(place);
        assertThat(ZIP).isNotEmptyFile();
    }

    /** Unpacks the room of the first version, and hands out where it now lies. */
    public static Path unpack(Path folder) {
        try (ZipInputStream zip = new ZipInputStream(resource("first-schema.zip"))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path file = folder.resolve("room").resolve(entry.getName());
                if (entry.isDirectory()) {
                    Files.createDirectories(file);
                } else {
                    Files.createDirectories(file.getParent());
                    Files.copy(zip, file);
                }
            }
            return folder.resolve("room");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void zip(Path place) {
        try (OutputStream out = Files.newOutputStream(ZIP);
                ZipOutputStream zip = new ZipOutputStream(out);
                Stream<Path> all = Files.walk(place)) {
            for (Path each : all.sorted().toList()) {
                String name = place.relativize(each).toString().replace('\\', '/');
                if (Files.isDirectory(each) && !name.isEmpty()) {
                    zip.putNextEntry(new ZipEntry(name + "/"));
                } else if (Files.isRegularFile(each) && !name.endsWith(".lck")) {
                    zip.putNextEntry(new ZipEntry(name));
                    Files.copy(each, zip);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Line> lines() {
        try (InputStream in = resource("first-schema.jsonl")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(text -> ((Lines.Understood) Lines.read(text, TODAY)).line())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static InputStream resource(String name) {
        InputStream in = FirstSchema.class.getResourceAsStream(name);
        assertThat(in).as(name).isNotNull();
        return in;
    }
}
