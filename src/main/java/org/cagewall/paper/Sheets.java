package org.cagewall.paper;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.cagewall.text.Message;

/**
 * Finds the sheets that cards can be printed on: those that come with the program, and those of the keeper's own
 * folder, where a file of the same name wins. Immutable; any thread, though it reads files.
 */
public final class Sheets {

    /** The sheets in the project's folder labels; the first is used when nothing is chosen. */
    public static final List<String> BUILT_IN =
            List.of("a4-85x54", "letter-4x2in", "a4-99x68", "a4-64x38", "a6-105x148", "roll-100x60");

    private static final String ENDING = ".txt";
    private static final int MOST_BYTES = 64 * 1024;

    private final Optional<Path> folder;
    private final Demand demand;

    private Sheets(Optional<Path> folder, Demand demand) {
        this.folder = folder;
        this.demand = demand;
    }

    /** The sheets that come with the program, where their cards are as is demanded. */
    public static Sheets builtIn(Demand demand) {
        return new Sheets(Optional.empty(), demand);
    }

    /** The sheets that come with the program and those in the folder, which need not exist. */
    public static Sheets with(Path folder, Demand demand) {
        return new Sheets(Optional.of(folder), demand);
    }

    /** The names that can be asked for: the program's, then the keeper's own in alphabetical order. */
    public List<String> names() {
        Set<String> names = new LinkedHashSet<>(BUILT_IN);
        folder.filter(Files::isDirectory).ifPresent(present -> names.addAll(namesIn(present)));
        return List.copyOf(names);
    }

    /** The sheet of this name, or why it cannot be used. */
    public Found find(String name) {
        if (!names().contains(name)) {
            return new Refused(Message.of("paper.sheet.unknown", name, names()));
        }
        Optional<Path> own =
                folder.map(present -> present.resolve(name + ENDING)).filter(Files::exists);
        try {
            String text = own.isPresent() ? read(own.get()) : readBuiltIn(name);
            return SheetFile.read(name, own.map(Path::toString).orElse(name + ENDING), text, demand);
        } catch (CharacterCodingException e) {
            return new Refused(Message.of("paper.sheet.not-text", name + ENDING));
        } catch (IOException e) {
            return new Refused(Message.of("paper.sheet.unreadable", name + ENDING));
        }
    }

    private static List<String> namesIn(Path folder) {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*" + ENDING)) {
            SortedSet<String> names = new TreeSet<>();
            for (Path file : files) {
                String name = file.getFileName().toString();
                names.add(name.substring(0, name.length() - ENDING.length()));
            }
            return List.copyOf(names);
        } catch (IOException e) {
            return List.of();
        }
    }

    private static String read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException("too long for a sheet file");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        }
    }

    private static String readBuiltIn(String name) throws IOException {
        try (InputStream in = Sheets.class.getResourceAsStream("/labels/" + name + ENDING)) {
            if (in == null) {
                throw new IOException("the program comes without its sheet " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** What came of looking for a sheet. Immutable; any thread. */
    public sealed interface Found permits Usable, Refused {

        /** The sheet, when it can be used. */
        default Optional<Sheet> sheet() {
            return Optional.empty();
        }

        /** Why it cannot be used. */
        default Optional<Message> reason() {
            return Optional.empty();
        }
    }

    /** A sheet on which the cards fit. */
    public record Usable(Sheet found) implements Found {

        @Override
        public Optional<Sheet> sheet() {
            return Optional.of(found);
        }
    }

    /** No such sheet, or one that cannot be used. */
    public record Refused(Message why) implements Found {

        @Override
        public Optional<Message> reason() {
            return Optional.of(why);
        }
    }
}
