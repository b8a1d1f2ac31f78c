package org.cagewall.command;

import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The way in from the command line. Runs on the thread that the process starts with. */
@Command(name = "cagewall", mixinStandardHelpOptions = true, versionProvider = ReleasedVersion.class)
public final class Main implements Runnable {

    @Spec
    private CommandSpec spec;

    private Main() {}

    public static void main(String[] args) {
        System.exit(new CommandLine(new Main()).execute(args));
    }

    @Override
    public void run() {
        spec.commandLine().usage(spec.commandLine().getOut());
    }
}
