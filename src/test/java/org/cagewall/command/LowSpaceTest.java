package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A command that records on a disk which is nearly full says so in time. */
class LowSpaceTest {

    @TempDir
    Path folder;

    private final List<Message> warnings = new ArrayList<>();

    @Test
    void aRunThatRecordsWarnsOnceThatSpaceRunsLow() {
        try (Desk desk = TestDesk.furnishedOnADiskWith(folder, () -> OptionalLong.of(312_400_000))) {
            AtDesk atDesk = new AtDesk(desk, warnings::add);
            atDesk.outcome(check("A1"));
            atDesk.outcome(check("A2"));
            atDesk.record(List.of(check("A1")));
        }
        assertThat(warnings).containsExactly(Message.of("store.space-low", 312L));
    }

    @Test
    void whatWasRefusedOrOnlyReadWarnsOfNothing() {
        try (Desk desk = TestDesk.furnishedOnADiskWith(folder, () -> OptionalLong.of(312_400_000))) {
            AtDesk atDesk = new AtDesk(desk, warnings::add);
            atDesk.log(LogQuery.newest(3));
            atDesk.outcome(check("Z9"));
        }
        assertThat(warnings).isEmpty();
    }

    @Test
    void spaceThatRunsOutInTheMidstOfARunIsWarnedOfThen() {
        List<Long> free = new ArrayList<>(List.of(900_000_000L, 400_000_000L));
        try (Desk desk = TestDesk.furnishedOnADiskWith(folder, () -> OptionalLong.of(free.remove(0)))) {
            AtDesk atDesk = new AtDesk(desk, warnings::add);
            atDesk.outcome(check("A1"));
            assertThat(warnings).isEmpty();
            atDesk.outcome(check("A2"));
        }
        assertThat(warnings).hasSize(1);
    }

    private static Line check(String cage) {
        Lines.Read read = Lines.read(
                "{\"deed\":\"check\",\"cage\":\"" + cage + "\",\"answer\":\"well\",\"how\":\"hand\",\"by\":\"Ines\"}",
                TestDesk.TODAY);
        return ((Lines.Understood) read).line();
    }
}
