package org.cagewall.command;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * The words of the command line as they were typed. Where the machine's language setting is not UTF-8, Java replaces
 * letters with accents by question marks; Linux still has them. Stateless; any thread.
 */
final class ProcessArguments {

    private static final Path OF_THIS_PROCESS = Path.of("/proc/self/cmdline");

    private ProcessArguments() {}

    static String[] asTyped(String[] args) {
        boolean utf8 = Charset.defaultCharset().equals(StandardCharsets.UTF_8)
                && StandardCharsets.UTF_8.name().equalsIgnoreCase(System.getProperty("sun.jnu.encoding"));
        if (utf8 || Arrays.stream(args).noneMatch(ProcessArguments::isDamaged) || !Files.isReadable(OF_THIS_PROCESS)) {
            return args;
        }
        try {
            return mended(args, new String(Files.readAllBytes(OF_THIS_PROCESS), StandardCharsets.UTF_8));
        } catch (IOException e) {
            return args;
        }
    }

    /**
     * The words as the system tells them.
     *
     * @param told all words the process was started with, each ended by a NUL; the last ones are ours
     */
    static String[] mended(String[] args, String told) {
        String[] all = told.split("\0", -1);
        int first = all.length - 1 - args.length;
        if (first < 0) {
            return args;
        }
        return IntStream.range(0, args.length)
                .mapToObj(i -> isDamaged(args[i]) ? all[first + i] : args[i])
                .toArray(String[]::new);
    }

    private static boolean isDamaged(String arg) {
        return arg.chars().anyMatch(c -> c == '?' || c == '\uFFFD');
    }
}
