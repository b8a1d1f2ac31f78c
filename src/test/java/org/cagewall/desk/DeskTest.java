package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The way of a deed from a line of text to the disk and back, on a real record. */
class DeskTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);
    private static final Words WORDS = Words.english();

    @TempDir
    Path folder;

    private Desk desk;

    @BeforeEach
    void open() {
        desk = opened();
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void whatWasSetIsTakenAwayAgainAndComesBackWhenThatIsStruckOut() {
        furnish();
        tell("""
                {"deed":"person-added","person":"Tom","role":"sitter","phone":"0555 0163","by":"Ines"}
                {"deed":"person-added","person":"Joan","role":"keeper","by":"Ines"}
                {"deed":"room-set","quiet":"21:30-06:30","rules":"Shut the door.","by":"Ines"}
                {"deed":"away-planned","from":"2026-05-01","to":"2026-05-10","sitter":"Tom","second":"Joan","vet":"0555 0190","by":"Ines"}
                """);
        Room before = desk.room();
        tell("""
                {"deed":"room-set","quiet":null,"rules":null,"by":"Ines"}
                {"deed":"person-changed","person":"Tom","phone":null,"by":"Ines"}
                {"deed":"away-changed","second":null,"vet":null,"by":"Ines"}
                """);
        Room after = desk.room();

        assertThat(after.settings().quiet()).isEmpty();
        assertThat(after.settings().rules()).isEmpty();
        assertThat(after.person("Tom").orElseThrow().phone()).isEmpty();
        assertThat(after.absences().get(0).second()).isEmpty();
        assertThat(after.absences().get(0).vet()).isEmpty();

        desk.close();
        desk = opened();
        assertThat(desk.room()).isEqualTo(after);

        for (long entry = after.head(); entry > before.head(); entry--) {
            tell("{\"deed\":\"struck-out\",\"entry\":" + entry + ",\"why\":\"a slip\",\"by\":\"Ines\"}");
        }
        assertThat(desk.room().settings()).isEqualTo(before.settings());
        assertThat(desk.room().people()).isEqualTo(before.people());
        assertThat(desk.room().absences()).isEqualTo(before.absences());
    }

    @Test
    void aRoomOpenedAtAGlanceIsTheRoomReadAnewAlsoOnALaterDay() {
        furnish();
        desk.close();
        Clocks later = new Clocks(Clock.systemUTC(), Optional.of(TODAY.plusDays(3)));
        List<Room> heard = new ArrayList<>();

        desk = Desk.openAtAGlance(DataFolder.open(folder.resolve("room")), Lanes.inline(), later);
        desk.listen(heard::add);
        Room glanced = desk.room();
        desk.readAnew();

        assertThat(folder.resolve("room").resolve("glance")).exists();
        assertThat(glanced.day()).isEqualTo(TODAY.plusDays(3));
        assertThat(glanced.cages()).isNotEmpty();
        assertThat(heard).as("nothing was different when it was read anew").isEmpty();
    }

    @Test
    void aRoomIsFurnishedPairedAndLaidInAndReadsTheSameFromDisk() {
        furnish();
        tell("""
                {"deed":"paired-up","cage":"A1","cock":"HB 26-041","hen":"HB 25-117","on":"2026-03-20","by":"Ines"}
                {"deed":"box-on","cage":"A1","on":"2026-03-20","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-02","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-04","by":"Ines"}
                {"deed":"check","cage":"A1","answer":"different","how":"scan","signs":["puffed-up"],"at":"07:40","by":"Ines"}
                {"deed":"card-printed","cage":"A1","by":"Ines"}
                """);
        Room room = desk.room();
        assertThat(room.pairIn(room.cage("a1").orElseThrow()).orElseThrow().eggs())
                .isEqualTo(2);
        assertThat(room.unread()).hasSize(1);

        desk.close();
        desk = opened();

        assertThat(desk.room()).isEqualTo(room);
    }

    @Test
    void aStrikeBringsBackWhatWasBefore() {
        furnish();
        tell("{\"deed\":\"paired-up\",\"cage\":\"A1\",\"cock\":\"HB 26-041\",\"hen\":\"HB 25-117\",\"by\":\"Ines\"}");
        Room paired = desk.room();
        Outcome egg = recorded("{\"deed\":\"egg-laid\",\"cage\":\"A1\",\"by\":\"Ines\",\"sure\":true}");
        assertThat(refusal(
                        "{\"deed\":\"struck-out\",\"entry\":" + paired.head() + ",\"why\":\"typo\",\"by\":\"Ines\"}"))
                .contains("leans on");

        desk.undo(((Outcome.Done) egg).touch(), "Ines", "touched by mistake", outcome -> assertThat(outcome)
                .isInstanceOf(Outcome.Done.class));

        assertThat(desk.room().pairs()).isEqualTo(paired.pairs());
        List<LogEntry> log = new ArrayList<>();
        desk.log(LogQuery.newest(2), answer -> answer.then(log::addAll, why -> {}, code -> {}));
        assertThat(log.get(1).strike()).map(LogEntry.Strike::by).contains("Ines");
        assertThat(WORDS.say(log.get(1).what())).isEqualTo("egg 1 laid");
    }

    @Test
    void aCageThatIsNotThereIsRefusedWithTheNearestName() {
        furnish();

        assertThat(refusal("{\"deed\":\"check\",\"cage\":\"A9\",\"answer\":\"well\",\"how\":\"hand\",\"by\":\"Ines\"}"))
                .isEqualTo("there is no cage A9. Did you mean A1?");
    }

    @Test
    void aBackupRestoredIsTheSameRoom() {
        furnish();
        Room room = desk.room();
        Path backup = folder.resolve("backup");
        desk.<Archive.Kept>study(book -> Archive.write(book, backup), answer -> assertThat(answer)
                .isEqualTo(new Reading.Got<>(new Archive.Kept(room.head()))));

        desk.close();
        DataFolder other = DataFolder.open(folder.resolve("other"));
        Archive.restore(backup, other, clocks(), (entries, ofAll) -> {});
        desk = Desk.open(other, Lanes.inline(), clocks());

        assertThat(desk.room()).isEqualTo(room);
        desk.<Optional<Long>>study(
                Book::firstBroken, answer -> assertThat(answer).isEqualTo(new Reading.Got<>(Optional.empty())));
    }

    private void furnish() {
        tell("""
                {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
                {"deed":"wall-added","wall":"North wall","rows":3,"columns":6,"by":"Ines"}
                {"deed":"cage-added","cage":"A1","wall":"North wall","row":1,"column":1,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"A2","wall":"North wall","row":1,"column":2,"use":"breeding","by":"Ines"}
                {"deed":"bird-added","bird":"HB 26-041","sex":"cock","cage":"A2","hatched":"2025-02-20","colour":"light green","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-117","sex":"hen","cage":"A1","by":"Ines"}
                """);
    }

    private Desk opened() {
        return Desk.open(DataFolder.open(folder.resolve("room")), Lanes.inline(), clocks());
    }

    private static Clocks clocks() {
        return new Clocks(Clock.fixed(Instant.parse("2026-04-14T09:00:00Z"), ZoneOffset.UTC), Optional.of(TODAY));
    }

    private void tell(String lines) {
        lines.lines().forEach(line -> assertThat(recorded(line)).as(line).isInstanceOf(Outcome.Done.class));
    }

    private Outcome recorded(String text) {
        Lines.Read read = Lines.read(text, TODAY);
        assertThat(read).as(text).isInstanceOf(Lines.Understood.class);
        Line line = ((Lines.Understood) read).line();
        List<Outcome> outcomes = new ArrayList<>();
        desk.record(line, outcomes::add);
        return outcomes.get(0);
    }

    private String refusal(String text) {
        Outcome outcome = recorded(text);
        assertThat(outcome).isInstanceOf(Outcome.Refused.class);
        return WORDS.say(((Outcome.Refused) outcome).reason());
    }
}
