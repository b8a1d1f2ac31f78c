package org.cagewall.command;

import java.util.concurrent.Callable;
import org.cagewall.room.Cage;
import org.cagewall.room.care.LogQuery;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Tells what a cage's page shows. */
@Command(name = "show", header = "Tells what a cage's page shows.")
final class ShowCommand implements Callable<Integer> {

    private static final int ENTRIES = 12;

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "CAGE", description = "The cage's name.")
    private String name;

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::show);
    }

    private int show(AtDesk desk) {
        Cage cage = desk.cage(name);
        ShownCage shown = ShownCage.of(
                desk.room(),
                cage,
                desk.log(LogQuery.newest(ENTRIES).ofCage(cage.id())),
                cagewall.console().words());
        if (cagewall.wantsJson()) {
            cagewall.console().print(shown.json().line());
        } else {
            shown.lines().forEach(cagewall.console()::print);
        }
        return Main.DONE;
    }
}
