package org.cagewall.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Starts the runnable jar as a process of its own, with no display and no home but the given one. */
final class Jar {

    private static final Path JAR = Path.of(System.getProperty("cagewall.jar", "target/cagewall.jar"));
    private static final int PATIENCE_SECONDS = 120;

    private final Path home;

    Jar(Path home) {
        this.home = home;
    }

    static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** That of this test, whoever runs it. */
    static String classPath() {
        Stream<String> places = Main.class.getClassLoader() instanceof URLClassLoader loader
                ? Stream.of(loader.getURLs()).map(URL::getPath)
                : Stream.of(System.getProperty("java.class.path").split(File.pathSeparator));
        return places.map(each -> Path.of(each).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    static String path() {
        return JAR.toAbsolutePath().toString();
    }

    ProcessBuilder prepared(String... args) {
        List<String> all = new ArrayList<>(List.of(java(), "-Duser.home=" + home, "-jar", path()));
        all.addAll(Arrays.asList(args));
        ProcessBuilder process = new ProcessBuilder(all).directory(home.toFile());
        process.environment().remove("DISPLAY");
        return process;
    }

    Cli.Ran run(String input, String... args) throws IOException, InterruptedException {
        return ran(prepared(args), input);
    }

    /** Lets it run to its end. What it says must fit into the pipes. */
    static Cli.Ran ran(ProcessBuilder prepared, String input) throws IOException, InterruptedException {
        Process process = prepared.start();
        try (OutputStream in = process.getOutputStream()) {
            in.write(input.getBytes(UTF_8));
        }
        String out = new String(process.getInputStream().readAllBytes(), UTF_8);
        String err = new String(process.getErrorStream().readAllBytes(), UTF_8);
        if (!process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IllegalStateException("still running: " + prepared.command());
        }
        return new Cli.Ran(process.exitValue(), out, err);
    }
}
