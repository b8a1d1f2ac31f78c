package org.cagewall.room;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;

/**
 * When a year's closed rings are issued: a ring's year is that of its issue and need not be that of the hatch. Immutable;
 * any thread.
 *
 * @param day the day of each year on which new rings are issued
 * @param of whether they bear that year or the one that follows
 */
public record RingIssue(MonthDay day, RingsOf of) {

    /**
     * Where the owner has not said so, rings issued in this month or later bear the year that follows: most of Europe
     * issues them in October (a trade magazine's page), Australia in January (its council's by-law 7a).
     */
    private static final Month NEXT_YEARS_FROM = Month.JULY;

    static RingsOf usual(MonthDay day) {
        return day.getMonth().compareTo(NEXT_YEARS_FROM) >= 0 ? RingsOf.NEXT_YEAR : RingsOf.THIS_YEAR;
    }

    /** The year of the rings that are the newest on a day. */
    public int ringYear(LocalDate today) {
        int issues = today.isBefore(day.atYear(today.getYear())) ? today.getYear() - 1 : today.getYear();
        return issues + ahead();
    }

    /** The day on which a year's rings are issued. */
    public LocalDate issued(int ringYear) {
        return day.atYear(ringYear - ahead());
    }

    private int ahead() {
        return of == RingsOf.NEXT_YEAR ? 1 : 0;
    }
}
