package org.cagewall.kiosk.today;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.Sign;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Urgency;
import org.cagewall.tasks.Vital;

/**
 * What the day's list shows. Immutable; any thread.
 *
 * @param audience whose list it is
 * @param mayChoose whose lists may be chosen from; only one for a sitter
 * @param part the round of the sitter's day
 * @param page what fills the place of the list
 * @param stop the panel that is always there
 */
public record TodayState(
        String title,
        String subtitle,
        Audience audience,
        List<Audience> mayChoose,
        DayPart part,
        Page page,
        Stop stop) {

    public TodayState {
        mayChoose = List.copyOf(mayChoose);
    }

    /** What fills the place of the list. */
    public sealed interface Page {

        /** Whether something is filled in on it that would be lost with it. */
        default boolean isForm() {
            return false;
        }

        /** The cage at which something is different, where it is about that. */
        default Optional<Destination.Different> reports() {
            return Optional.empty();
        }
    }

    /**
     * The list.
     *
     * @param next the line whose turn it is, opened out
     * @param likewise the others that will have their turn, opened out as the next will be
     * @param degrees the line that asks how warm the room is, at any time; only a sitter is asked
     * @param foot what is said below the last line; may be empty
     */
    public record Lines(
            Optional<Next> next,
            List<Next> likewise,
            List<Line> lines,
            Optional<AllDone> allDone,
            Optional<RowFace> degrees,
            String foot)
            implements Page {

        public Lines {
            likewise = List.copyOf(likewise);
            lines = List.copyOf(lines);
        }
    }

    /** A line to touch. */
    public record Line(String task, RowFace face) {}

    /**
     * The line whose turn it is.
     *
     * @param first what to see, or what it is
     * @param how what is done at every cage
     * @param brief the same in few words, for large letters
     * @param mind what is particular to this one; may be empty
     * @param why what it is for; may be empty
     * @param acts what can be answered
     */
    public record Next(
            String task,
            String lead,
            String first,
            String how,
            String brief,
            String mind,
            String why,
            List<TaskAct> acts) {

        public Next {
            acts = List.copyOf(acts);
        }
    }

    /** Nothing is left on this list. */
    public record AllDone(String title, String text, Optional<TaskAct> then) {}

    /** Which of a row's cages is meant. */
    public record Which(String task, String title, List<String> cages) implements Page {

        public Which {
            cages = List.copyOf(cages);
        }
    }

    /**
     * What was seen at a cage that is different.
     *
     * @param thenAsked whether questions about the bird follow before it is recorded
     */
    public record Different(Destination.Different at, String title, boolean thenAsked) implements Page {

        @Override
        public boolean isForm() {
            return true;
        }

        @Override
        public Optional<Destination.Different> reports() {
            return Optional.of(at);
        }
    }

    /**
     * The three questions about it.
     *
     * @param signs what was seen
     * @param questions what is asked about the bird
     */
    public record Asked(Destination.Different at, String title, List<Sign> signs, String note, List<Vital> questions)
            implements Page {

        public Asked {
            signs = List.copyOf(signs);
            questions = List.copyOf(questions);
        }

        @Override
        public boolean isForm() {
            return true;
        }

        @Override
        public Optional<Destination.Different> reports() {
            return Optional.of(at);
        }
    }

    /**
     * Why a task was not done.
     *
     * @param ofDishes the question about food and water, where birds go without if nobody asks; else empty
     */
    public record NotDone(String task, String title, Optional<String> ofDishes) implements Page {

        @Override
        public boolean isForm() {
            return true;
        }
    }

    /**
     * Something is recorded that somebody has to know of: whether to phone, and whom, the first first.
     *
     * @param about the most pressing danger of which it speaks
     * @param urgency how soon to phone about that
     * @param steps what to do about that, before somebody answers and until then
     * @param entry the last of what was recorded; once it is taken back, this page says nothing true any more
     * @param after the questions that are asked once somebody was phoned
     */
    public record Recorded(
            String title,
            String text,
            Optional<Danger> about,
            Urgency urgency,
            List<String> steps,
            List<Phone> phones,
            long entry,
            Optional<Asked> after)
            implements Page {

        public Recorded {
            steps = List.copyOf(steps);
            phones = List.copyOf(phones);
        }

        public Recorded(
                String title,
                String text,
                Optional<Danger> about,
                Urgency urgency,
                List<String> steps,
                List<Phone> phones,
                long entry) {
            this(title, text, about, urgency, steps, phones, entry, Optional.empty());
        }
    }

    /** How warm the room is. */
    public record Degrees(String title, String text) implements Page {

        @Override
        public boolean isForm() {
            return true;
        }
    }

    /** Cautions for people and birds. */
    public record Safety(List<Caution> cautions) implements Page {

        public Safety {
            cautions = List.copyOf(cautions);
        }
    }

    /** One caution: what it is about, and its sentences. */
    public record Caution(String title, String text) {}

    /**
     * When to stop and whom to phone.
     *
     * @param agreed what was agreed by phone and holds today
     */
    public record Stop(List<String> rules, List<Phone> phones, List<String> agreed) {

        public Stop {
            rules = List.copyOf(rules);
            phones = List.copyOf(phones);
            agreed = List.copyOf(agreed);
        }
    }

    /** Somebody to phone. */
    public record Phone(String name, String number) {}

    TodayState showing(Page other) {
        return new TodayState(title, subtitle, audience, mayChoose, part, other, stop);
    }
}
