package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cagewall.cards.OutsidePrograms;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.care.LogEntry;
import org.junit.jupiter.api.Test;

/** An owner plans days away, makes ready, rehearses a day and takes the pack, in a real window, read back from disk. */
@RequiresDisplay
class LeavingJourneyTest extends InAWindow {

    @Test
    void theOwnerPlansMakesReadyRehearsesAndTakesThePack() throws Exception {
        live.press("nav.handover").press("plan").press("days.2026-04-20").press("days.2026-04-28");
        live.press("second.Club friend").write("vet", "Bird vet 0555 0190").press("save");
        live.read("Ready to leave").picture("leaving-1-ready");

        live.press("ready.keys").waitUntil("the key is handed over", () -> desk.room().outcomes().stream()
                .anyMatch(outcome -> outcome.task().endsWith("ready-keys")));
        live.press("rehearse").read("What Tomas will see on Monday 20 April").picture("leaving-2-rehearsal");
        live.press("day-after").read("Tuesday 21 April").press("back").see("rehearse");

        live.press("pack").read("9 days, a page each").press("save-pack").see("saved");
        live.picture("leaving-3-pack").press("back").see("ready.keys");

        readBack();
    }

    private void readBack() throws Exception {
        leaveAndReopen();

        assertThat(desk.room().absences()).singleElement().satisfies(away -> assertThat(away.second())
                .contains("Club friend"));
        List<LogEntry> newest = TestDesk.newest(desk, 3);
        assertThat(newest.stream().map(LogEntry::deed)).startsWith("task-done", "away-planned");
        assertThat(newest.get(0).line()).contains("2026-04-20/A1/ready-keys");

        Path pack = room().resolve("pack-2026-04-14.pdf");
        assertThat(pack).isRegularFile();
        OutsidePrograms.need("pdftotext");
        Files.copy(pack, folder.resolve("pack.pdf"));
        String text = String.join(
                "\n", OutsidePrograms.run(folder, List.of("pdftotext", "-layout", "-enc", "UTF-8", "pack.pdf", "-")));
        assertThat(text)
                .contains("Read this first", "0555 0190", "Day 1: Monday 20 April", "Day 9: Tuesday 28 April")
                .contains("not today, please");
    }
}
