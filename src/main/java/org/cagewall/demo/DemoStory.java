package org.cagewall.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Supplier;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;

/**
 * Collects the lines of an invented birdroom, told by whoever holds the pen, and writes them in the order of their days.
 * Bound to one thread.
 */
final class DemoStory {

    private final LocalDate today;
    private final List<Telling> tellings = new ArrayList<>();

    DemoStory(LocalDate today) {
        this.today = today;
    }

    /** The day n days back. */
    LocalDate ago(int days) {
        return today.minusDays(days);
    }

    /** Somebody recording what happened n days back. */
    Teller by(String person, int daysAgo) {
        return new Teller(Circumstances.on(ago(daysAgo), person));
    }

    /** Day by day; those of one day as they were told. Deeds that wait for their day are made now, in that order. */
    List<Line> lines() {
        tellings.sort(Comparator.comparing(Telling::day));
        List<Line> lines = new ArrayList<>();
        for (Telling telling : tellings) {
            telling.entry = lines.size() + 1;
            lines.add(new Line(telling.deed.get(), telling.told));
        }
        return List.copyOf(lines);
    }

    /** One line to be, which another may refer to. */
    static final class Telling {

        private final Circumstances told;
        private final Supplier<Deed> deed;
        private int entry;

        private Telling(Circumstances told, Supplier<Deed> deed) {
            this.told = told;
            this.deed = deed;
        }

        private LocalDate day() {
            return told.on();
        }

        /** Its number as an entry of an empty record; known once it is written. */
        int entry() {
            return entry;
        }
    }

    /** One person's words about one day. */
    final class Teller {

        private final Circumstances told;

        private Teller(Circumstances told) {
            this.told = told;
        }

        Teller at(LocalTime time) {
            return new Teller(told.at(time));
        }

        Teller noting(String words) {
            return new Teller(told.noting(words));
        }

        Teller guessingTheDay() {
            return new Teller(
                    new Circumstances(told.on(), told.at(), true, told.by(), told.cage(), told.note(), told.sure()));
        }

        Teller beingSure() {
            return new Teller(told.beingSure());
        }

        Telling tells(Deed deed) {
            return tellsLater(() -> deed);
        }

        /** For a deed that needs to know what was written before it. */
        Telling tellsLater(Supplier<Deed> deed) {
            Telling telling = new Telling(told, deed);
            tellings.add(telling);
            return telling;
        }
    }
}
