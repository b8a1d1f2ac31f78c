package org.cagewall.deed;

/** A deed with all that was told of it: one line of the record. Immutable; any thread. */
public record Line(Deed deed, Circumstances told) {

    public Line beingSure() {
        return new Line(deed, told.beingSure());
    }
}
