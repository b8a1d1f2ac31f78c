package org.cagewall.desk;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Told;

/** Collects the lines of an invented birdroom day by day, told by whoever holds the pen. Bound to one thread. */
final class DemoStory {

    private final LocalDate today;
    private final List<Line> lines = new ArrayList<>();

    DemoStory(LocalDate today) {
        this.today = today;
    }

    /** The day n days back. */
    LocalDate ago(int days) {
        return today.minusDays(days);
    }

    /** Somebody recording what happened n days back. */
    Teller by(String person, int daysAgo) {
        return new Teller(Told.on(ago(daysAgo), person));
    }

    /** The number that the line told last will have as an entry of an empty record. */
    int lastEntry() {
        return lines.size();
    }

    List<Line> lines() {
        return List.copyOf(lines);
    }

    /** One person's words about one day. */
    final class Teller {

        private final Told told;

        private Teller(Told told) {
            this.told = told;
        }

        Teller at(LocalTime time) {
            return new Teller(told.at(time));
        }

        Teller noting(String words) {
            return new Teller(told.noting(words));
        }

        Teller guessingTheDay() {
            return new Teller(new Told(told.on(), told.at(), true, told.by(), told.cage(), told.note(), told.sure()));
        }

        Teller beingSure() {
            return new Teller(told.beingSure());
        }

        void tells(Deed deed) {
            lines.add(new Line(deed, told));
        }
    }
}
