package org.cagewall.kiosk.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.Kiosk;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.WithDemo;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.strip.RangeChart;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.AheadQuestion;
import org.cagewall.plan.Draws;
import org.cagewall.plan.NestAhead;
import org.cagewall.plan.Pace;
import org.cagewall.plan.Policy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The screen of the days ahead, on the demo birdroom. */
class AheadScreenTest extends WithDemo {

    private static final LocalDate TODAY = TestDesk.TODAY;

    /** A day on which some nests of the demo birdroom are done and others are not. */
    private static final LocalDate SOON = TODAY.plusDays(40);

    private Kiosk kiosk;

    @ParameterizedTest
    @EnumSource(names = {"NORMAL", "LARGE", "LARGER"})
    void everyPartIsWholeAtTheTextSizesTheBarFitsAt(TextSize size) {
        Painted ahead = soon(ahead(size)).png("ahead-dates-" + size).assertFit();
        for (String tab : List.of("nests", "days", "eggs")) {
            ahead.press("tab." + tab).png("ahead-" + tab + "-" + size).assertFit();
        }
        ahead.press("tab.nests")
                .press("nest." + late())
                .png("ahead-nest-" + size)
                .assertFit();
        ahead.press("other-day").png("ahead-day-" + size).assertFit();
    }

    @Test
    void anotherDayAnotherPolicyAndMoreRoundsAreAskedAnew() {
        Painted ahead = ahead(TextSize.NORMAL);
        assertThat(said(ahead)).contains(shown(boxOn(usualDay(), Policy.WEANED, 1)));

        ahead.press("policy.apart");
        assertThat(said(ahead)).contains(shown(boxOn(usualDay(), Policy.APART, 1)));

        ahead.press("rounds.more");
        assertThat(said(ahead)).contains(shown(boxOn(usualDay(), Policy.APART, 2)));

        LocalDate other = usualDay().plusDays(1);
        ahead.press("other-day").press("day." + other);
        assertThat(said(ahead)).contains(WORDS.date(other), shown(boxOn(other, Policy.APART, 2)));
    }

    @ParameterizedTest
    @EnumSource(names = {"NORMAL", "LARGER"})
    void bothOfTwoRoundsStandWholeInTheTable(TextSize size) {
        Painted ahead =
                ahead(size).press("rounds.more").png("ahead-two-rounds-" + size).assertFit();

        assertThat(said(ahead)).contains("Round 1: first egg", "Round 2: first egg", "Round to the next");
    }

    @Test
    void aNestThatIsLateShowsWhatIsInTheWayAndLeadsToItsCage() {
        Painted ahead = soon(ahead(TextSize.NORMAL)).press("tab.nests").press("nest." + late());

        assertThat(said(ahead)).contains("Ways out", "Leave it to the sitter.");

        ahead.press("to-cage");
        assertThat(ahead.names()).contains("entries");
    }

    @Test
    void theChartsSayTheirNumbersInWords() {
        Painted ahead = ahead(TextSize.NORMAL).press("tab.days");

        RangeChart eggs = ahead.find("chart.eggs", RangeChart.class);
        assertThat(eggs.getAccessibleContext().getAccessibleName())
                .startsWith("Eggs in nests: " + WORDS.shortDay(usualDay()) + " ");
    }

    @Test
    void theCalendarIsWrittenAndSaysWhereItLies() throws IOException {
        Painted ahead = ahead(TextSize.NORMAL)
                .press("save-calendar")
                .png("ahead-calendar-saved")
                .assertFit();

        Path file = desk.folder().path().resolve("calendar.ics");
        assertThat(ahead.find("saved", WrapLabel.class).getText())
                .startsWith("Saved as calendar.ics in " + desk.folder().path() + ".");
        assertThat(Biweekly.parse(file.toFile()).first().getEvents()).isNotEmpty();

        ahead.press("tab.nests");
        assertThat(ahead.maybe("saved")).isEmpty();
    }

    @Test
    void aFolderThatTakesNoFileIsSaid() throws IOException {
        Files.createDirectories(desk.folder().path().resolve("calendar.ics/in the way"));

        Painted ahead = ahead(TextSize.NORMAL)
                .press("save-calendar")
                .png("ahead-calendar-not-saved")
                .assertFit();

        assertThat(ahead.find("problem", WrapLabel.class).getText())
                .startsWith("The calendar could not be written into "
                        + desk.folder().path() + ".");
    }

    private static Painted soon(Painted ahead) {
        ahead.press("other-day");
        for (int month = usualDay().getMonthValue(); month > SOON.getMonthValue(); month--) {
            ahead.press("day.before");
        }
        return ahead.press("day." + SOON);
    }

    private Painted ahead(TextSize size) {
        return Painted.of(Light.DAY, size, 1280, 800, () -> {
            Layers stage = new Layers(WORDS);
            kiosk = Kiosk.on(stage, desk, WORDS);
            kiosk.pen().takenBy("Ines");
            kiosk.navigator().go(new Destination.Ahead());
            return stage;
        });
    }

    /** The day on which the owner of the demo birdroom leaves next. */
    private static LocalDate usualDay() {
        return TODAY.plusDays(42);
    }

    private String late() {
        return asked(SOON, Policy.WEANED, 1).nests().stream()
                .filter(nest -> !nest.isInTime())
                .map((NestAhead nest) -> nest.cage().name())
                .findFirst()
                .orElseThrow();
    }

    private static String shown(LocalDate day) {
        return day.isBefore(TODAY) ? WORDS.say("ahead.past", WORDS.shortDay(day)) : WORDS.date(day);
    }

    private LocalDate boxOn(LocalDate day, Policy policy, int rounds) {
        return asked(day, policy, rounds)
                .back()
                .orElseThrow()
                .column(Pace.USUAL)
                .boxOn();
    }

    private Ahead asked(LocalDate day, Policy policy, int rounds) {
        return Ahead.of(desk.room(), TODAY, new AheadQuestion(day, policy, rounds, new Draws(10, 1)));
    }

    private static String said(Painted painted) {
        return painted.all().stream()
                .filter(WrapLabel.class::isInstance)
                .map(part -> ((WrapLabel) part).getText())
                .collect(Collectors.joining("\n"));
    }
}
