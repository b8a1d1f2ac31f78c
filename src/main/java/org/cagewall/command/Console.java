package org.cagewall.command;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Where a command reads and writes, always in UTF-8 whatever the machine's own settings are: answers to the standard
 * output, reasons to standard error. Used by the thread that runs the command.
 */
record Console(InputStream in, PrintStream out, PrintStream err, Words words) {

    /** Takes over the streams of the process, so that nothing else can write to them in another encoding. */
    static Console ofTheProcess() {
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        System.setOut(out);
        System.setErr(err);
        InputStream in = new BufferedInputStream(new FileInputStream(FileDescriptor.in), 64 * 1024);
        return new Console(in, out, err, Words.english());
    }

    private static PrintStream utf8(FileDescriptor descriptor) {
        return new PrintStream(
                new BufferedOutputStream(new FileOutputStream(descriptor)), false, StandardCharsets.UTF_8);
    }

    /** A line of the answer. The end of a line is a line feed on every machine. */
    void print(String line) {
        out.print(line + "\n");
    }

    void say(String key, Object... args) {
        print(words.say(key, args));
    }

    /** A reason, for a person to read. */
    void complain(Message why) {
        note(why);
    }

    /** What a person who waits or looks on may want to know, and no part of the answer. */
    void note(Message what) {
        out.flush();
        err.print("cagewall: " + words.say(what) + "\n");
        err.flush();
    }

    void flush() {
        out.flush();
        err.flush();
    }

    PrintWriter outWriter() {
        return writer(out);
    }

    PrintWriter errWriter() {
        return writer(err);
    }

    private static PrintWriter writer(PrintStream stream) {
        return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
    }
}
