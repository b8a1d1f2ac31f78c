package org.cagewall.room;

/**
 * Where a cage hangs on a wall.
 *
 * @param wall the wall's id
 * @param row counted from 1 at the top
 * @param column counted from 1 at the left
 */
public record Place(long wall, int row, int column) {}
