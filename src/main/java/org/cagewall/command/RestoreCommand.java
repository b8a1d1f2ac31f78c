package org.cagewall.command;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.cagewall.desk.Archive;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.text.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Makes the birdroom of a backup in a data folder that has none. */
@Command(
        name = "restore",
        header = "Makes the birdroom of a backup in a data folder that has none yet.",
        description = "Every entry keeps its number, the moment it was recorded, and its digest.")
final class RestoreCommand implements Callable<Integer> {

    private static final int ENTRIES_A_LINE = 1_000;

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "DIR", description = "The folder that holds the backup.")
    private Path backup;

    @Override
    public Integer call() {
        try {
            Archive.requireBackup(backup);
            return restore();
        } catch (Desk.Unopened e) {
            throw new Refusal(e.why());
        } catch (DataFolder.Unavailable e) {
            throw new Refusal(e.why());
        }
    }

    /** A large record takes minutes; whoever waits is to see that it goes on. */
    private void tell(long entries, long ofAll) {
        if (entries % ENTRIES_A_LINE == 0 && entries < ofAll) {
            cagewall.console().note(Message.of("command.restoring", entries, ofAll));
        }
    }

    private int restore() {
        try (DataFolder folder = cagewall.folder(cagewall.data())) {
            Archive.Kept kept = Archive.restore(backup, folder, cagewall.clocks(), this::tell);
            cagewall.answer(
                    Json.object()
                            .with("folder", Cagewall.shown(cagewall.data()))
                            .with("entries", kept.entries()),
                    "command.restored",
                    kept.entries(),
                    Cagewall.shown(cagewall.data()));
            return Main.DONE;
        }
    }
}
