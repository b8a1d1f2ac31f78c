package org.cagewall.handover;

import static org.cagewall.handover.PackLeafPdf.LEFT;
import static org.cagewall.handover.PackLeafPdf.RIGHT;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Type;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Words;

/** One day's list with squares to tick, in walking order. One thread, while the document is being drawn. */
record PackDayPdf(PackLeafPdf leaf, Words words) {

    /** The morning has the wider column, since more is done then. */
    private static final double MORNING = 104;

    private static final double GAP = 7;
    private static final double EVENING_LEFT = LEFT + MORNING + GAP;
    private static final double EVENING = RIGHT - EVENING_LEFT;
    private static final double NOTES = 27;

    /** What is done at every cage is printed once, at the head. */
    private static final Set<String> EVERY_CAGE = Set.of(
            "tasks.brief-husks",
            "tasks.brief-seed",
            "tasks.brief-water",
            "tasks.brief-box-shut",
            "tasks.brief-evening",
            "tasks.brief-evening-touch");

    /** Letters are not made smaller than this share; what has no room then goes on on the next leaf. */
    private static final double SMALLEST = 0.75;

    private static final double STEP = 0.05;

    /** How wide the square to tick and the cage's name are together, and the square alone. */
    private static final double NAMED = 23;

    private static final double SQUARE = 4.4;
    private static final double SMALLEST_NAME = 1.6;

    /** How far the first line stands below the top of its square. */
    private static final double DOWN = 0.9;

    /** The head of a column: what it is, and what is done at every cage in at most three lines. */
    private static final double HEAD = 19;

    void draw(Pack.Day day) {
        String title = words.say("pack.day", day.number(), words.longDay(day.date()));
        leaf.begin(title, words.say("pack.day-hint"));
        double top = leaf.y();
        double scale = scale(day, leaf.room() - NOTES);
        int mornings = fitting(day.morning(), MORNING, scale, leaf.room() - NOTES);
        int evenings = fitting(day.evening(), EVENING, scale, leaf.room() - NOTES);
        column("pack.in-the-morning", day.morning().subList(0, mornings), LEFT, MORNING, scale);
        leaf.at(top);
        column("pack.in-the-evening", day.evening().subList(0, evenings), EVENING_LEFT, EVENING, scale);
        notes();
        List<Task> moreMornings = day.morning().subList(mornings, day.morning().size());
        List<Task> moreEvenings = day.evening().subList(evenings, day.evening().size());
        if (!moreMornings.isEmpty() || !moreEvenings.isEmpty()) {
            draw(new Pack.Day(day.date(), day.number(), moreMornings, moreEvenings));
        }
    }

    /** The largest letters in which the day has room on one leaf, or else the smallest. */
    private double scale(Pack.Day day, double room) {
        double scale = 1;
        while (scale - STEP >= SMALLEST
                && Math.max(height(day.morning(), MORNING, scale), height(day.evening(), EVENING, scale)) > room) {
            scale -= STEP;
        }
        return scale;
    }

    /** How many of the lines have room; at least one, so that every leaf holds something. */
    private int fitting(List<Task> tasks, double width, double scale, double room) {
        int count = tasks.size();
        while (count > 1 && height(tasks.subList(0, count), width, scale) > room) {
            count--;
        }
        return count;
    }

    private double height(List<Task> tasks, double width, double scale) {
        return HEAD
                + tasks.stream().mapToDouble(task -> height(task, width, scale)).sum();
    }

    private double height(Task task, double width, double scale) {
        return leaf.height(text(task, scale), type(task, scale), width - indent(task, scale)) + 3.4 * scale;
    }

    private Type type(Task task, double scale) {
        return hasName(task, scale) ? PackLeafPdf.TEXT.sized(2.3 * scale) : PackLeafPdf.STRONG.sized(2.3 * scale);
    }

    private double indent(Task task, double scale) {
        return hasName(task, scale) ? NAMED * scale : SQUARE * scale + 2.5;
    }

    private static double nameWidth(double scale) {
        return (NAMED - SQUARE) * scale - 4;
    }

    /** A row says itself which cages it is about, and a name that is too long stands in the line. */
    private boolean hasName(Task task, double scale) {
        return task.row().isEmpty()
                && task.cage()
                        .filter(name -> leaf.page().width(name, Type.bold(SMALLEST_NAME)) <= nameWidth(scale))
                        .isPresent();
    }

    private void column(String heading, List<Task> tasks, double left, double width, double scale) {
        double top = leaf.y();
        leaf.head(words.say(heading), left, width);
        leaf.text(words.say(heading + "-text"), PackLeafPdf.TEXT.sized(2.1), PackLeafPdf.GREY, left, width);
        leaf.at(top + HEAD);
        tasks.forEach(task -> line(task, left, width, scale));
    }

    private void line(Task task, double left, double width, double scale) {
        double top = leaf.y();
        double side = SQUARE * scale;
        leaf.tick(left, top, side);
        if (hasName(task, scale)) {
            String name = task.cage().orElseThrow();
            Type bold = leaf.page().shrunk(name, Type.bold(2.7 * scale), nameWidth(scale), SMALLEST_NAME);
            leaf.page().text(name, bold, Ink.BLACK, left + side + 2.5, top + (DOWN + 2.3) * scale);
        }
        double indent = indent(task, scale);
        leaf.at(top + DOWN * scale);
        leaf.text(text(task, scale), type(task, scale), Ink.BLACK, left + indent, width - indent);
        leaf.at(top + height(task, width, scale));
        leaf.page().line(left, leaf.y() - 1.6 * scale, left + width, leaf.y() - 1.6 * scale, 0.15, PackLeafPdf.RULE);
    }

    /** What should be seen, or is done, and what is particular to this line. */
    private String text(Task task, double scale) {
        String what = task.see()
                .filter(see -> task.kind() == Kind.MORNING)
                .map(words::say)
                .orElseGet(() -> words.say(task.words()));
        String first = task.row().isPresent() || hasName(task, scale)
                ? what
                : words.say("pack.line-at", task.cage().orElse(""), what);
        Stream<String> heading = task.kind() == Kind.EVENING_FOOD && hasName(task, scale)
                ? Stream.empty()
                : Stream.of(words.say("pack.line", first));
        return Stream.concat(
                        heading,
                        task.brief().stream()
                                .filter(message -> !EVERY_CAGE.contains(message.key()))
                                .map(words::say))
                .collect(Collectors.joining(" "));
    }

    /** What is written by hand, at the foot of the leaf. */
    private void notes() {
        leaf.at(PackLeafPdf.BOTTOM - NOTES + 5);
        leaf.blank(words.say("pack.warmest"), LEFT, LEFT + 55);
        leaf.blank(words.say("pack.coldest"), LEFT + 60, LEFT + 115);
        leaf.blank(words.say("pack.who"), LEFT + 120, RIGHT);
        leaf.down(9);
        leaf.blank(words.say("pack.notes"), LEFT, RIGHT);
        leaf.down(9);
        leaf.page().line(LEFT, leaf.y() + 3.3, RIGHT, leaf.y() + 3.3, 0.25, PackLeafPdf.RULE);
    }
}
