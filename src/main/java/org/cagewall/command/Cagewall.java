package org.cagewall.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;

/** What all commands share: the options that stand before or after them, and the way to the desk. One command a run. */
@Command(
        name = "cagewall",
        mixinStandardHelpOptions = true,
        scope = ScopeType.INHERIT,
        versionProvider = ReleasedVersion.class,
        usageHelpWidth = 100,
        sortOptions = false,
        header = "The record and the kiosk of a birdroom.",
        subcommands = {
            KioskCommand.class,
            DemoCommand.class,
            RecordCommand.class,
            CheckCommand.class,
            CardsCommand.class,
            ScanCommand.class,
            TasksCommand.class,
            ShowCommand.class,
            AheadCommand.class,
            ReviewCommand.class,
            ExportCommand.class,
            BackupCommand.class,
            RestoreCommand.class,
            VerifyCommand.class,
            ReportCommand.class
        })
final class Cagewall implements Callable<Integer> {

    private final Console console;
    private final Clocks clocks;
    private final Log log;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            scope = ScopeType.INHERIT,
            description = "The folder of the birdroom; .cagewall in your home folder if left out.")
    private Optional<Path> data;

    @Option(
            names = "--today",
            paramLabel = "DATE",
            scope = ScopeType.INHERIT,
            description = "What today means, such as 2026-04-14.")
    private Optional<LocalDate> today;

    @Option(names = "--json", scope = ScopeType.INHERIT, description = "Print JSON instead of sentences.")
    private boolean json;

    Cagewall(Console console, Clocks clocks, Log log) {
        this.console = console;
        this.clocks = clocks;
        this.log = log;
    }

    @Mixin
    private KioskOptions kiosk;

    @Override
    public Integer call() {
        return new Opening(this, kiosk).open();
    }

    /** Whether options of the kiosk stand where only those for all commands may. */
    boolean hasStrayKioskOptions() {
        return kiosk.areGiven();
    }

    Console console() {
        return console;
    }

    Log log() {
        return log;
    }

    Path data() {
        return data.orElseGet(() -> Path.of(System.getProperty("user.home"), ".cagewall"));
    }

    boolean wantsJson() {
        return json;
    }

    boolean todayIsSet() {
        return today.isPresent();
    }

    Clocks clocks() {
        return today.map(clocks::withToday).orElse(clocks);
    }

    /** Opens the birdroom that must be there, lends its desk and closes it again. */
    <T> T inTheRoom(Function<AtDesk, T> work) {
        if (!holdsARoom(data())) {
            throw Refusal.of("store.missing", shown(data()));
        }
        return inARoom(work);
    }

    /** The same, but makes a birdroom where there is none. */
    <T> T inARoom(Function<AtDesk, T> work) {
        return inARoom(data(), work);
    }

    <T> T inARoom(Path folder, Function<AtDesk, T> work) {
        try (Desk desk = Desk.open(folder(folder), Lanes.inline(), clocks())) {
            return work.apply(new AtDesk(desk, console::note));
        } catch (Desk.Unopened e) {
            throw new Refusal(e.why());
        } catch (DataFolder.Unavailable e) {
            throw new Refusal(e.why());
        }
    }

    /** Whether there is a birdroom in the folder; one that cannot be looked into ends the command. */
    boolean holdsARoom(Path folder) {
        try {
            return DataFolder.holdsARoom(folder);
        } catch (DataFolder.Unavailable e) {
            throw new Refusal(e.why());
        }
    }

    /** Opens a data folder, from where on the log is kept there. */
    DataFolder folder(Path path) {
        try {
            DataFolder folder = DataFolder.open(path);
            log.openIn(folder.logs());
            return folder;
        } catch (DataFolder.Unavailable e) {
            throw new Refusal(e.why());
        }
    }

    /** Answers with the object where JSON is wanted, else with the sentence. */
    void answer(Json object, String key, Object... args) {
        if (json) {
            console.print(object.line());
        } else {
            console.say(key, args);
        }
    }

    /** A path as a sentence shows it. */
    static String shown(Path path) {
        return path.toAbsolutePath().normalize().toString();
    }
}
