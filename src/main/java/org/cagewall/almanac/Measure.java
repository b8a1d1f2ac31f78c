package org.cagewall.almanac;

/** What a pair brought about, beside the same for all pairs of its species in this room, itself among them. */
public record Measure(Rate pair, Rate room) {}
