package org.cagewall.paper;

/**
 * How a text is set, measured by what a reader sees, the height of its capitals. Immutable; any thread.
 *
 * @param weight how heavy
 * @param capitals height of a capital letter in millimetres
 * @param stretch how wide the letters are: 1 as drawn, 0.7 narrowed to seven tenths
 */
public record Type(Weight weight, double capitals, double stretch) {

    public static Type regular(double capitals) {
        return new Type(Weight.REGULAR, capitals, 1);
    }

    public static Type medium(double capitals) {
        return new Type(Weight.MEDIUM, capitals, 1);
    }

    public static Type bold(double capitals) {
        return new Type(Weight.BOLD, capitals, 1);
    }

    public Type sized(double newCapitals) {
        return new Type(weight, newCapitals, stretch);
    }

    public Type stretched(double newStretch) {
        return new Type(weight, capitals, newStretch);
    }
}
