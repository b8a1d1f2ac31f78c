package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.swing.JLabel;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.junit.jupiter.api.Test;

/** What the screens count can be matched by somebody who sees them for the first time. */
class CountsTest extends WithDemo {

    private Kiosk kiosk;
    private Layers stage;

    @Test
    void theCagesWithBirdsAreTheSameOnTheWallOnTheOwnersListAndOnTheSittersList() {
        MatchResult wall = read("Ines", new Destination.Wall(), "(\\d+) of (\\d+) cages with birds seen today");
        MatchResult owner = read("Ines", new Destination.Today(), "(\\d+) of (\\d+) cages with birds seen today");
        MatchResult sitter = readList("morning", "of (\\d+) done · (\\d+) cages with birds");

        assertThat(owner.group(1)).isEqualTo(wall.group(1));
        assertThat(owner.group(2)).isEqualTo(wall.group(2));
        assertThat(sitter.group(2)).isEqualTo(wall.group(2));
    }

    @Test
    void theSittersMorningIsTheCagesWithBirdsTheEmptyOnesAndTheLooksIntoBoxes() {
        MatchResult morning = readList(
                "morning",
                "of (\\d+) done · (\\d+) cages with birds(?:, (\\d+) empty)?(?:, (\\d+) looks? into a box)?");

        assertThat(number(morning, 1)).isEqualTo(number(morning, 2) + number(morning, 3) + number(morning, 4));
    }

    @Test
    void theDayThatIsClosedIsTheMorningAndTheEvening() {
        int morning = number(readList("morning", "of (\\d+) done"), 1);
        MatchResult evening = readList("evening", "of (\\d+) done · (\\d+) last looks?(?:, food in (\\d+) cages?)?");
        MatchResult day = read(
                "Tomas",
                new Destination.CloseTheDay(),
                "of (\\d+) done · (\\d+) for the morning, (\\d+) for the evening");

        assertThat(number(evening, 1)).isEqualTo(number(evening, 2) + number(evening, 3));
        assertThat(number(day, 2)).isEqualTo(morning);
        assertThat(number(day, 3)).isEqualTo(number(evening, 1));
        assertThat(number(day, 1)).isEqualTo(number(day, 2) + number(day, 3));
    }

    private MatchResult readList(String part, String pattern) {
        Painted page = page("Tomas", new Destination.Today()).press("part." + part);
        String said = subtitle(page);
        page.after(kiosk::end);
        return match(said, pattern);
    }

    private MatchResult read(String person, Destination place, String pattern) {
        Painted page = page(person, place);
        String said = subtitle(page);
        page.after(kiosk::end);
        return match(said, pattern);
    }

    private Painted page(String person, Destination place) {
        return Painted.of(1280, 800, () -> {
            stage = new Layers(WORDS);
            kiosk = Kiosk.on(stage, desk, WORDS);
            kiosk.pen().takenBy(person);
            kiosk.navigator().go(place);
            return stage;
        });
    }

    private static String subtitle(Painted page) {
        return page.find("subtitle", JLabel.class).getText();
    }

    private static MatchResult match(String said, String pattern) {
        return Pattern.compile(pattern)
                .matcher(said.replace('\u00A0', ' '))
                .results()
                .findFirst()
                .orElseThrow(() -> new AssertionError("\"" + said + "\" does not say " + pattern));
    }

    private static int number(MatchResult found, int group) {
        return found.group(group) == null ? 0 : Integer.parseInt(found.group(group));
    }
}
