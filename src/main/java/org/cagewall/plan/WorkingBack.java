package org.cagewall.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cagewall.almanac.Origin;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.Timetable;
import org.cagewall.almanac.Value;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.text.Message;

/**
 * Until when a box may be put on for everything to be done by a day, worked out from that day backwards; days long past
 * are told like any other. Pure; immutable; any thread.
 *
 * @param timetable by which it is reckoned: the room's, its own numbers in it
 * @param rounds how many are to be reared, one or more
 * @param columns the days of the last round, and of the box before the first, in each column; the rounds before it come as
 *     many times {@link Timing#NEXT_ROUND} sooner
 */
public record WorkingBack(Timetable timetable, LocalDate clearBy, Policy policy, int rounds, Map<Pace, Steps> columns) {

    /** What a timetable must tell for it. */
    private static final List<Timing> NEEDED = List.of(
            Timing.FIRST_EGG,
            Timing.LAY_GAP,
            Timing.SITS_FROM,
            Timing.CLUTCH,
            Timing.INCUBATION,
            Timing.RINGING,
            Timing.OUT_OF_BOX,
            Timing.INDEPENDENT,
            Timing.HENS_REST,
            Timing.NEXT_ROUND);

    /** What a round before the last comes to as well: its box stays on, and nobody is parted. */
    private static final List<Steps.Step> OF_EACH_ROUND =
            List.of(Steps.Step.FIRST_EGG, Steps.Step.LAST_EGG, Steps.Step.LAST_HATCH, Steps.Step.INDEPENDENT);

    /**
     * A step of one round.
     *
     * @param round from 1
     */
    public record Row(int round, Steps.Step step) {}

    public WorkingBack {
        columns = Map.copyOf(columns);
    }

    /**
     * Empty where too little is known of the species.
     *
     * @param rounds one or more
     * @throws IllegalArgumentException for fewer rounds than one
     */
    public static Optional<WorkingBack> from(Timetable timetable, LocalDate clearBy, Policy policy, int rounds) {
        if (rounds < 1) {
            throw new IllegalArgumentException("rounds: " + rounds);
        }
        if (!isKnown(timetable)) {
            return Optional.empty();
        }
        Map<Pace, Steps> columns = new EnumMap<>(Pace.class);
        for (Pace pace : Pace.values()) {
            columns.put(pace, new Column(timetable, pace).back(clearBy, policy, rounds));
        }
        return Optional.of(new WorkingBack(timetable, clearBy, policy, rounds, columns));
    }

    /** Whether a timetable tells all that looking ahead needs. */
    static boolean isKnown(Timetable timetable) {
        return NEEDED.stream().allMatch(timing -> timetable.span(timing).isPresent());
    }

    public Steps column(Pace pace) {
        return columns.get(pace);
    }

    /** Round by round, each in the order of its steps; the box goes on with the first and the pair is parted after the last. */
    public List<Row> rows() {
        return IntStream.rangeClosed(1, rounds)
                .boxed()
                .flatMap(round -> Arrays.stream(Steps.Step.values())
                        .filter(step -> isOf(round, step))
                        .map(step -> new Row(round, step)))
                .toList();
    }

    private boolean isOf(int round, Steps.Step step) {
        return OF_EACH_ROUND.contains(step) || round == (step == Steps.Step.BOX_ON ? 1 : rounds);
    }

    public LocalDate day(Pace pace, Row row) {
        LocalDate ofTheLast = column(pace).day(row.step());
        return row.step() == Steps.Step.BOX_ON
                ? ofTheLast
                : ofTheLast.minusDays((long) (rounds - row.round())
                        * pace.of(timetable.span(Timing.NEXT_ROUND).orElseThrow()));
    }

    /** What it is, as words: 'first egg', and of several rounds 'round 2: first egg'. */
    public Message word(Row row) {
        return rounds == 1 || row.step() == Steps.Step.BOX_ON
                ? Message.of("word.step." + Message.word(row.step()))
                : Message.of("plan.of-round", row.round(), row.step());
    }

    /** From which row the days to this one are counted: a further round's first egg from that of the round before. */
    public Optional<Row> before(Row row) {
        return row.step() == Steps.Step.FIRST_EGG && row.round() > 1
                ? Optional.of(new Row(row.round() - 1, Steps.Step.FIRST_EGG))
                : row.step().before().map(step -> new Row(row.round(), step));
    }

    /** How many days lie before it, column by column, once where they are the same; empty for the first. */
    public Optional<Message> days(Row row) {
        return before(row).map(before -> {
            List<Long> days = Arrays.stream(Pace.values())
                    .map(pace -> ChronoUnit.DAYS.between(day(pace, before), day(pace, row)))
                    .toList();
            return days.stream().distinct().count() == 1
                    ? Message.of("plan.days", days.get(0))
                    : Message.of("plan.days-each", days.get(0), days.get(1), days.get(2));
        });
    }

    /** Which of the values it leans on were drawn towards the room's own numbers. */
    public List<Value> ownNumbers() {
        return NEEDED.stream()
                .flatMap(timing -> timetable.value(timing).stream())
                .filter(value -> value.origin() == Origin.OWN_NUMBERS)
                .toList();
    }

    /** Whose numbers it is reckoned by, as a sentence. */
    public Message numbers() {
        List<Message> own = ownNumbers().stream()
                .map(value -> Message.of("plan.number", value.timing(), value.count()))
                .toList();
        return own.isEmpty() ? Message.of("plan.numbers-usual") : Message.of("plan.numbers-own", own);
    }

    /** From the first egg of a usual clutch to its last: the usual gaps, in every column. In days. */
    static int layingDays(Timetable timetable) {
        return (usual(timetable, Timing.CLUTCH) - 1) * usual(timetable, Timing.LAY_GAP);
    }

    static int usual(Timetable timetable, Timing timing) {
        return timetable.span(timing).map(Span::expected).orElseThrow();
    }

    private record Column(Timetable timetable, Pace pace) {

        Steps back(LocalDate clearBy, Policy policy, int rounds) {
            LocalDate lastHatch =
                    switch (policy) {
                        case WEANED -> clearBy.minusDays(days(Timing.INDEPENDENT));
                        case APART -> clearBy.minusDays(days(Timing.HENS_REST)).minusDays(cockFeeds());
                    };
            LocalDate independent = lastHatch.plusDays(days(Timing.INDEPENDENT));
            LocalDate boxTurned = lastHatch.plusDays(days(Timing.OUT_OF_BOX));
            LocalDate boxOff = boxTurned.plusDays(PartingOutlook.BETWEEN_STAGES_DAYS);
            LocalDate cockOut = lastHatch.plusDays(cockFeeds());
            LocalDate lastEgg = lastHatch.minusDays(days(Timing.INCUBATION));
            LocalDate firstEgg = lastEgg.minusDays(layingDays(timetable));
            LocalDate boxOn =
                    firstEgg.minusDays(days(Timing.FIRST_EGG)).minusDays((rounds - 1L) * days(Timing.NEXT_ROUND));
            return new Steps(
                    boxOn,
                    firstEgg,
                    lastEgg,
                    lastHatch,
                    boxTurned,
                    boxOff,
                    independent,
                    cockOut,
                    cockOut.plusDays(days(Timing.HENS_REST)));
        }

        /** From the last chick's hatching to the cock out: when it feeds itself, and not before the box is off. */
        private int cockFeeds() {
            return Math.max(days(Timing.INDEPENDENT), days(Timing.OUT_OF_BOX) + 2 * PartingOutlook.BETWEEN_STAGES_DAYS);
        }

        private int days(Timing timing) {
            return pace.of(timetable.span(timing).orElseThrow());
        }
    }
}
