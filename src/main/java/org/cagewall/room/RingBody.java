package org.cagewall.room;

/** Whose rings the owner buys: the bodies whose page of colours is known, or another one. */
public enum RingBody {
    WORLD,
    SOCIETY,
    OTHER
}
