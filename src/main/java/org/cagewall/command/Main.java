package org.cagewall.command;

import java.time.LocalDate;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.Failures;
import org.cagewall.text.Message;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/** The way in from the command line. Runs on the thread that the process starts with. */
public final class Main {

    static final int DONE = 0;
    static final int REFUSED = 1;
    static final int WRONG_USAGE = 2;
    static final int FAILED = 3;
    static final int NO_DISPLAY = 4;

    private Main() {}

    public static void main(String[] args) {
        Console console = Console.ofTheProcess();
        int code = run(console, Clocks.system(), ProcessArguments.asTyped(args));
        console.flush();
        System.exit(code);
    }

    /** Carries out one command and hands back how it ended; nothing that goes wrong gets further than this. */
    static int run(Console console, Clocks clocks, String... args) {
        Log log = Log.silent();
        Cagewall cagewall = new Cagewall(console, clocks, log);
        try {
            return commandLine(cagewall, console).execute(args);
        } catch (RuntimeException | Error e) {
            return failed(console, log, e);
        } finally {
            log.close();
        }
    }

    private static CommandLine commandLine(Cagewall cagewall, Console console) {
        return new CommandLine(cagewall)
                .registerConverter(LocalDate.class, new DayWord())
                .setOut(console.outWriter())
                .setErr(console.errWriter())
                .setColorScheme(CommandLine.Help.defaultColorScheme(Ansi.OFF))
                .setUsageHelpAutoWidth(false)
                .setAllowSubcommandsAsOptionParameters(true)
                .setExitCodeExceptionMapper(e -> FAILED)
                .setExecutionStrategy(parsed -> executed(cagewall, parsed))
                .setParameterExceptionHandler((wrong, args) -> wrongUsage(console, wrong))
                .setExecutionExceptionHandler((e, line, parsed) -> ended(console, cagewall.log(), e));
    }

    private static int executed(Cagewall cagewall, ParseResult parsed) {
        if (parsed.hasSubcommand() && cagewall.hasStrayKioskOptions()) {
            throw new ParameterException(
                    parsed.commandSpec().commandLine(), "--window and --demo belong after the word kiosk");
        }
        return new CommandLine.RunLast().execute(parsed);
    }

    private static int wrongUsage(Console console, ParameterException wrong) {
        String said = wrong.getMessage().lines().findFirst().orElse("").strip();
        console.complain(Message.of(
                "command.usage", said, wrong.getCommandLine().getCommandSpec().qualifiedName()));
        return WRONG_USAGE;
    }

    private static int ended(Console console, Log log, Exception e) {
        if (e instanceof Refusal refusal) {
            console.complain(refusal.why());
            return REFUSED;
        }
        if (e instanceof Broken broken) {
            console.complain(broken.said(log.name()));
            return FAILED;
        }
        return failed(console, log, e);
    }

    private static int failed(Console console, Log log, Throwable failure) {
        log.openSomewhere();
        String code = new Failures().keep("command", failure);
        console.complain(Message.of("command.failed", code, log.name()));
        return FAILED;
    }
}
