package org.cagewall.room;

/**
 * From which age a bird is bred from. Immutable; any thread.
 *
 * @param never months below which it is not paired up at all
 * @param usual months from which it is paired up without a question
 */
public record BreedingAge(int never, int usual) {}
