/**
 * Setting the birdroom up: the three first steps of an empty room, then walls and cages, people, food, the room itself
 * and backups, each a part of its own with its presenter and state. For the owner alone.
 */
package org.cagewall.kiosk.setup;
