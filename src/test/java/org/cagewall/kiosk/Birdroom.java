package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.Outcome;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Screen;
import org.cagewall.kiosk.shell.Screens;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Words;

/** A real birdroom on the disk and its screens painted with no window: what is pressed is read back from the record. */
public final class Birdroom implements AutoCloseable {

    public static final LocalDate TODAY = LocalDate.of(2026, 4, 14);
    public static final Words WORDS = Words.english();

    private static final List<String> FURNITURE = furniture();

    private static List<String> furniture() {
        List<String> lines = new ArrayList<>("""
                {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
                {"deed":"person-added","person":"Tomas","role":"sitter","phone":"0555 0177","by":"Ines"}
                {"deed":"wall-added","wall":"North wall","rows":3,"columns":6,"by":"Ines"}
                {"deed":"wall-added","wall":"South wall","rows":1,"columns":2,"by":"Ines"}
                """.lines().toList());
        for (String row : List.of("A", "B", "C")) {
            for (int column = 1; column <= 6; column++) {
                if (!(row + column).equals("C6")) {
                    lines.add("{\"deed\":\"cage-added\",\"cage\":\"" + row + column
                            + "\",\"wall\":\"North wall\",\"row\":" + (row.charAt(0) - 'A' + 1) + ",\"column\":"
                            + column
                            + ",\"use\":\"" + (row.equals("C") ? "stock" : "breeding") + "\",\"by\":\"Ines\"}");
                }
            }
        }
        lines.addAll("""
                {"deed":"cage-added","cage":"Flight 1","wall":"South wall","row":1,"column":1,"use":"flight","keeps":"mixed","by":"Ines"}
                {"deed":"bird-added","bird":"HB 26-041","sex":"cock","cage":"C1","hatched":"2025-03-02","colour":"light green","origin":"own","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-117","sex":"hen","cage":"C2","hatched":"2024","colour":"grey","by":"Ines"}
                {"deed":"bird-added","bird":"HB 24-008","sex":"cock","cage":"C1","hatched":"2023","colour":"sky blue","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-060","sex":"hen","cage":"C2","hatched":"2024","colour":"light green","by":"Ines"}
                {"deed":"bird-added","bird":"HB 26-050","sex":"unknown","cage":"Flight 1","hatched":"2026-02-20","colour":"grey","father":"HB 24-008","mother":"HB 25-060","by":"Ines"}
                {"deed":"bird-added","bird":"HB 26-051","sex":"hen","cage":"Flight 1","hatched":"2026-02-22","colour":"cobalt","father":"HB 24-008","mother":"HB 25-060","by":"Ines"}
                {"deed":"bird-added","bird":"HB 24-019","sex":"cock","cage":"Flight 1","hatched":"2023","colour":"opaline grey","by":"Ines"}
                {"deed":"bird-added","bird":"HB 24-030","sex":"cock","cage":"Flight 1","hatched":"2023","colour":"lutino","by":"Ines"}
                {"deed":"bird-named","bird":"HB 24-019","name":"Pip","by":"Ines"}
                {"deed":"birds-added","count":6,"cage":"Flight 1","by":"Ines"}
                {"deed":"paired-up","cage":"A1","cock":"HB 26-041","hen":"HB 25-117","on":"2026-03-20","by":"Ines"}
                {"deed":"bird-looked-over","bird":"HB 25-117","condition":"fit","weight":44,"on":"2026-03-20","by":"Ines"}
                {"deed":"card-printed","cage":"A1","on":"2026-03-21","by":"Ines"}
                {"deed":"card-printed","cage":"A2","on":"2026-03-21","by":"Ines"}
                {"deed":"card-printed","cage":"A3","on":"2026-03-21","by":"Ines"}
                {"deed":"card-printed","cage":"B1","on":"2026-03-21","by":"Ines"}
                {"deed":"paired-up","cage":"A2","cock":"HB 24-008","hen":"HB 25-060","on":"2026-04-02","by":"Ines"}
                {"deed":"bird-out","bird":"HB 24-019","where":"show","on":"2026-04-12","by":"Ines"}
                {"deed":"bird-loose","bird":"HB 24-030","by":"Tomas"}
                """.lines().toList());
        return List.copyOf(lines);
    }

    private final Desk desk;

    private Birdroom(Desk desk) {
        this.desk = desk;
    }

    /** A birdroom with nobody in it yet. */
    public static Birdroom empty(Path folder) {
        return copied(Made.EMPTY, folder);
    }

    /** Two walls, a flight, two pairs and some others; Ines owns it, Tomas looks after it at times. */
    public static Birdroom furnished(Path folder) {
        return copied(Made.FURNISHED, folder);
    }

    private static Birdroom copied(Path made, Path folder) {
        copy(made, folder);
        return open(folder);
    }

    private static Birdroom open(Path folder) {
        Clocks clocks =
                new Clocks(Clock.fixed(Instant.parse("2026-04-14T07:40:00Z"), ZoneOffset.UTC), Optional.of(TODAY));
        return new Birdroom(Desk.open(DataFolder.open(folder), Lanes.inline(), clocks));
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Path target = to.resolve(from.relativize(file).toString());
                if (Files.isDirectory(file)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(file, target);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Rooms made once for all tests, since making one takes seconds; each test opens a copy. */
    private static final class Made {

        static final Path EMPTY = made("empty", List.of());
        static final Path FURNISHED = made("furnished", FURNITURE);

        private static Path made(String name, List<String> lines) {
            try {
                Path folder = Files.createTempDirectory("birdroom-" + name);
                folder.toFile().deleteOnExit();
                try (Birdroom room = open(folder)) {
                    if (!lines.isEmpty()) {
                        room.tell(String.join("\n", lines));
                    }
                }
                return folder;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    public Desk desk() {
        return desk;
    }

    public Room room() {
        return desk.room();
    }

    /** Records these lines in one touch; all must be taken. */
    public void tell(String lines) {
        List<Line> read = lines.lines().map(Birdroom::understood).toList();
        desk.record(read, outcome -> assertThat(outcome).isInstanceOf(Outcome.Done.class));
    }

    private static Line understood(String text) {
        Lines.Read read = Lines.read(text, TODAY);
        assertThat(read).as(text).isInstanceOf(Lines.Understood.class);
        return ((Lines.Understood) read).line().beingSure();
    }

    /** The entries recorded last, whatever day they tell of, the last one first, as their lines. */
    public List<String> newest(int count) {
        List<LogEntry> log = new ArrayList<>();
        desk.log(LogQuery.newest(Integer.MAX_VALUE), answer -> answer.then(log::addAll, why -> {}, code -> {}));
        return log.stream()
                .sorted(Comparator.comparing(LogEntry::number).reversed())
                .limit(count)
                .map(LogEntry::line)
                .toList();
    }

    /** The screen on its stage, in the hands of this person. */
    public Painted painted(String person, Destination here, BiFunction<Pen, Layers, Screen> maker) {
        return painted(TextSize.NORMAL, person, here, maker);
    }

    public Painted painted(TextSize size, String person, Destination here, BiFunction<Pen, Layers, Screen> maker) {
        return painted(size, 800, person, here, maker);
    }

    /** In a window of this height, such as one with a title bar. */
    public Painted painted(
            TextSize size, int height, String person, Destination here, BiFunction<Pen, Layers, Screen> maker) {
        return Painted.of(Light.DAY, size, 1280, height, () -> {
            Layers stage = new Layers(WORDS);
            Pen pen = new Pen(desk, stage, stage);
            if (!person.isEmpty()) {
                pen.takenBy(person);
            }
            stage.open(Screens.none().with(here.getClass(), any -> maker.apply(pen, stage)), here);
            stage.person(person.isEmpty() ? "Nobody yet" : person, () -> {});
            stage.places(List.of(
                    new NavBar.Entry<>("wall", "Wall", new Destination.Wall()),
                    new NavBar.Entry<>("today", "Today", new Destination.Today()),
                    new NavBar.Entry<>("handover", "Handover", new Destination.Handover()),
                    new NavBar.Entry<>("cards", "Cards", new Destination.Cards()),
                    new NavBar.Entry<>("birds", "Birds", new Destination.Birds()),
                    new NavBar.Entry<>("setup", "Setup", new Destination.Setup())));
            return stage;
        });
    }

    @Override
    public void close() {
        desk.close();
    }
}
