package org.cagewall.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cagewall.desk.Archive;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Writes a backup of the whole record. */
@Command(name = "backup", header = "Writes a backup of the whole record into a folder.")
final class BackupCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "DIR", description = "Where the backup goes; an older one there is replaced.")
    private Path folder;

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::backUp);
    }

    private int backUp(AtDesk desk) {
        Archive.Kept kept = desk.read(book -> Archive.write(book, folder));
        cagewall.answer(
                Json.object().with("folder", Cagewall.shown(folder)).with("entries", kept.entries()),
                "command.backed-up",
                kept.entries(),
                Cagewall.shown(folder));
        return Main.DONE;
    }
}
