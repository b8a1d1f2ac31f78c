package org.cagewall.command;

import java.io.IOException;
import java.time.Instant;
import java.util.HashSet;
import java.util.Set;
import java.util.logging.Formatter;
import java.util.logging.LogRecord;

/**
 * Writes a line of the log, and of a failure only what cannot hold a keeper's words: which kind it was, and where. What
 * a library says of a failure may quote a note or a phone number, so it is left out but for a few kinds that speak of
 * the machine alone. Stateless; any thread.
 */
final class WithoutContent extends Formatter {

    @Override
    public String format(LogRecord entry) {
        StringBuilder text = new StringBuilder();
        text.append(Instant.ofEpochMilli(entry.getMillis()))
                .append(' ')
                .append(entry.getLevel().getName())
                .append(' ')
                .append(entry.getLoggerName())
                .append(": ")
                .append(formatMessage(entry))
                .append('\n');
        if (entry.getThrown() != null) {
            append(text, entry.getThrown(), "", new HashSet<>());
        }
        return text.toString();
    }

    private static void append(StringBuilder text, Throwable failure, String prefix, Set<Throwable> told) {
        if (!told.add(failure)) {
            return;
        }
        text.append(prefix).append(failure.getClass().getName());
        if (speaksOfTheMachine(failure) && failure.getMessage() != null) {
            text.append(": ").append(failure.getMessage().replaceAll("\\R", " "));
        }
        text.append('\n');
        for (StackTraceElement frame : failure.getStackTrace()) {
            text.append("    at ").append(frame).append('\n');
        }
        for (Throwable suppressed : failure.getSuppressed()) {
            append(text, suppressed, "besides: ", told);
        }
        if (failure.getCause() != null) {
            append(text, failure.getCause(), "because of: ", told);
        }
    }

    private static boolean speaksOfTheMachine(Throwable failure) {
        return failure instanceof IOException
                || failure instanceof Error && !(failure instanceof AssertionError)
                || failure instanceof NullPointerException
                || failure instanceof IndexOutOfBoundsException
                || failure.getClass().getName().startsWith("org.cagewall.");
    }
}
