package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.cagewall.cards.OutsidePrograms;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.care.LogEntry;
import org.junit.jupiter.api.Test;

/** A sitter phones and closes the day, in a real window, read back from the database. */
@RequiresDisplay
class SittersEveningJourneyTest extends InAWindow {

    @Override
    void make(Path room) {
        try (Desk before = TestDesk.furnished(room)) {
            TestDesk.tell(before, """
                    {"deed":"away-planned","from":"2026-04-14","to":"2026-04-28","sitter":"Tomas","second":"Club friend","vet":"Bird vet 0555 0190","by":"Ines"}
                    """);
        }
    }

    @Test
    void theSitterPhonesTheOneWhoKnowsBirdsAndClosesTheDay() throws Exception {
        live.read("Tomas").press("nav.phone").read("0555 0177").press("phoned.Club friend");
        live.press("reached.spoke")
                .press("about.ill")
                .press("cage.A4")
                .press("agreed.leave")
                .write("in-words", "A1 sits low");
        live.picture("evening-1-call").press("record").read("you phoned Club friend");

        live.press("nav.close").write("note", "The bin is half empty.").press("keep-note");
        live.read("Your note is kept").press("say-why").press("why.no-time").press("dishes.filled");
        live.picture("evening-2-why").press("record").press("answer.leave").read("cages were not fed");
        live.picture("evening-3-done");

        live.press("send").read("To Ines, 0555 0142").picture("evening-4-note");
        assertThat(OutsidePrograms.symbols(folder, List.of(Path.of("target/pictures/evening-4-note.png"))))
                .singleElement()
                .asString()
                .startsWith("sms:05550142?body=")
                .contains("not%20fed%2C%20no%20time");
        live.press("back").see("send");

        readBack();
    }

    private void readBack() {
        leaveAndReopen();

        List<LogEntry> told = TestDesk.newest(desk, 60).stream()
                .filter(entry -> entry.by().equals("Tomas"))
                .toList();
        assertThat(of(told, "phoned"))
                .singleElement()
                .asString()
                .contains("Club friend", "\"ill\"", "A1 sits low", "\"leave\"");
        assertThat(of(told, "noted")).singleElement().asString().contains("The bin is half empty.");
        assertThat(of(told, "task-not-done")).isNotEmpty().allMatch(line -> line.contains("\"why\":\"no-time\""));
        assertThat(desk.room().outcomes()).hasSameSizeAs(of(told, "task-not-done"));
    }

    private static List<String> of(List<LogEntry> log, String deed) {
        return log.stream()
                .filter(entry -> entry.deed().equals(deed))
                .map(LogEntry::line)
                .toList();
    }
}
