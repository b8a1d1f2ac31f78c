package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.demo.DemoRoom;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Words;

/** A real desk on a folder of the test's own, with a day of its own, answering at once. */
public final class TestDesk {

    public static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    private static final Template EMPTY = new Template(desk -> {});
    private static final Template FURNISHED = new Template(TestDesk::furnish);
    private static final Template DEMO = new Template(desk ->
            desk.record(DemoRoom.lines(TODAY), outcome -> assertThat(outcome).isInstanceOf(Outcome.Done.class)));

    private TestDesk() {}

    /** An empty birdroom on 14 April 2026, about nine in the morning. */
    public static Desk empty(Path folder) {
        return copied(EMPTY, folder);
    }

    private static Desk open(Path folder) {
        return Desk.open(DataFolder.open(folder), Lanes.inline(), clocks());
    }

    /** The furnished birdroom on a disk that has so many bytes left. */
    public static Desk furnishedOnADiskWith(Path folder, Supplier<OptionalLong> free) {
        FURNISHED.copyTo(folder);
        return Desk.open(DataFolder.open(folder), Lanes.inline(), clocks(), free);
    }

    /** A small birdroom: two walls, a few pairs, a flight, an owner and a sitter. */
    public static Desk furnished(Path folder) {
        return copied(FURNISHED, folder);
    }

    /** The demo birdroom, whose owner is at home. */
    public static Desk demo(Path folder) {
        return copied(DEMO, folder);
    }

    private static void furnish(Desk desk) {
        tell(desk, """
                {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
                {"deed":"person-added","person":"Tomas","role":"sitter","phone":"0555 0163","by":"Ines"}
                {"deed":"person-added","person":"Club friend","role":"keeper","phone":"0555 0177","by":"Ines"}
                {"deed":"wall-added","wall":"North wall","rows":3,"columns":6,"by":"Ines"}
                {"deed":"wall-added","wall":"Flights","rows":1,"columns":2,"by":"Ines"}
                {"deed":"cage-added","cage":"A1","wall":"North wall","row":1,"column":1,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"A2","wall":"North wall","row":1,"column":2,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"A3","wall":"North wall","row":1,"column":3,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"A4","wall":"North wall","row":1,"column":4,"use":"nursery","by":"Ines"}
                {"deed":"cage-added","cage":"Q1","wall":"North wall","row":3,"column":6,"use":"quarantine","by":"Ines"}
                {"deed":"cage-added","cage":"F1","wall":"Flights","row":1,"column":1,"use":"flight","keeps":"hens","by":"Ines"}
                {"deed":"cage-added","cage":"F2","wall":"Flights","row":1,"column":2,"use":"flight","keeps":"cocks","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-041","sex":"cock","cage":"F2","hatched":"2025-02-20","colour":"light green","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-052","sex":"cock","cage":"F2","hatched":"2025-02-25","colour":"sky blue","by":"Ines"}
                {"deed":"bird-added","bird":"HB 24-117","sex":"hen","cage":"F1","hatched":"2024","colour":"grey","by":"Ines"}
                {"deed":"bird-added","bird":"HB 24-120","sex":"hen","cage":"F1","hatched":"2024","colour":"cobalt","by":"Ines"}
                {"deed":"bird-added","bird":"HB 26-003","sex":"unknown","cage":"A4","hatched":"2026","by":"Ines"}
                {"deed":"birds-added","count":6,"cage":"F1","by":"Ines"}
                {"deed":"paired-up","cage":"A1","cock":"HB 25-041","hen":"HB 24-117","on":"2026-03-18","by":"Ines"}
                {"deed":"box-on","cage":"A1","on":"2026-03-18","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-08","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-10","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-12","by":"Ines"}
                {"deed":"paired-up","cage":"A2","cock":"HB 25-052","hen":"HB 24-120","on":"2026-04-06","by":"Ines"}
                {"deed":"box-on","cage":"A2","on":"2026-04-06","by":"Ines"}
                {"deed":"check","cage":"A1","answer":"well","how":"scan","on":"2026-04-13","at":"08:10","by":"Ines"}
                {"deed":"check","cage":"A4","answer":"different","how":"hand","signs":["puffed-up"],"at":"07:40","by":"Ines"}
                """);
    }

    /** A birdroom of that kind, copied from one that is made once: Derby takes seconds to make a new one. */
    private static Desk copied(Template template, Path folder) {
        template.copyTo(folder);
        return open(folder);
    }

    /** A birdroom that is made when it is first needed and then only copied. */
    private static final class Template {

        private final Consumer<Desk> making;
        private Optional<Path> made = Optional.empty();

        Template(Consumer<Desk> making) {
            this.making = making;
        }

        synchronized void copyTo(Path folder) {
            Path from = made.orElseGet(this::make);
            made = Optional.of(from);
            try (Stream<Path> files = Files.walk(from)) {
                for (Path file : files.toList()) {
                    Path to = folder.resolve(from.relativize(file).toString());
                    if (Files.isDirectory(file)) {
                        Files.createDirectories(to);
                    } else {
                        Files.copy(file, to);
                    }
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private Path make() {
            try {
                Path folder = Files.createTempDirectory(Files.createDirectories(Path.of("target", "rooms")), "room");
                try (Desk desk = open(folder)) {
                    making.accept(desk);
                }
                return folder;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Records lines of the record, each of which must be taken. */
    public static void tell(Desk desk, String lines) {
        lines.lines().filter(line -> !line.isBlank()).forEach(text -> {
            Lines.Read read = Lines.read(text, TODAY);
            assertThat(read).as(text).isInstanceOf(Lines.Understood.class);
            Line line = ((Lines.Understood) read).line();
            desk.record(line, outcome -> assertThat(outcome)
                    .as(() -> text + " -> " + spoken(outcome))
                    .isInstanceOf(Outcome.Done.class));
        });
    }

    /** The newest entries, the last recorded first. */
    public static List<LogEntry> newest(Desk desk, int most) {
        List<LogEntry> entries = new ArrayList<>();
        desk.log(LogQuery.newest(Integer.MAX_VALUE), answer -> answer.then(entries::addAll, why -> {}, code -> {}));
        entries.sort((one, other) -> Long.compare(other.number(), one.number()));
        return entries.subList(0, Math.min(most, entries.size()));
    }

    private static String spoken(Outcome outcome) {
        if (outcome instanceof Outcome.Refused refused) {
            return Words.english().say(refused.reason());
        }
        return outcome instanceof Outcome.Asks asks ? Words.english().say(asks.question()) : outcome.toString();
    }

    public static Clocks clocks() {
        Instant morning = TODAY.atTime(LocalTime.of(9, 14)).toInstant(ZoneOffset.UTC);
        return new Clocks(Clock.fixed(morning, ZoneOffset.UTC), Optional.of(TODAY));
    }
}
