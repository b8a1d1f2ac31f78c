package org.cagewall.almanac;

import java.util.List;
import org.cagewall.text.Message;

/**
 * What a pair has done so far, for its keeper to decide whether it goes on or is parted. What is still open, such as an
 * egg not yet looked at, counts on neither side. Immutable; any thread.
 *
 * @param rounds in which it laid
 * @param eggs laid in them
 * @param full of the eggs that showed whether they were
 * @param hatched of the eggs whose time is over
 * @param ringed of the chicks ringed, weaned or lost
 * @param weaned of the chicks weaned or lost
 * @param speaksForParting which rules of thumb speak, a sentence each
 */
public record Evidence(
        int rounds,
        int eggs,
        Measure full,
        Measure hatched,
        Measure ringed,
        Measure weaned,
        List<Message> speaksForParting) {

    public Evidence {
        speaksForParting = List.copyOf(speaksForParting);
    }
}
