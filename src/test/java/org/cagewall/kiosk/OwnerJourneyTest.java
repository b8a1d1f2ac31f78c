package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.CardFaces;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.junit.jupiter.api.Test;

/** An owner's morning from start to end, in a real window, read back from the database. */
@RequiresDisplay
class OwnerJourneyTest extends InAWindow {

    @Test
    void theOwnerScansRecordsPrintsAndPlansTheHoliday() throws Exception {
        live.see("tile.A1").picture("owner-1-wall");

        live.type(CardFaces.code(desk.room(), desk.room().cage("A1").orElseThrow())
                        .text() + "\n");
        live.read("Cage A1").press("all-well").read("A1: all well");
        live.press("do.egg").read("A1: egg recorded").picture("owner-2-cage");
        live.press("notice.undo").read("Taken back");
        live.press("do.floor-egg").press("answer.sure").read("A1: egg on the floor recorded");
        live.press("when.yesterday").press("do.more").press("pick.box-turned").press("answer.no");

        live.press("nav.wall")
                .press("tile.A4")
                .read("Cage A4")
                .press("all-well")
                .read("A4: all well");

        live.press("nav.cards")
                .press("lay-out")
                .press("save")
                .press("hung")
                .waitUntil("every card is recorded as printed", () -> desk.room().cages().stream()
                        .allMatch(cage -> cage.card().isPresent()));
        live.picture("owner-3-cards");

        live.press("nav.handover").press("plan").press("days.2026-04-20").press("days.2026-04-28");
        live.write("vet", "Bird vet 0555 0190").picture("owner-4-plan").press("save");
        live.waitUntil(
                "the days away are planned", () -> !desk.room().absences().isEmpty());
        live.picture("owner-5-planned");

        readBack();
    }

    private void readBack() throws Exception {
        List<Path> sheets;
        try (Stream<Path> files = Files.walk(room())) {
            sheets = files.filter(file -> file.toString().endsWith(".pdf")).toList();
        }
        assertThat(sheets).hasSize(1);

        leaveAndReopen();

        List<LogEntry> log = TestDesk.newest(desk, 40);
        LogEntry scanned = checkOf(log, "A1");
        assertThat(scanned.answer()).contains(Answer.WELL);
        assertThat(scanned.how()).contains(How.SCAN);
        assertThat(scanned.by()).isEqualTo("Ines");
        assertThat(checkOf(log, "A4").how()).contains(How.HAND);
        assertThat(log)
                .filteredOn(entry -> entry.deed().equals("egg-laid") && entry.isStruck())
                .hasSize(1);
        assertThat(log).noneMatch(entry -> entry.deed().equals("box-turned"));
        assertThat(desk.room()
                        .pairIn(desk.room().cage("A1").orElseThrow())
                        .orElseThrow()
                        .eggs())
                .isEqualTo(4);
        assertThat(desk.room().absences()).singleElement().satisfies(away -> {
            assertThat(away.from()).isEqualTo(LocalDate.of(2026, 4, 20));
            assertThat(away.to()).isEqualTo(LocalDate.of(2026, 4, 28));
            assertThat(away.sitter()).isEqualTo("Tomas");
            assertThat(away.vet()).contains("Bird vet 0555 0190");
        });
    }

    private LogEntry checkOf(List<LogEntry> log, String cage) {
        long id = desk.room().cage(cage).orElseThrow().id();
        return log.stream()
                .filter(entry -> entry.deed().equals("check") && entry.cages().contains(id))
                .findFirst()
                .orElseThrow();
    }
}
