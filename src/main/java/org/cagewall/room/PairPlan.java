package org.cagewall.room;

/** Two birds meant for each other and for a cage. Immutable; any thread. */
public record PairPlan(long id, long cage, long cock, long hen, java.util.Optional<String> label) {}
