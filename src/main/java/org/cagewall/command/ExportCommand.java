package org.cagewall.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.desk.Book;
import org.cagewall.desk.Head;
import org.cagewall.files.Export;
import org.cagewall.room.care.LogQuery;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Writes the whole record in open forms. */
@Command(
        name = "export",
        header = "Writes the whole record into a folder: its lines, tables for a spreadsheet, a calendar.",
        description = "The lines can be recorded anew. To get the very same room back, use backup and restore.")
final class ExportCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "DIR", description = "Where the files go; older ones there are replaced.")
    private Path folder;

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::export);
    }

    private int export(AtDesk desk) {
        Head head = desk.read(book -> write(desk, book))
                .orElseThrow(() -> Refusal.of("command.not-written", Cagewall.shown(folder)));
        cagewall.answer(
                Json.object().with("folder", Cagewall.shown(folder)).with("entries", head.entries()),
                "command.exported",
                head.entries(),
                Cagewall.shown(folder));
        return Main.DONE;
    }

    /** How far the written record goes; nothing, where it could not be written. */
    private Optional<Head> write(AtDesk desk, Book book) {
        try {
            Export.write(
                    folder,
                    book::exportedLines,
                    book.everything(desk.today()),
                    desk.room(),
                    book.log(LogQuery.newest(Integer.MAX_VALUE)),
                    cagewall.console().words()::say);
            return Optional.of(book.head());
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
