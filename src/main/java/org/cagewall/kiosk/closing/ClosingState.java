package org.cagewall.kiosk.closing;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Destination;

/**
 * What the end of the day shows. Immutable; any thread.
 *
 * @param left what is still open, the most pressing first
 * @param ofDishes the question about food and water, where feedings are among what is said not to be done; else empty
 * @param sending the note that is being sent to the owner
 */
public record ClosingState(
        String title,
        String subtitle,
        String word,
        String text,
        List<Left> left,
        Optional<String> ofDishes,
        Step step,
        Optional<Sending> sending) {

    public ClosingState {
        left = List.copyOf(left);
    }

    /** Something that is left, and where a touch on it leads. */
    public record Left(RowFace face, Destination to) {

        boolean isACall() {
            return to instanceof Destination.Phone;
        }
    }

    /** How far the day is closed. */
    public enum Step {
        LEFT,
        WHY,
        DONE
    }

    /**
     * The note as messages that a phone takes from the screen.
     *
     * @param ways the ways it can be sent, the first first; at least one
     * @param way which of them is shown, counted from 0
     * @param part which of its messages is shown, counted from 0
     */
    public record Sending(List<Way> ways, int way, int part) {

        public Sending {
            ways = List.copyOf(ways);
        }

        Way chosen() {
            return ways.get(way);
        }

        Part shown() {
            return chosen().parts().get(part);
        }

        int parts() {
            return chosen().parts().size();
        }

        Sending by(int other) {
            return new Sending(ways, other, 0);
        }

        Sending next() {
            return new Sending(ways, way, (part + 1) % parts());
        }
    }

    /**
     * One way to send it.
     *
     * @param name its name among the parts of the screen
     * @param to whom it goes to, in words
     * @param parts the messages; at least one
     */
    public record Way(String name, String word, String to, List<Part> parts) {

        public Way {
            parts = List.copyOf(parts);
        }
    }

    /** One message: what it says, and the link that makes it on a phone. */
    public record Part(String text, String link) {}

    ClosingState at(Step other) {
        return new ClosingState(title, subtitle, word, text, left, ofDishes, other, sending);
    }

    ClosingState sending(Optional<Sending> other) {
        return new ClosingState(title, subtitle, word, text, left, ofDishes, step, other);
    }
}
