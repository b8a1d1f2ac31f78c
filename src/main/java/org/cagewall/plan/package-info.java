/**
 * Working back from a day, what may come of the nests until then, and which eggs could go to another nest: all of it worked
 * out from the room, a date and a seed.
 */
package org.cagewall.plan;
