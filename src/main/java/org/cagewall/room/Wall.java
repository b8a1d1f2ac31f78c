package org.cagewall.room;

/** A wall of the birdroom, as rows and columns of places for cages. Immutable; any thread. */
public record Wall(long id, String name, int rows, int columns) {}
