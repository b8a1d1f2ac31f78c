package org.cagewall.deed;

/** A deed that happened at one cage. */
interface AtCage {

    String cage();
}
