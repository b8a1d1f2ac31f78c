package org.cagewall.plan;

import org.cagewall.almanac.Window;
import org.cagewall.text.Message;

/**
 * What can be done about a nest that will not be done in time. Immutable; any thread.
 *
 * @param clear when the nest is done if this is done today
 * @param words what to do
 * @param cost what it takes, or is lost by it
 */
public record WayOut(Way way, Window clear, Message words, Message cost) {

    /** The kinds of them. */
    public enum Way {
        /** Rear fewer rounds than were asked for. */
        FEWER_ROUNDS,
        /** Take the later eggs away and put dummies in, as long as they are not half-way to hatching. */
        DUMMIES,
        /** Take the box off now: never with a chick in it, nor with eggs that are half-way to hatching. */
        BOX_OFF,
        /** Move the late eggs to another nest. */
        FOSTER,
        /** The hen out early; the cock rears. */
        HEN_OUT_EARLY,
        /** Go on a later day. */
        LATER,
        /** Another keeper does what only a keeper can. */
        KEEPER,
        /** Leave it as it is to the one who looks after the room. */
        SITTER
    }
}
