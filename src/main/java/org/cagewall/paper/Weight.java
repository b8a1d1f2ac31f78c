package org.cagewall.paper;

/** How heavy letters are; each weight is a font file of its own. Immutable; any thread. */
public enum Weight {
    REGULAR("Regular"),
    MEDIUM("Medium"),
    BOLD("Bold");

    private final String file;

    Weight(String file) {
        this.file = file;
    }

    /** The font's place among the program's resources: Roboto, TrueType, Apache licence. */
    String resource() {
        return "/com/formdev/flatlaf/fonts/roboto/Roboto-" + file + ".ttf";
    }
}
