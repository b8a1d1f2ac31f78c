package org.cagewall.handover;

import org.cagewall.text.Message;

/** What is seen to before the owner goes; its word stands in the id of what is ticked by hand. */
public enum Matter {
    /** Nests that are not done by the day of leaving. */
    NESTS,
    /** Chicks to ring before that day, and who can ring meanwhile. */
    RINGING,
    /** Chicks that will have fed themselves for too few days. */
    WEANED,
    /** Birds that will have been in a flight for too few days. */
    FLIGHT,
    /** New birds that are kept apart. */
    QUARANTINE,
    /** Birds that the owner's own rule on treating names. */
    TREATMENTS,
    /** Cards that no longer tell what they should. */
    CARDS,
    /** What each cage is given, and how much. */
    ROUTINES,
    /** Somebody feeds the cages that the sitter does not touch. */
    ALONE,
    /** Seed and food for the days away. */
    SHOPPING,
    /** Whoever can be phoned has a number. */
    PHONES,
    /** Somebody else who knows the birds. */
    SECOND,
    /** Somebody for a bird that is ill. */
    VET,
    KEYS,
    /** What the sitter does when it is hot. */
    HEAT_PLAN,
    /** A dim light, against panic in the dark. */
    NIGHT_LIGHT,
    /** One round walked by the sitter while the owner looks on. */
    ROUND;

    /** The word in an id: {@code ready-heat-plan}. */
    String kind() {
        return "ready-" + word();
    }

    /** The word in names and sentences: {@code heat-plan}. */
    public String word() {
        return Message.word(this);
    }
}
