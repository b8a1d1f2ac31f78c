package org.cagewall.command;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
import org.cagewall.files.InputLine;
import org.cagewall.files.InputLines;
import org.cagewall.text.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Records one deed a line and answers each line with one line. */
@Command(
        name = "record",
        header = "Records one deed a line; the lines come from a file or from standard input.",
        description = "Answers each line, after it is on the disk, with \"ok ENTRY\" or \"refused LINE: reason\".")
final class RecordCommand implements Callable<Integer> {

    private static final Path STANDARD_INPUT = Path.of("-");

    /** The word that begins an answer may not come again in it, whatever a keeper has named a cage. */
    private static final Pattern MARK = Pattern.compile("(?i)(re)(fused)");

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "FILE", arity = "0..1", description = "The file; - or nothing for standard input.")
    private Optional<Path> file;

    @Override
    public Integer call() {
        try (InputStream in = input()) {
            return cagewall.inARoom(desk -> recordAll(desk, new InputLines(in, InputLines.MOST_BYTES)));
        } catch (IOException e) {
            throw Refusal.of("command.not-read", shownFile());
        }
    }

    private InputStream input() throws IOException {
        Path path = file.orElse(STANDARD_INPUT);
        if (path.equals(STANDARD_INPUT)) {
            return cagewall.console().in();
        }
        if (!Files.isReadable(path) || Files.isDirectory(path)) {
            throw Refusal.of("command.not-read", shownFile());
        }
        return new BufferedInputStream(Files.newInputStream(path), InputLines.MOST_BYTES);
    }

    private int recordAll(AtDesk desk, InputLines lines) {
        Recorder recorder = new Recorder(desk);
        int code = Main.DONE;
        Optional<InputLine> next = next(lines);
        while (next.isPresent()) {
            code = Math.max(code, record(recorder, next.get()));
            next = next(lines);
        }
        return code;
    }

    private Optional<InputLine> next(InputLines lines) {
        try {
            return lines.next();
        } catch (IOException e) {
            throw Refusal.of("command.not-read", shownFile());
        }
    }

    private int record(Recorder recorder, InputLine line) {
        if (line instanceof InputLine.NoText not) {
            return refuse(line, not.why());
        }
        Recorder.Result result = recorder.record(((InputLine.Text) line).text());
        if (result instanceof Recorder.Result.Recorded recorded) {
            answer("ok " + recorded.entry());
            return Main.DONE;
        }
        if (result instanceof Recorder.Result.NotRecorded not) {
            return refuse(line, not.why());
        }
        if (result instanceof Recorder.Result.Unwritten unwritten) {
            refuse(
                    line,
                    Message.of(
                            "command.unwritten",
                            unwritten.why(),
                            unwritten.code(),
                            cagewall.log().name()));
            return Main.FAILED;
        }
        String code = ((Recorder.Result.Broke) result).code();
        refuse(line, Message.of("command.failed", code, cagewall.log().name()));
        return Main.FAILED;
    }

    private int refuse(InputLine line, Message why) {
        answer("refused " + line.number() + ": "
                + onOneLine(cagewall.console().words().say(why)));
        return Main.REFUSED;
    }

    /** A reason without line breaks and without the word that begins the answer. */
    static String onOneLine(String reason) {
        String flat = reason.replaceAll("[\\p{Cntrl}\\u0085\\u2028\\u2029]+", " ");
        return MARK.matcher(flat).replaceAll("$1-$2");
    }

    private void answer(String line) {
        cagewall.console().print(line);
        cagewall.console().out().flush();
    }

    private String shownFile() {
        return file.orElse(STANDARD_INPUT).toString();
    }
}
