package org.cagewall.kiosk.handover;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.handover.Lead;
import org.cagewall.handover.Ready;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.strip.DayMark;
import org.cagewall.kiosk.shell.Destination;

/**
 * What the page of days away shows. Immutable; any thread.
 *
 * @param tab which of its two sides is shown
 */
public record HandoverState(String title, String subtitle, Tab tab, Page page) {

    /** Before and after. */
    public enum Tab {
        GOING_AWAY,
        WHAT_HAPPENED
    }

    /** What fills the view. */
    public sealed interface Page {}

    /** What happened is being read. */
    public record OneMoment() implements Page {}

    /**
     * No days away are planned.
     *
     * @param lately whether those that are over can still be made longer
     */
    public record Nothing(String title, String text, Lately lately) implements Page {}

    /** Whether days away that are over can still be made longer. */
    public enum Lately {
        NOBODY_AWAY,
        /** They are over by the plan, and nobody said that the owner is back. */
        OVER_BY_PLAN
    }

    /**
     * The days that are planned or run.
     *
     * @param facts who, whom to phone, what is left alone; a label and what it says
     * @param ready what has to be ready, and how far it is
     * @param running whether the owner is away now
     */
    public record Planned(String days, List<Fact> facts, Readiness ready, Running running) implements Page {

        public Planned {
            facts = List.copyOf(facts);
        }
    }

    /**
     * What has to be ready.
     *
     * @param title how much is still open
     * @param text how long the sitter will be at it
     * @param lines what is open first
     */
    public record Readiness(String title, String text, List<ToDo> lines) {

        public Readiness {
            lines = List.copyOf(lines);
        }
    }

    /** Whether the owner is away now. */
    public enum Running {
        NOW,
        LATER
    }

    /** One line of the plan. */
    public record Fact(String label, String text) {}

    /** Something to see to, how far it is, and where it leads. */
    public record ToDo(String name, RowFace face, Ready.State state, Lead lead) {}

    /**
     * One day away as the sitter will meet it.
     *
     * @param first the first day that can be rehearsed
     * @param last the last one
     */
    public record Rehearsing(
            LocalDate day, LocalDate first, LocalDate last, String title, String text, List<Part> parts)
            implements Page {

        public Rehearsing {
            parts = List.copyOf(parts);
        }
    }

    /** The morning or the evening of a rehearsed day. */
    public record Part(String title, List<RowFace> rows) {

        public Part {
            rows = List.copyOf(rows);
        }
    }

    /**
     * The pack, to be printed or put into a file.
     *
     * @param contents what is in it
     * @param printers those of this machine; empty while they are looked for
     * @param printer the one chosen
     * @param said what came of the last try
     */
    public record Packing(
            String title,
            List<String> contents,
            Optional<List<String>> printers,
            String printer,
            Work work,
            Optional<String> said,
            Came outcome)
            implements Page {

        public Packing {
            contents = List.copyOf(contents);
        }

        Packing with(List<String> found, String chosen) {
            return new Packing(title, contents, Optional.of(found), chosen, work, said, outcome);
        }

        Packing working() {
            return new Packing(title, contents, printers, printer, Work.MAKING_PAGES, Optional.empty(), Came.WELL);
        }

        Packing saying(Came how, Optional<String> what) {
            return new Packing(title, contents, printers, printer, Work.NONE, what, how);
        }
    }

    /** Whether pages are being made. */
    public enum Work {
        NONE,
        MAKING_PAGES
    }

    /** How a try ended. */
    public enum Came {
        WELL,
        NOT
    }

    /** The plan being made or changed. */
    public record Editing(Draft draft, Side side, LocalDate today, List<String> people, List<String> cages)
            implements Page {

        public Editing {
            people = List.copyOf(people);
            cages = List.copyOf(cages);
        }
    }

    /** Which of the two days is being picked. */
    public enum Side {
        FIRST_DAY,
        LAST_DAY
    }

    /**
     * A plan in the making.
     *
     * @param changes whether it changes days already planned
     */
    public record Draft(
            LocalDate from,
            LocalDate to,
            Optional<String> sitter,
            Optional<String> second,
            String vet,
            List<String> leaveAlone,
            Optional<String> feeder,
            Changes changes) {

        public Draft {
            leaveAlone = List.copyOf(leaveAlone);
        }

        Draft on(LocalDate first, LocalDate last) {
            return new Draft(first, last, sitter, second, vet, leaveAlone, feeder, changes);
        }

        Draft by(Optional<String> other) {
            return new Draft(from, to, other, second, vet, leaveAlone, feeder, changes);
        }

        Draft helpedBy(Optional<String> other) {
            return new Draft(from, to, sitter, other, vet, leaveAlone, feeder, changes);
        }

        Draft vet(String other) {
            return new Draft(from, to, sitter, second, other, leaveAlone, feeder, changes);
        }

        Draft leavingAlone(List<String> cages) {
            return new Draft(from, to, sitter, second, vet, cages, feeder, changes);
        }

        Draft fedBy(Optional<String> other) {
            return new Draft(from, to, sitter, second, vet, leaveAlone, other, changes);
        }
    }

    /** Whether a plan is new. */
    public enum Changes {
        NEW,
        PLANNED
    }

    /**
     * What happened, and what waits.
     *
     * @param days the days told of
     * @param course how the days away came, beside the plan; empty where nobody was away
     * @param strip who looked at what
     * @param sections the most urgent first; those that are empty are left out
     * @param unread how many lines have not been ticked
     * @param reading whether anything is left to tick
     * @param view what of it is looked at
     */
    public record Happened(
            String days, String course, StripFace strip, List<Section> sections, int unread, Reading reading, View view)
            implements Page {

        public Happened {
            sections = List.copyOf(sections);
        }

        Happened in(Reading other) {
            return new Happened(days, course, strip, sections, unread, other, view);
        }
    }

    /** Whether anything is left to tick. */
    public enum Reading {
        TO_READ,
        /** All is being ticked at this moment. */
        TICKING,
        ALL_READ
    }

    /** What of the review is looked at. */
    public sealed interface View {}

    /** The strip, and how many there are of everything. */
    public record AtAGlance() implements View {}

    /**
     * Every line.
     *
     * @param from the section to begin with; the first where it is empty
     */
    public record LineByLine(String from) implements View {}

    /** All that happened at one cage. */
    public record OneCage(String cage, String title, List<Row> rows) implements View {

        public OneCage {
            rows = List.copyOf(rows);
        }
    }

    /**
     * Who looked at what.
     *
     * @param days a number for each
     * @param dates the same days with their months
     * @param key what each mark that is there means
     */
    public record StripFace(List<String> days, List<String> dates, List<StripEntry> lines, List<Key> key) {

        public StripFace {
            days = List.copyOf(days);
            dates = List.copyOf(dates);
            lines = List.copyOf(lines);
            key = List.copyOf(key);
        }
    }

    /** One line of it. */
    public sealed interface StripEntry permits StripLine, EmptyCages {}

    /** Cages that follow one another and hold nothing, said once. */
    public record EmptyCages(String said) implements StripEntry {}

    /**
     * One cage, a mark for each day.
     *
     * @param said the same in words
     * @param remark what of it is out of the ordinary
     */
    public record StripLine(String cage, String said, String remark, List<DayMark> marks) implements StripEntry {

        public StripLine {
            marks = List.copyOf(marks);
        }
    }

    /** What a mark means. */
    public record Key(DayMark mark, String text) {}

    /**
     * One kind of thing that happened.
     *
     * @param count how many of them
     * @param word what stands below that number
     */
    public record Section(String name, String title, int count, String word, DayMark.Ground ground, List<Row> rows) {

        public Section {
            rows = List.copyOf(rows);
        }
    }

    /** A line of the review, and what a touch of it does. */
    public record Row(String name, RowFace face, Touch touch) {

        boolean isUnread() {
            return touch instanceof Tick;
        }
    }

    /** What a touch of a line does. */
    public sealed interface Touch {}

    /** Nothing: it is read, or there is nothing to read. */
    public record Nowhere() implements Touch {}

    /**
     * It is ticked as read.
     *
     * @param days what nobody recorded on them, as tasks
     */
    public record Tick(List<Long> entries, List<String> days) implements Touch {

        public Tick {
            entries = List.copyOf(entries);
            days = List.copyOf(days);
        }
    }

    /** It leads there. */
    public record Go(Destination to) implements Touch {}
}
