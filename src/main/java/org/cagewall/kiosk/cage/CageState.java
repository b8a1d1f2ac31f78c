package org.cagewall.kiosk.cage;

import java.util.List;
import java.util.Optional;

/**
 * What a cage's page shows. Immutable; any thread.
 *
 * @param known whether there is such a cage
 * @param nest the nest box of its pair, where there is a pair
 * @param birds the birds in it, a card each
 * @param flock birds in it that are not known one by one, as a sentence
 * @param entries the last entries, the newest first
 * @param actions what can be recorded now, the likeliest first
 * @param yesterday whether what is touched is recorded for yesterday
 * @param card what is wrong with its card, where something is
 */
public record CageState(
        boolean known,
        String title,
        String subtitle,
        Optional<Nest> nest,
        List<BirdFace> birds,
        Optional<String> flock,
        List<EntryFace> entries,
        List<Action> actions,
        boolean yesterday,
        Optional<String> card) {

    public CageState {
        birds = List.copyOf(birds);
        entries = List.copyOf(entries);
        actions = List.copyOf(actions);
    }

    /** The nest box: a line about it, and its eggs. */
    public record Nest(String title, String line, List<EggFace> eggs, String below) {}

    /** An egg as it is drawn. */
    public record EggFace(String mark, String line, String said, long entry) {}

    /** A bird in the cage. */
    public record BirdFace(long id, String sex, String ring, String line) {}

    /** An entry of the log. */
    public record EntryFace(long number, long touch, String when, String what, boolean struck) {}

    /** Something that can be recorded by one touch, or that begins with one. */
    public record Action(String name, String text) {}
}
