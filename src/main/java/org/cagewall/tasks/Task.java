package org.cagewall.tasks;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Reason;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Visit;
import org.cagewall.text.Message;

/**
 * One line of a day's list. Immutable; any thread.
 *
 * @param id DATE/CAGE/KIND, and /n for the second and later of a kind; a function of those alone
 * @param cage the cage it is at, or the first of its row; empty where it is about the whole room
 * @param due the day by which it is to be done
 * @param lateBy how many days ago it was to be done at the latest; 0 while it is not late
 * @param words the task in a few words
 * @param see what should be seen there
 * @param why what it is for
 * @param how what is done, in whole sentences, one each
 * @param brief the same in a few words each, for a line that is read while walking
 * @param part the round of the day it belongs to
 * @param row the row it is about
 * @param closing the answer that closed it; empty where it is open, or the deed that it asks for closed it
 */
public record Task(
        String id,
        Optional<String> cage,
        Kind kind,
        LocalDate due,
        int lateBy,
        Message words,
        Optional<Message> see,
        Message why,
        List<Message> how,
        List<Message> brief,
        Optional<DayPart> part,
        Optional<WallRow> row,
        State state,
        Optional<Closing> closing) {

    /** Why a task is in the list before its first day. */
    static final String SOON = "tasks.why-soon";

    /** A task at birds that somebody else feeds. */
    static final String IN_PEACE = "tasks.do-alone";

    /** Whether there is something left to do. */
    public enum State {
        OPEN,
        DONE,
        NOT_DONE
    }

    /**
     * A row of cages on a wall.
     *
     * @param number counted from 1 at the top
     * @param cages names of those in use, from the left
     */
    public record WallRow(String wall, int number, List<String> cages) {

        public WallRow {
            cages = List.copyOf(cages);
        }
    }

    /**
     * The entry that closed a task.
     *
     * @param answer what the check found, where a check closed it
     * @param why why it was not done, where that was said: the name of a reason, or somebody's own words
     * @param note what was added to that
     * @param signs what was seen that was different, as the check holds it
     */
    public record Closing(
            long entry,
            String person,
            Optional<LocalTime> at,
            Optional<Answer> answer,
            Optional<How> how,
            Optional<String> why,
            Optional<String> note,
            List<String> signs) {

        public Closing {
            signs = List.copyOf(signs);
        }

        /** The same with what was seen there. */
        Closing seeing(Visit visit) {
            return new Closing(
                    entry, person, at, Optional.of(visit.answer()), Optional.of(visit.how()), why, note, visit.signs());
        }

        /** Why it was not done, with what was added, in words. */
        public Optional<Message> reason() {
            return why.map(reason -> Reason.told(reason, note));
        }
    }

    public Task {
        how = List.copyOf(how);
        brief = List.copyOf(brief);
    }

    public boolean late() {
        return lateBy > 0;
    }

    /** Whether it is for today, and not for one of the days that come. */
    public boolean presses() {
        return !why.key().equals(SOON);
    }

    /** Whether birds go without food and water where it is not done, and nobody else feeds them. */
    public boolean isFeeding() {
        return kind == Kind.MORNING && !words.key().equals(IN_PEACE);
    }

    public boolean isOpen() {
        return state == State.OPEN;
    }

    /**
     * The same task once the deed that it asks for was recorded.
     *
     * @param seen what should be seen there since
     */
    Task recorded(Message seen) {
        return new Task(
                id,
                cage,
                kind,
                due,
                0,
                words,
                see.map(before -> seen),
                why,
                how,
                brief,
                part,
                row,
                State.DONE,
                Optional.empty());
    }

    /** Whether it was closed by a report of something different. */
    public boolean isDifferent() {
        return closing.flatMap(Closing::answer)
                .filter(answer -> answer == Answer.DIFFERENT)
                .isPresent();
    }

    /** How many days a day lies behind another; 0 where it does not. */
    static int lateBy(LocalDate last, LocalDate date) {
        return (int) Math.max(0, ChronoUnit.DAYS.between(last, date));
    }

    static String id(LocalDate date, String cage, Kind kind) {
        return date + "/" + cage + "/" + kind.word();
    }

    /** The n-th of a kind on one day at one cage, counted from 1. */
    static String id(LocalDate date, String cage, Kind kind, int n) {
        return n == 1 ? id(date, cage, kind) : id(date, cage, kind) + "/" + n;
    }
}
