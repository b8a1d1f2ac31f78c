package org.cagewall.kiosk.setup;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.desk.Archive;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Reading;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Has a backup written into the data folder, named by its day. Used on the event thread; the work is done aside. */
final class BackupPresenter {

    private static final int MOST_SHOWN = 6;

    private final Desk desk;
    private final Notices notices;
    private final Words words;
    private final Path folder;
    private final Refresher watch;
    private final Shown<BackupState> shown;

    BackupPresenter(Desk desk, Notices notices, Words words, Consumer<BackupState> view) {
        this.desk = desk;
        this.notices = notices;
        this.words = words;
        this.folder = desk.folder().path().resolve("backups");
        this.watch = new Refresher(desk, this::look);
        this.shown = new Shown<>(
                new BackupState(
                        folder.toString(),
                        List.of(),
                        Optional.empty(),
                        BackupState.Work.NONE,
                        Optional.empty(),
                        Optional.empty()),
                view);
    }

    Refresher watch() {
        return watch;
    }

    void backUp() {
        if (shown.now().work() == BackupState.Work.WRITING) {
            return;
        }
        Path target = folder.resolve("backup-" + desk.today());
        shown.change(BackupState::writing);
        desk.work(book -> Archive.write(book, target), answer -> follow(answer, target));
    }

    private void follow(Reading<Archive.Kept> answer, Path target) {
        answer.then(
                kept -> {
                    shown.change(state -> state.saying(words.say(
                            "setup.backed-up",
                            kept.entries(),
                            target.getFileName().toString())));
                    look();
                },
                this::refused,
                this::failed);
    }

    private void refused(Message why) {
        shown.change(state -> state.wrong(words.sentence(why)));
    }

    private void failed(String code) {
        shown.change(BackupState::atRest);
        notices.failed(code);
    }

    private void look() {
        desk.work(
                book -> kept(),
                answer -> answer.then(
                        names -> shown.change(state -> state.having(names)), this::refused, notices::failed));
        desk.space(space -> shown.change(state -> state.leaving(words.say("setup.space-left", space.megabytes()))));
    }

    private List<String> kept() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isDirectory)
                    .map(path -> path.getFileName().toString())
                    .sorted(Comparator.reverseOrder())
                    .limit(MOST_SHOWN)
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
