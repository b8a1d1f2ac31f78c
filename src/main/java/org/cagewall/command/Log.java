package org.cagewall.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.logging.ErrorManager;
import java.util.logging.FileHandler;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogManager;
import java.util.logging.Logger;

/**
 * The one place where logging is set up: everything that the program and its libraries have to say goes to a few files
 * of bounded size in the data folder, and nothing to the console. Belongs to the thread that runs the command; the
 * files may be written to by any.
 */
final class Log implements AutoCloseable {

    private static final int MOST_BYTES = 500_000;
    private static final int FILES = 4;
    private static final String NAME = "cagewall";

    /** Flyway warns of an update that found no rows, which is no trouble: "no data" in the SQL standard (ISO/IEC 9075-2). */
    private static final String NO_ROWS = "SQL State: 02000";

    private Optional<Handler> files = Optional.empty();
    private String name = "-";

    private Log() {}

    /** A log that keeps nothing yet, because no folder has been opened. */
    static Log silent() {
        LogManager.getLogManager().reset();
        return new Log();
    }

    /** From now on the log is kept in this folder, which must be there. */
    void openIn(Path folder) {
        close();
        try {
            String place = folder.toAbsolutePath().toString().replace("%", "%%");
            FileHandler handler = new FileHandler(place + "/" + NAME + ".%g.log", MOST_BYTES, FILES, true);
            handler.setEncoding(StandardCharsets.UTF_8.name());
            handler.setFormatter(new WithoutContent());
            handler.setErrorManager(new Unheard());
            handler.setLevel(Level.INFO);
            handler.setFilter(entry -> !String.valueOf(entry.getMessage()).contains(NO_ROWS));
            Logger root = Logger.getLogger("");
            root.setLevel(Level.INFO);
            root.addHandler(handler);
            files = Optional.of(handler);
            name = folder.toAbsolutePath().resolve(NAME + ".0.log").toString();
        } catch (IOException e) {
            name = "-";
        }
    }

    /** A failure before any folder was opened is kept among the machine's temporary files. */
    void openSomewhere() {
        if (files.isEmpty()) {
            try {
                openIn(Files.createTempDirectory("cagewall-log"));
            } catch (IOException e) {
                name = "-";
            }
        }
    }

    /** A log that cannot be written to, as on a full disk, is no reason to fill the console with stacks. */
    private static final class Unheard extends ErrorManager {

        @Override
        public void error(String said, Exception failure, int code) {}
    }

    /** The file to look into; a dash when none could be written. */
    String name() {
        return name;
    }

    @Override
    public void close() {
        files.ifPresent(handler -> {
            Logger.getLogger("").removeHandler(handler);
            handler.close();
        });
        files = Optional.empty();
    }
}
