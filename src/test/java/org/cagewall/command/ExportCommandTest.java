package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import org.cagewall.command.Cli.Ran;
import org.cagewall.demo.DemoRoom;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.room.Room;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way of a whole record out into files and back. */
class ExportCommandTest {

    private static final LocalDate TODAY = LocalDate.parse(Cli.TODAY);

    @TempDir
    Path folder;

    @Test
    void anExportRecordedIntoAnEmptyRoomIsTheSameRoomStrikesAndAll() {
        Cli from = new Cli(folder.resolve("from"));
        from.run("demo");
        int demo = DemoRoom.lines(TODAY).size();
        assertThat(from.record("""
                        {"deed":"check","cage":"A1","answer":"different","how":"hand","note":"=loud, \\"very\\"","by":"Ines"}
                        {"deed":"noted","note":"struck at once","by":"Ines"}
                        {"deed":"struck-out","entry":%d,"why":"wrong room","by":"Ines"}
                        {"deed":"entry-seen","entry":%d,"by":"Ines"}
                        """.formatted(demo + 2, demo + 1)).code()).isZero();

        assertThat(from.run("export", folder.resolve("out").toString()).out())
                .isEqualTo(demo + 4 + " entries exported to " + folder.resolve("out") + ".\n");
        Ran recorded = new Cli(folder.resolve("to"))
                .run("record", folder.resolve("out/record.jsonl").toString());

        assertThat(recorded.lines()).hasSize(demo + 4).allMatch(line -> line.startsWith("ok "));
        assertThat(withoutCode(room("to", TODAY))).isEqualTo(withoutCode(room("from", TODAY)));
    }

    @Test
    void anExportFindsItsOwnEntriesAmongOthers() throws IOException {
        Cli from = Cli.furnished(folder.resolve("from"));
        from.record("""
                {"deed":"check","cage":"A1","answer":"different","how":"hand","signs":["other"],"by":"Tom"}
                {"deed":"check","cage":"A2","answer":"different","how":"hand","signs":["other"],"by":"Tom"}
                {"deed":"struck-out","entry":14,"why":"wrong cage","by":"Ines"}
                {"deed":"entry-seen","entry":15,"by":"Ines"}
                """);
        from.run("export", folder.resolve("out").toString());
        Cli to = new Cli(folder.resolve("to"));
        to.record("""
                {"deed":"person-added","person":"Ada","role":"owner"}
                {"deed":"noted","note":"before all else","by":"Ada"}
                """);
        Path lines = folder.resolve("out/record.jsonl");
        Files.writeString(
                lines, Files.readString(lines).replaceFirst("\"role\":\"owner\"", "\"role\":\"owner\",\"by\":\"Ada\""));

        Ran ran = to.run("record", lines.toString());

        assertThat(ran.lines())
                .hasSize(17)
                .allMatch(line -> line.startsWith("ok "))
                .last()
                .isEqualTo("ok 19");
        assertThat(to.run("show", "A1", "--json").out()).contains("\"unread\":null", "wrong cage");
        assertThat(to.run("show", "A2", "--json").out()).contains("\"unread\":null");
    }

    @Test
    void whatWasToldLateOfAPairLongGoneIsRecordedAnewYearsLater() {
        Path from = folder.resolve("from");
        on("2024-04-14", from, Cli.ROOM.replace("2026-0", "2024-0").replace("2025", "2023"));
        on("2024-05-02", from, """
                {"deed":"bird-moved","bird":"HB 26-041","to":"A2","on":"2024-05-01","by":"Ines"}
                {"deed":"bird-moved","bird":"HB 25-117","to":"F1","on":"2024-05-01","sure":true,"by":"Ines"}
                """);
        on("2024-05-20", from, """
                {"deed":"egg-laid","cage":"A1","on":"2024-04-06","by":"Ines"}
                """);
        new Cli(from).run("export", folder.resolve("out").toString());

        Ran ran = new Cli(folder.resolve("to"))
                .run("record", folder.resolve("out/record.jsonl").toString());

        assertThat(ran.lines()).allMatch(line -> line.startsWith("ok "));
        assertThat(withoutCode(everything("to"))).isEqualTo(withoutCode(everything("from")));
    }

    /** Records these lines with a clock that stands on that day. */
    private static void on(String day, Path data, String lines) {
        Clocks clocks = new Clocks(
                java.time.Clock.fixed(LocalDate.parse(day).atTime(9, 0).toInstant(ZoneOffset.UTC), ZoneOffset.UTC),
                Optional.of(LocalDate.parse(day)));
        Ran ran = Cli.at(clocks, lines, "--data", data.toString(), "record");
        assertThat(ran.code()).as(ran.out()).isZero();
    }

    private Room room(String name, LocalDate today) {
        try (Desk desk = desk(name, today)) {
            return desk.room();
        }
    }

    private Room everything(String name) {
        try (Desk desk = desk(name, TODAY)) {
            return new AtDesk(desk, why -> {}).read(book -> book.everything(TODAY));
        }
    }

    private Desk desk(String name, LocalDate today) {
        return Desk.open(
                DataFolder.open(folder.resolve(name)),
                Lanes.inline(),
                Clocks.system().withToday(today));
    }

    /** A room's own three characters are its alone. */
    private static Room withoutCode(Room room) {
        return new Room(
                room.head(),
                "",
                room.day(),
                room.since(),
                room.settings(),
                room.walls(),
                room.cages(),
                room.birds(),
                room.pairs(),
                room.plans(),
                room.people(),
                room.absences(),
                room.visits(),
                room.unread(),
                room.outcomes(),
                room.calls(),
                room.rings(),
                room.ringsSpoilt(),
                room.ringsWorn(),
                room.past());
    }

    @Test
    void tablesHoldBirdsThatHaveGoneAndWhatWasStruckOut() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        cli.record("""
                {"deed":"bird-added","bird":"HB 24-001","sex":"hen","cage":"F1","origin":"=HYPERLINK(1)","by":"Ines"}
                {"deed":"bird-left","bird":"HB 24-001","how":"sold","place":"Club, \\"the show\\"","by":"Ines"}
                {"deed":"check","cage":"A1","answer":"well","how":"hand","note":"two\\nlines","by":"Tom"}
                {"deed":"struck-out","entry":16,"why":"wrong cage","by":"Tom"}
                """);

        Ran ran = cli.run("export", folder.resolve("out").toString(), "--json");

        assertThat(ran.out()).isEqualTo("{\"folder\":\"" + folder.resolve("out") + "\",\"entries\":17}\n");
        assertThat(table("birds"))
                .contains("HB 24-001,,hen,budgerigar,,,,,'=HYPERLINK(1),,,")
                .contains(",2026-04-14,sold,\"Club, \"\"the show\"\"\",,2024\r\n");
        assertThat(table("cages")).contains("A1,1,North wall,1,1,breeding,,,,2,0,1,2026-03-20");
        assertThat(table("pairs")).contains("1,A1,HB 26-041,HB 25-117,2026-03-20,,,1,2\r\n");
        assertThat(table("eggs")).contains("1,A1,1,2,2026-04-04,false,box,13,not-candled,,,,,,,,,A1\r\n");
        assertThat(table("checks")).isEqualTo("entry,on,at,cage,by,answer,how,when,signs,note\r\n");
        assertThat(table("entries")).contains(",check,A1,all well,\"two\nlines\",17,wrong cage\r\n");
    }

    @Test
    void tablesTellWhatBecameOfEachEggAndChick() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        cli.record("""
                {"deed":"egg-candled","cage":"A1","mark":"1","finding":"unsure","on":"2026-04-08","by":"Ines"}
                {"deed":"egg-candled","cage":"A1","mark":"1","finding":"full","on":"2026-04-10","by":"Ines"}
                {"deed":"egg-removed","cage":"A1","mark":"2","why":"broken","on":"2026-04-11","by":"Ines"}
                {"deed":"chick-hatched","cage":"A1","mark":"1","on":"2026-04-14","by":"Ines","sure":true}
                {"deed":"chick-missing","cage":"A1","mark":"1","likely":"cold","on":"2026-04-14","by":"Ines"}
                """);

        cli.run("export", folder.resolve("out").toString());

        assertThat(table("eggs"))
                .contains(",hatched,2026-04-08; 2026-04-10,unsure; full,,2026-04-14,,,,,A1\r\n")
                .contains(",removed,,,,,2026-04-11,broken,,,A1\r\n");
        assertThat(table("chicks")).endsWith("\r\n1,1,1,2026-04-14,false,A1,,,,,,,2026-04-14,missing,cold,\r\n");
    }

    @Test
    void aFolderThatCannotBeWrittenToIsSaid() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path file = Files.writeString(folder.resolve("file"), "in the way");

        for (String command : new String[] {"export", "backup", "report"}) {
            Ran ran = cli.run(command, file.toString());

            assertThat(ran.code()).as(command).isEqualTo(1);
            assertThat(ran.err()).contains(file + " cannot be written").hasLineCount(1);
        }
    }

    private String table(String name) throws IOException {
        return Files.readString(folder.resolve("out").resolve(name + ".csv"));
    }
}
