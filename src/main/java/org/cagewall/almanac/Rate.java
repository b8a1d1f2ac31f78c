package org.cagewall.almanac;

import java.util.OptionalDouble;

/**
 * How many of how many, with how sure one can be of it. Immutable; any thread.
 *
 * @throws IllegalArgumentException where there are more hits than tries, or fewer than none
 */
public record Rate(int hits, int of) {

    /** The point below which 97.5 % of a standard normal law lie; Wilson's interval of 95 %. Any table of that law. */
    private static final double Z = 1.959963984540054;

    public Rate {
        if (hits < 0 || hits > of) {
            throw new IllegalArgumentException(hits + " of " + of);
        }
    }

    Rate plus(Rate other) {
        return new Rate(hits + other.hits, of + other.of);
    }

    /** Between 0 and 1; empty for none of none. */
    public OptionalDouble share() {
        return of == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) hits / of);
    }

    /** The lower end of Wilson's 95 % interval, between 0 and 1; 0 where nothing was tried. */
    public double low() {
        return of == 0 ? 0 : Math.max(0, (centre() - spread()) / (1 + Z * Z / of));
    }

    /** The upper end of Wilson's 95 % interval, between 0 and 1; 1 where nothing was tried. */
    public double high() {
        return of == 0 ? 1 : Math.min(1, (centre() + spread()) / (1 + Z * Z / of));
    }

    private double centre() {
        return (double) hits / of + Z * Z / (2 * of);
    }

    private double spread() {
        double share = (double) hits / of;
        return Z * Math.sqrt(share * (1 - share) / of + Z * Z / (4.0 * of * of));
    }
}
