package org.cagewall.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** Tells which version this is, as the build wrote it down. Any thread. */
final class ReleasedVersion implements IVersionProvider {

    @Override
    public String[] getVersion() {
        Properties written = new Properties();
        try (InputStream in = Main.class.getResourceAsStream("/org/cagewall/version.properties")) {
            written.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new String[] {"cagewall " + written.getProperty("version")};
    }
}
