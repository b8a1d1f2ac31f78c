package org.cagewall.kiosk.shell;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.tasks.Danger;

/** Where one can go in the kiosk. Immutable; any thread, and free of Swing. */
public sealed interface Destination {

    /** The main screen that this one belongs to: the bar at the bottom shows it. */
    default Destination section() {
        return this;
    }

    /** The same when one comes back to it later. */
    default Destination comingBack() {
        return this;
    }

    /** All cages in their places. */
    record Wall() implements Destination {}

    /** A cage's page, and whether its card was scanned or its name was touched. */
    record Cage(String name, Came came) implements Destination {

        public static Cage byHand(String name) {
            return new Cage(name, Came.BY_HAND);
        }

        public static Cage byScan(String name) {
            return new Cage(name, Came.BY_SCAN);
        }

        @Override
        public Destination section() {
            return new Wall();
        }

        /** The card was scanned for the visit before, not for this one. */
        @Override
        public Destination comingBack() {
            return byHand(name);
        }
    }

    /** How a cage's page was reached; it is recorded with a check. */
    enum Came {
        BY_HAND,
        BY_SCAN
    }

    /** The day's list, begun with one of its lines or with the next. */
    record Today(Optional<String> task) implements Destination {

        public Today() {
            this(Optional.empty());
        }

        public static Today at(String task) {
            return new Today(Optional.of(task));
        }

        @Override
        public Destination section() {
            return new Today();
        }

        @Override
        public Destination comingBack() {
            return new Today();
        }
    }

    /**
     * What is different at a cage, touched sign by sign.
     *
     * @param part the round of the day on which it was seen, where that is known
     * @param how how the cage's page was reached
     * @param day on which it was seen
     * @param from where one was and comes back to
     */
    record Different(String cage, Optional<DayPart> part, How how, LocalDate day, Destination from)
            implements Destination {

        @Override
        public Destination section() {
            return new Today();
        }
    }

    /** What is to come. */
    record Ahead() implements Destination {}

    /** Getting ready to leave, and what happened meanwhile. */
    record Handover() implements Destination {}

    /** The camera's large view. */
    record Scan() implements Destination {

        @Override
        public Destination section() {
            return new Wall();
        }
    }

    /** Cage cards to print: all that are old, or that of one cage, ready to be printed. */
    record Cards(Optional<String> cage) implements Destination {

        public Cards() {
            this(Optional.empty());
        }

        public static Cards of(String cage) {
            return new Cards(Optional.of(cage));
        }

        @Override
        public Destination section() {
            return new Cards();
        }
    }

    /** Birds to look for. */
    record Birds() implements Destination {}

    /** Walls, cages, people, routines. */
    record Setup() implements Destination {}

    /** Whom to phone and when, about a danger in the order that is right for it. */
    record Phone(Optional<Danger> about, Optional<String> cage) implements Destination {

        public Phone() {
            this(Optional.empty());
        }

        public Phone(Optional<Danger> about) {
            this(about, Optional.empty());
        }

        /** About one danger at these cages: one call about several of them names none. */
        public static Phone about(Danger danger, List<String> cages) {
            return new Phone(Optional.of(danger), cages.size() == 1 ? Optional.of(cages.get(0)) : Optional.empty());
        }

        @Override
        public Destination section() {
            return new Phone();
        }
    }

    /** What to do when something goes wrong: one of the dangers, or all of them to choose from. */
    record Alarm(Optional<Danger> danger) implements Destination {

        public Alarm() {
            this(Optional.empty());
        }

        @Override
        public Destination section() {
            return new Alarm();
        }
    }

    /** The end of a sitter's day. */
    record CloseTheDay() implements Destination {}
}
