package org.cagewall.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;

/**
 * What the sitter is handed on paper, for the days on which the tablet fails as well: first what is dangerous, with whom
 * to phone and which cages to look at first; then how things stand, the wall with what should be seen; then what is to do,
 * what is given and a page a day; then what may come, what not to do and what to do if; last what the sitter says back on
 * a round together. Reading on handing over: doi 10.1542/peds.2011-2966. Immutable; any thread.
 *
 * @param room its name, which may be empty
 * @param made the day it was made
 * @param effort the sitter's minutes on the first of these days
 * @param days a list each, at most {@link #MOST_DAYS}
 * @param left how many days of the absence have no page
 */
public record Pack(
        String room,
        LocalDate made,
        Absence absence,
        String owner,
        Effort effort,
        Door door,
        List<WallMap> walls,
        List<Spot> elsewhere,
        List<Given> routine,
        List<Day> days,
        long left,
        List<Message> never,
        Optional<String> rules,
        List<Topic> cases,
        List<Message> sayBack) {

    /** More days are no holiday, and nobody carries that many pages. */
    public static final int MOST_DAYS = 60;

    /**
     * The page for the door.
     *
     * @param watch the cages to look at first
     * @param ill how an ill bird looks
     * @param hours what has to be done within which time
     */
    public record Door(
            List<Alarms.Phone> phones,
            List<Message> stop,
            List<Message> watch,
            List<Message> ill,
            List<Message> hours,
            List<Message> fumes) {

        public Door {
            phones = List.copyOf(phones);
            stop = List.copyOf(stop);
            watch = List.copyOf(watch);
            ill = List.copyOf(ill);
            hours = List.copyOf(hours);
            fumes = List.copyOf(fumes);
        }
    }

    /** A wall as it hangs, with the cages in their places; a place may be empty. */
    public record WallMap(String name, int rows, int columns, List<Spot> cages) {

        public WallMap {
            cages = List.copyOf(cages);
        }
    }

    /**
     * A cage, and what should be seen in it.
     *
     * @param row counted from 1; 0 where it hangs on no wall
     * @param column counted from 1; 0 where it hangs on no wall
     * @param note what is particular to it; empty where nothing is
     */
    public record Spot(String cage, int row, int column, Message see, Optional<Message> note) {}

    /** What some cages are given that are all given the same. */
    public record Given(List<String> cages, List<Message> morning, List<Message> evening, List<Message> notes) {

        public Given {
            cages = List.copyOf(cages);
            morning = List.copyOf(morning);
            evening = List.copyOf(evening);
            notes = List.copyOf(notes);
        }
    }

    /**
     * One day's list, in walking order.
     *
     * @param number of the days away, from 1
     */
    public record Day(LocalDate date, long number, List<Task> morning, List<Task> evening) {

        public Day {
            morning = List.copyOf(morning);
            evening = List.copyOf(evening);
        }
    }

    /** What to do when something has happened, step by step. */
    public record Topic(Message title, List<Message> steps) {

        public Topic {
            steps = List.copyOf(steps);
        }
    }

    public Pack {
        walls = List.copyOf(walls);
        elsewhere = List.copyOf(elsewhere);
        routine = List.copyOf(routine);
        days = List.copyOf(days);
        never = List.copyOf(never);
        cases = List.copyOf(cases);
        sayBack = List.copyOf(sayBack);
    }

    /**
     * The pack for the days away that are still to come.
     *
     * @param today the day on which it is made, before the days away or on one of them
     */
    public static Pack of(Room room, LocalDate today, Absence absence) {
        return new Packing(room, today, absence).pack();
    }
}
