package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.swing.AbstractButton;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.Daybook;
import org.cagewall.desk.TestDesk;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.AheadQuestion;
import org.cagewall.plan.Draws;
import org.cagewall.plan.Pace;
import org.cagewall.plan.Policy;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/**
 * An owner who leaves on 13 June asks what is ahead, moves two late eggs as it is proposed, and takes the calendar, in a
 * real window, read back from disk. The eggs of A1, sat on from 15 April, are to hatch on 3 May and their chicks to feed
 * themselves on 14 June; those of A2 hatch until 1 May.
 */
@RequiresDisplay
class AheadJourneyTest extends InAWindow {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 26);
    private static final LocalDate LEAVING = LocalDate.of(2026, 6, 13);
    private static final Pattern CHANCE = Pattern.compile("Chance (\\d+)");

    @Override
    void make(Path room) {
        Daybook.furnished(room, TODAY).tell("""
                {"deed":"paired-up","cage":"A2","cock":"HB 24-006","hen":"HB 25-118","on":"2026-04-01","by":"Ines"}
                {"deed":"box-on","cage":"A2","on":"2026-04-01","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-09","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-11","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-13","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-13","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-15","by":"Ines"}
                """).close();
    }

    @Override
    Clocks clocks() {
        return new Clocks(
                Clock.fixed(TODAY.atTime(9, 14).toInstant(ZoneOffset.UTC), ZoneOffset.UTC), Optional.of(TODAY));
    }

    @Test
    void theOwnerAsksWhatIsAheadMovesTheLateEggsAndTakesTheCalendar() throws Exception {
        live.press("nav.handover").press("plan").press("days.after").press("days.after");
        live.press("days.2026-06-13").press("days.2026-06-27").press("save").read("Ready to leave");

        datesAndChancesFollowTheQuestion();
        theLateEggsAreMoved();
        live.press("tab.dates").press("save-calendar").see("saved").picture("ahead-journey-3-calendar");

        readBack();
    }

    private void datesAndChancesFollowTheQuestion() {
        live.press("nav.ahead").read("13 June 2026").read(boxOn(LEAVING, Policy.WEANED, 1));
        live.picture("ahead-journey-1-dates");
        live.press("policy.apart").read(boxOn(LEAVING, Policy.APART, 1));
        live.press("rounds.more").read(boxOn(LEAVING, Policy.APART, 2));
        live.press("rounds.fewer").press("policy.weaned").read(boxOn(LEAVING, Policy.WEANED, 1));

        int chance = chance("A1");
        live.press("other-day").press("day.2026-06-23").read(boxOn(LEAVING.plusDays(10), Policy.WEANED, 1));
        assertThat(chance("A1")).isGreaterThan(chance + 20);
        live.picture("ahead-journey-2-later");
        live.press("other-day").press("day.2026-06-13").read(boxOn(LEAVING, Policy.WEANED, 1));
        assertThat(chance("A1")).isEqualTo(chance);
    }

    private String boxOn(LocalDate day, Policy policy, int rounds) {
        LocalDate boxOn = Ahead.of(desk.room(), TODAY, new AheadQuestion(day, policy, rounds, new Draws(10, 1)))
                .back()
                .orElseThrow()
                .column(Pace.USUAL)
                .boxOn();
        Words words = Words.english();
        return boxOn.isBefore(TODAY) ? words.say("ahead.past", words.shortDay(boxOn)) : words.date(boxOn);
    }

    private int chance(String cage) {
        String said = live.press("tab.nests")
                .find("nest." + cage, AbstractButton.class)
                .getAccessibleContext()
                .getAccessibleName();
        live.press("tab.dates").gone("nest." + cage);
        Matcher chance = CHANCE.matcher(said);
        assertThat(chance.find()).as(said).isTrue();
        return Integer.parseInt(chance.group(1));
    }

    private void theLateEggsAreMoved() {
        live.press("tab.eggs").press("move-all").press("answer.moved");
        live.waitUntil(
                "both eggs lie in A2",
                () -> desk.room()
                                .nest(desk.room().cage("A2").orElseThrow())
                                .eggs()
                                .size()
                        == 5);
    }

    private void readBack() throws Exception {
        leaveAndReopen();

        List<LogEntry> moves = TestDesk.newest(desk, 2);
        assertThat(moves)
                .allMatch(entry ->
                        entry.deed().equals("egg-moved") && entry.line().contains("\"to\":\"A2\""));
        assertThat(moves.stream().map(LogEntry::touch))
                .containsOnly(moves.get(1).number());
        assertThat(desk.room().absences()).singleElement().satisfies(away -> assertThat(away.from())
                .isEqualTo(LEAVING));

        List<VEvent> events =
                Biweekly.parse(room().resolve("calendar.ics").toFile()).first().getEvents();
        assertThat(events.stream().map(event -> event.getSummary().getValue()))
                .contains("Away, Tomas looks after the birds", "A2: egg A hatches", "A2: egg B hatches")
                .noneMatch(summary -> summary.startsWith("A1: egg"));
    }
}
