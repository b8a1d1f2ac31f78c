package org.cagewall.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Starts the jar that is handed out, on a machine that knows nothing of it, and looks into its parts. */
class JarSmokeIT {

    private static final Path JAR = Path.of(System.getProperty("cagewall.jar", "target/cagewall.jar"));
    private static JarFile jar;

    @BeforeAll
    static void open() throws IOException {
        jar = new JarFile(JAR.toFile());
    }

    @AfterAll
    static void close() throws IOException {
        jar.close();
    }

    @Test
    void theJarTellsItsVersionAndLeavesAnEmptyHomeEmpty(@TempDir Path home) throws Exception {
        ProcessBuilder start = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Duser.home=" + home,
                        "-jar",
                        JAR.toAbsolutePath().toString(),
                        "--version")
                .directory(home.toFile())
                .redirectErrorStream(true);
        start.environment().put("HOME", home.toString());
        start.environment().remove("DISPLAY");

        Process process = start.start();
        process.getOutputStream().close();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);

        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).as(said).isZero();
        assertThat(said.strip()).matches("cagewall \\d+\\.\\d+\\.\\d+\\S*");
        assertThat(home).isEmptyDirectory();
    }

    @Test
    void everyServiceThatALibraryOffersIsListedAndIsThere() throws Exception {
        assertThat(text("META-INF/services/org.slf4j.spi.SLF4JServiceProvider"))
                .contains("org.slf4j.jul.JULServiceProvider");
        assertThat(text("META-INF/services/java.sql.Driver")).contains("org.apache.derby.iapi.jdbc.AutoloadedDriver");
        assertThat(text("META-INF/services/org.flywaydb.core.extensibility.Plugin"))
                .contains("org.flywaydb.core.")
                .contains("org.flywaydb.database.derby.DerbyDatabaseType");

        try (URLClassLoader alone =
                new URLClassLoader(new URL[] {JAR.toUri().toURL()}, ClassLoader.getPlatformClassLoader())) {
            for (String provider : providers()) {
                assertThat(Class.forName(provider, false, alone)).hasToString("class " + provider);
            }
        }
    }

    @Test
    void theLicencesOfAllPartsComeAlong() throws IOException {
        assertThat(text("META-INF/LICENSE"))
                .startsWith(Files.readString(Path.of("LICENSE")).stripTrailing())
                .contains("PDFBox");
        assertThat(text("META-INF/LICENSE.txt")).contains("QOS.ch").contains("Red Gate");
        assertThat(text("META-INF/NOTICE")).contains("Apache Derby").contains("PDFBox");
        assertThat(text("META-INF/NOTICE.txt")).contains("Apache Commons Logging");
        assertThat(text("META-INF/licences/miglayout.txt")).contains("Redistributions in binary form");
        assertThat(text("com/formdev/flatlaf/fonts/inter/LICENSE.txt")).contains("SIL OPEN FONT LICENSE");
        assertThat(text("META-INF/THIRD-PARTY.txt"))
                .contains("org.apache.derby:derby:")
                .contains("com.miglayout:miglayout-swing:")
                .doesNotContain("junit");
    }

    @Test
    void everySheetOfCardsThatTheProjectKnowsIsInTheJar() throws IOException {
        Path labels = Path.of("labels");
        try (Stream<Path> files = Files.walk(labels)) {
            List<Path> sheets = files.filter(Files::isRegularFile).toList();
            assertThat(sheets).isNotEmpty();
            for (Path sheet : sheets) {
                assertThat(text("labels/" + labels.relativize(sheet).toString().replace('\\', '/')))
                        .isEqualTo(Files.readString(sheet));
            }
        }
    }

    @Test
    void classesForNewerJavaAreFoundAndSignaturesOfThePartsAreGone() throws IOException {
        assertThat(jar.getManifest().getMainAttributes().getValue("Multi-Release"))
                .isEqualTo("true");
        assertThat(jar.stream().map(ZipEntry::getName)).noneMatch(name -> name.matches("META-INF/.*\\.(SF|DSA|RSA)"));
    }

    private static List<String> providers() {
        return jar.stream()
                .filter(entry -> entry.getName().startsWith("META-INF/services/") && !entry.isDirectory())
                .flatMap(entry -> text(entry.getName()).lines())
                .map(line -> line.replaceFirst("#.*", "").strip())
                .filter(line -> !line.isEmpty())
                .distinct()
                .toList();
    }

    private static String text(String name) {
        ZipEntry entry = jar.getEntry(name);
        assertThat(entry).as(name).isNotNull();
        try (InputStream in = jar.getInputStream(entry)) {
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }
}
