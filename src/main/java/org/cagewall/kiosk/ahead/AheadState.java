package org.cagewall.kiosk.ahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.strip.RangeChart;
import org.cagewall.plan.Policy;

/**
 * What the screen of the days ahead shows. Immutable; any thread.
 *
 * @param answer empty until it is worked out
 * @param nest the nest whose ways out are shown
 * @param calendar what came of a calendar that was to be saved, until something else is touched
 */
record AheadState(
        String subtitle,
        Tab tab,
        LocalDate today,
        LocalDate clearBy,
        String clearByWord,
        Policy policy,
        int rounds,
        Picking picking,
        Optional<Answer> answer,
        Optional<String> nest,
        Optional<Said> calendar) {

    /** The parts of the answer. */
    enum Tab {
        DATES,
        NESTS,
        DAYS,
        EGGS
    }

    /** Whether a day is being picked. */
    enum Picking {
        NOTHING,
        DAY
    }

    /** Whether what was to be done came off. */
    enum Came {
        WELL,
        NOT
    }

    record Said(Came came, String sentence) {}

    /**
     * All that was worked out, in words.
     *
     * @param heads of the columns
     * @param reckoned the days between the steps
     * @param notes below the columns
     */
    record Answer(
            List<String> heads,
            List<Step> steps,
            List<Days> reckoned,
            List<String> notes,
            List<Nest> nests,
            List<Chart> charts,
            String drawn,
            List<Egg> eggs) {

        Answer {
            heads = List.copyOf(heads);
            steps = List.copyOf(steps);
            reckoned = List.copyOf(reckoned);
            notes = List.copyOf(notes);
            nests = List.copyOf(nests);
            charts = List.copyOf(charts);
            eggs = List.copyOf(eggs);
        }
    }

    record Step(String word, List<String> days) {}

    /** What takes how many days, in each column. */
    record Days(String what, String many) {}

    record Nest(String cage, RowFace face, String done, String chance, String inTheWay, List<Way> ways) {}

    record Way(String words, String done, String cost) {}

    record Chart(String name, String title, List<RangeChart.Bar> bars, String said) {}

    /** An egg that could go to another nest. */
    record Egg(RowFace face, String from, String mark, String to) {}

    AheadState turnedTo(Tab other) {
        return new AheadState(
                subtitle,
                other,
                today,
                clearBy,
                clearByWord,
                policy,
                rounds,
                Picking.NOTHING,
                answer,
                Optional.empty(),
                Optional.empty());
    }

    AheadState picking(Picking what) {
        return new AheadState(
                subtitle, tab, today, clearBy, clearByWord, policy, rounds, what, answer, nest, Optional.empty());
    }

    AheadState of(Optional<String> cage) {
        return new AheadState(
                subtitle, tab, today, clearBy, clearByWord, policy, rounds, picking, answer, cage, Optional.empty());
    }

    AheadState asking(LocalDate day, String word, Policy when, int many) {
        return new AheadState(
                subtitle, tab, today, day, word, when, many, Picking.NOTHING, Optional.empty(), nest, Optional.empty());
    }

    AheadState answered(String said, Optional<Answer> all) {
        return new AheadState(said, tab, today, clearBy, clearByWord, policy, rounds, picking, all, nest, calendar);
    }

    AheadState saying(Said ofTheCalendar) {
        return new AheadState(
                subtitle,
                tab,
                today,
                clearBy,
                clearByWord,
                policy,
                rounds,
                picking,
                answer,
                nest,
                Optional.of(ofTheCalendar));
    }
}
