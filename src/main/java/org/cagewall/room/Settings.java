package org.cagewall.room;

import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * What the owner has set for the whole birdroom. Immutable; any thread.
 *
 * @param ringsIssued the day of the year on which the new rings are issued
 * @param heatAct room temperature in C from which shade and air are given
 * @param heatPhone room temperature in C from which the sitter phones
 * @param coldPhone room temperature in C at which, and below, the sitter phones
 * @param illFirst who is phoned first for an ill bird
 * @param mostEggs the most eggs one hen covers
 * @param mostChicks the most chicks one pair feeds
 * @param mostRounds a pair is parted after n rounds
 * @param restMonths a hen rests n months before she is paired again
 * @param leastSpace megabytes on the disk of the record below which the program warns; none at 0
 * @param timetable what the owner has set in place of a species' timetable: under {@code budgerigar.incubation} the days
 *     {@code 17 18 21}
 * @param rings of which year, whose and what colour the rings are that are bought
 */
public record Settings(
        String name,
        ZoneId zone,
        String species,
        MonthDay ringsIssued,
        Optional<Quiet> quiet,
        Optional<String> rules,
        int heatAct,
        int heatPhone,
        int coldPhone,
        FirstCall illFirst,
        int mostEggs,
        int mostChicks,
        int mostRounds,
        int restMonths,
        int leastSpace,
        Map<String, String> timetable,
        RingCustom rings) {

    /** When new rings are issued, and of which year they are. */
    public RingIssue ringIssue() {
        return new RingIssue(ringsIssued, rings.of().orElseGet(() -> RingIssue.usual(ringsIssued)));
    }

    /** What the name of a setting begins with that stands in the place of a value of a timetable. */
    public static final String TIMETABLE = "timetable.";

    /** Under what name a species' value is kept: {@code budgerigar.incubation}. */
    public static String timingName(String species, Timing value) {
        return species.toLowerCase(Locale.ROOT) + "." + Message.word(value);
    }

    public Settings {
        timetable = Map.copyOf(timetable);
    }

    /**
     * What holds until the owner says otherwise. Limits of heat and cold, eggs, chicks and rest: common practice, no source; for
     * lovebirds 4 chicks are advised. Rounds: usual club advice, from memory. Space: our own
     * choice.
     */
    public static Settings initial(ZoneId zone) {
        return new Settings(
                "",
                zone,
                "budgerigar",
                MonthDay.of(1, 1),
                Optional.empty(),
                Optional.empty(),
                30,
                32,
                5,
                FirstCall.OWNER,
                6,
                5,
                2,
                3,
                500,
                Map.of(),
                RingCustom.NONE);
    }
}
