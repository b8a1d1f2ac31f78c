package org.cagewall.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Task;
import org.cagewall.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Prints a day's list. */
@Command(name = "tasks", header = "Prints the list of a day, for the owner or for the sitter.")
final class TasksCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Option(names = "--on", paramLabel = "DATE", description = "The day; today if left out.")
    private Optional<LocalDate> on;

    @Option(
            names = "--for",
            paramLabel = "WHOM",
            converter = AudienceWord.class,
            description = "owner or sitter; the owner if left out.")
    private Audience audience = Audience.OWNER;

    @Option(
            names = "--lang",
            paramLabel = "LANG",
            description = "The language of the sentences: ${COMPLETION-CANDIDATES}.")
    private Language language = Language.en;

    /** The languages in which there are sentences, as they are typed. */
    enum Language {
        en
    }

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::list);
    }

    private int list(AtDesk desk) {
        LocalDate date = on.orElse(desk.today());
        Room room = date.equals(desk.today()) ? desk.room() : desk.read(book -> book.everything(desk.today()));
        List<Task> tasks = DailyList.of(room, date, audience);
        if (cagewall.wantsJson()) {
            cagewall.console().print(Json.line(tasks.stream().map(this::json).toList()));
        } else if (tasks.isEmpty()) {
            cagewall.console().say("command.tasks-none", date);
        } else {
            tasks.forEach(task -> cagewall.console().print(line(task)));
        }
        return Main.DONE;
    }

    private String line(Task task) {
        Words words = words();
        String what = task.cage()
                .map(cage -> words.say("command.task.at", cage, task.words()))
                .orElse(words.say(task.words()));
        String seen =
                task.see().map(see -> words.say("command.task.see", what, see)).orElse(what);
        String said = task.isOpen() ? said(task, seen) : seen;
        return words.say("command.task." + state(task), said);
    }

    private String said(Task task, String seen) {
        List<String> how = task.how().stream().map(words()::say).toList();
        return how.isEmpty() ? seen : words().say("command.task.how", seen, String.join(" ", how));
    }

    private static String state(Task task) {
        return switch (task.state()) {
            case OPEN -> task.late() ? "late" : "open";
            case DONE -> "done";
            case NOT_DONE -> "not-done";
        };
    }

    private Json json(Task task) {
        Words words = words();
        return Json.object()
                .with("task", task.id())
                .with("cage", task.cage())
                .with("kind", task.kind().word())
                .with("due", task.due())
                .with("late", task.late())
                .with("words", words.say(task.words()))
                .with("see", task.see().map(words::say))
                .with("why", words.say(task.why()))
                .with("how", task.how().stream().map(words::say).toList())
                .with("when", task.part())
                .with("state", task.state())
                .with("closed", task.closing().map(TasksCommand::json));
    }

    private static Json json(Task.Closing closing) {
        return Json.object()
                .with("entry", closing.entry())
                .with("by", closing.person())
                .with("at", closing.at())
                .with("answer", closing.answer())
                .with("how", closing.how())
                .with("why", closing.why())
                .with("signs", closing.signs());
    }

    private Words words() {
        return switch (language) {
            case en -> cagewall.console().words();
        };
    }
}
