package org.cagewall.cards;

import org.cagewall.paper.Area;
import org.cagewall.paper.Type;

/**
 * How large a face is written, in millimetres; types by the height of their capitals. Immutable; any thread.
 *
 * @param name the most that the cage's name is written in
 * @param lead pair and round
 * @param bird a ring
 * @param label words before a ring
 * @param kept whom a flight keeps
 * @param line one of many birds
 * @param leadGap above the lead
 * @param sinceGap above the day
 * @param birdGap above a ring
 * @param leadWidth the least width in which a line is begun
 * @param birdWidth the least width in which a ring is begun
 * @param labelWidth from a label to its ring
 */
record Style(
        double name,
        Type lead,
        Type bird,
        Type label,
        Type kept,
        Type line,
        double leadGap,
        double sinceGap,
        double birdGap,
        double leadWidth,
        double birdWidth,
        double labelWidth) {

    /** On a card of the usual size, 85 x 54 mm. */
    private static final Style PLAIN = new Style(
            10.5,
            Type.bold(2.8),
            Type.bold(3.3),
            Type.regular(2.2),
            Type.medium(3),
            Type.medium(2.3),
            1.1,
            1.9,
            2.3,
            22,
            27,
            8.6);

    private static final Style LARGE = new Style(
            15.5,
            Type.bold(4.2),
            Type.bold(5.2),
            Type.regular(2.6),
            Type.bold(5.2),
            Type.bold(3.4),
            2.2,
            2.2,
            2.6,
            24,
            33,
            9.6);

    private static final Style FLIGHT = new Style(
            10.5,
            Type.bold(2.8),
            Type.bold(3.3),
            Type.regular(2.2),
            Type.bold(4.2),
            Type.medium(2.3),
            1.4,
            1.9,
            2.3,
            22,
            27,
            8.6);

    static Style of(Face face, Area card) {
        Style usual =
                switch (face) {
                    case PLAIN -> PLAIN;
                    case LARGE -> LARGE;
                    case FLIGHT -> FLIGHT;
                };
        return usual.scaled(Blank.scale(card));
    }

    /** The height of a ring and the white above it. */
    double birdHeight() {
        return birdGap + bird.capitals();
    }

    /** With rings enlarged by this factor. */
    Style withBirds(double by) {
        return new Style(
                name,
                lead,
                times(bird, by),
                label,
                kept,
                line,
                leadGap,
                sinceGap,
                birdGap * by,
                leadWidth,
                birdWidth,
                labelWidth);
    }

    private Style scaled(double by) {
        return new Style(
                name * by,
                times(lead, by),
                times(bird, by),
                times(label, by),
                times(kept, by),
                times(line, by),
                leadGap * by,
                sinceGap * by,
                birdGap * by,
                leadWidth * by,
                birdWidth * by,
                labelWidth * by);
    }

    private static Type times(Type type, double by) {
        return type.sized(type.capitals() * by);
    }
}
