package org.cagewall.deed;

/** A deed about one bird, by ring or name. */
interface AboutBird {

    String bird();
}
