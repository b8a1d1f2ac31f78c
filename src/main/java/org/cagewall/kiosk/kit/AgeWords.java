package org.cagewall.kiosk.kit;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.cagewall.text.Words;

/** Puts the age of a bird into words, as exactly as its hatching was told. Pure; any thread. */
public final class AgeWords {

    /** Letters of a year. */
    private static final int YEAR = 4;

    private static final int DAYS_TOLD = 14;

    private static final int WEEKS_TOLD = 16;

    private static final int MONTHS_TOLD = 24;

    private AgeWords() {}

    /** The age on that day, "7 weeks". */
    public static String of(String hatched, LocalDate today, Words words) {
        if (hatched.length() == YEAR) {
            return words.say("birds.age.about", today.getYear() - Integer.parseInt(hatched));
        }
        LocalDate day = LocalDate.parse(hatched);
        long days = ChronoUnit.DAYS.between(day, today);
        long months = ChronoUnit.MONTHS.between(day, today);
        if (days < DAYS_TOLD) {
            return words.say("birds.age.days", days);
        }
        if (days / 7 < WEEKS_TOLD) {
            return words.say("birds.age.weeks", days / 7);
        }
        return months < MONTHS_TOLD
                ? words.say("birds.age.months", months)
                : words.say("birds.age.years", ChronoUnit.YEARS.between(day, today));
    }
}
