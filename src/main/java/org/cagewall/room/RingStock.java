package org.cagewall.room;

/** Rings bought: a run of numbers of one year and size. Immutable; any thread. */
public record RingStock(int year, String size, int first, int last) {}
