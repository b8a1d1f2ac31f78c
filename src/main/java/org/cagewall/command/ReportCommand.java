package org.cagewall.command;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.desk.Book;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Head;
import org.cagewall.desk.Lanes;
import org.cagewall.text.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Collects what a helper needs to know of a trouble, and nothing that a keeper wrote. */
@Command(
        name = "report",
        header = "Collects the log, versions and how far the record goes into a folder.",
        description = "Nothing of what the record says is in it: no names, notes or phone numbers.")
final class ReportCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "DIR", description = "Where the report goes.")
    private Path folder;

    @Override
    public Integer call() {
        if (!cagewall.holdsARoom(cagewall.data())) {
            throw Refusal.of("store.missing", Cagewall.shown(cagewall.data()));
        }
        DataFolder data = cagewall.folder(cagewall.data());
        Path logs = data.logs();
        Optional<Head> head = head(data);
        try {
            Files.createDirectories(folder);
            Files.writeString(
                    folder.resolve("report.txt"), String.join("\n", lines(head)) + "\n", StandardCharsets.UTF_8);
            copyLogs(logs);
        } catch (IOException e) {
            throw Refusal.of("command.not-written", Cagewall.shown(folder));
        }
        cagewall.answer(
                Json.object()
                        .with("folder", Cagewall.shown(folder))
                        .with("entries", head.map(Head::entries))
                        .with("digest", head.map(Head::digest)),
                "command.reported",
                Cagewall.shown(folder));
        return Main.DONE;
    }

    /** How far the record goes; a record that cannot be opened is a reason to report, not against it. */
    private Optional<Head> head(DataFolder data) {
        try (Desk desk = Desk.open(data, Lanes.inline(), cagewall.clocks())) {
            return Optional.of(new AtDesk(desk, why -> {}).read(Book::head));
        } catch (Desk.Unopened e) {
            cagewall.console().complain(e.why());
            return Optional.empty();
        }
    }

    private static List<String> lines(Optional<Head> head) {
        return List.of(
                String.join(" ", new ReleasedVersion().getVersion()),
                "Java " + System.getProperty("java.version") + " of " + System.getProperty("java.vendor"),
                System.getProperty("os.name") + " " + System.getProperty("os.version") + ", "
                        + System.getProperty("os.arch"),
                "entries " + head.map(it -> Long.toString(it.entries())).orElse("not known"),
                "digest " + head.map(Head::digest).orElse("not known"));
    }

    private void copyLogs(Path logs) throws IOException {
        try (DirectoryStream<Path> files = Files.newDirectoryStream(logs, "*.log")) {
            for (Path file : files) {
                copyLog(file);
            }
        }
    }

    /** A log that cannot be read is no reason to be without the others. */
    private void copyLog(Path file) throws IOException {
        try (InputStream log = Files.newInputStream(file)) {
            Files.copy(log, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
        } catch (NoSuchFileException | AccessDeniedException e) {
            cagewall.console().note(Message.of("command.log-unread", Cagewall.shown(file)));
        }
    }
}
