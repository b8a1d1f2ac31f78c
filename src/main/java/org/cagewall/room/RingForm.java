package org.cagewall.room;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cagewall.room.bird.RingStock;

/** Reads the year off a ring that is printed in the usual form. Pure; any thread. */
public final class RingForm {

    /** The last two digits of the year, a dash and the number: {@link RingStock#usualForm}. */
    private static final Pattern USUAL = Pattern.compile("(?<![0-9])(\\d{2})-\\d{1,5}$");

    private static final int CENTURY = 100;

    private RingForm() {}

    /**
     * The year on a ring; empty where it is printed otherwise, or where that year does not go with the bird.
     *
     * @param hatched the year in which the bird hatched: rings of the next are issued in the autumn before
     * @param newest the youngest year of which there are rings
     */
    public static Optional<Integer> year(String ring, Optional<Integer> hatched, int newest) {
        Matcher digits = USUAL.matcher(ring);
        if (!digits.find()) {
            return Optional.empty();
        }
        int year = newest - Math.floorMod(newest - Integer.parseInt(digits.group(1)), CENTURY);
        return Optional.of(year).filter(read -> hatched.filter(of -> read != of && read != of + 1)
                .isEmpty());
    }
}
