package org.cagewall.kiosk.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.strip.RangeChart;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.DayAhead;
import org.cagewall.plan.FosterMove;
import org.cagewall.plan.NestAhead;
import org.cagewall.plan.NewRings;
import org.cagewall.plan.Pace;
import org.cagewall.plan.Range;
import org.cagewall.plan.Steps;
import org.cagewall.plan.WayOut;
import org.cagewall.plan.WorkingBack;
import org.cagewall.tasks.WindowWords;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts what is ahead into words for the screen. Immutable; any thread. */
record AheadWords(Words words) {

    /** What takes days that differ between species and rooms. */
    private static final List<Steps.Step> RECKONED = List.of(
            Steps.Step.FIRST_EGG,
            Steps.Step.LAST_EGG,
            Steps.Step.LAST_HATCH,
            Steps.Step.BOX_TURNED,
            Steps.Step.INDEPENDENT,
            Steps.Step.HEN_OUT);

    private static final double HUNDRED = 100;

    private static final double EVEN = 0.5;

    /** A date stands below a chart every n days. */
    private static final int DAYS_BETWEEN_WORDS = 7;

    String subtitle(Ahead ahead) {
        long late = ahead.nests().stream().filter(nest -> !nest.isInTime()).count();
        return words.say("ahead.subtitle", ahead.nests().size(), late);
    }

    AheadState.Answer answer(Ahead ahead, LocalDate today) {
        return new AheadState.Answer(
                Arrays.stream(Pace.values()).map(words::heading).toList(),
                ahead.back().map(back -> steps(back, today)).orElse(List.of()),
                ahead.back().map(this::reckoned).orElse(List.of()),
                notes(ahead),
                ahead.nests().stream()
                        .map(nest -> nest(nest, ahead.question().clearBy()))
                        .toList(),
                charts(ahead),
                words.say("ahead.drawn", ahead.question().draws().count()),
                ahead.fosters().stream().map(this::egg).toList());
    }

    private List<AheadState.Step> steps(WorkingBack back, LocalDate today) {
        return back.rows().stream()
                .map(row -> new AheadState.Step(
                        words.sentence(back.word(row)),
                        Arrays.stream(Pace.values())
                                .map(pace -> day(back.day(pace, row), today))
                                .toList()))
                .toList();
    }

    /** A day that is past is marked so: nothing can be begun on it any more. */
    private String day(LocalDate day, LocalDate today) {
        return day.isBefore(today) ? words.say("ahead.past", words.shortDay(day)) : words.date(day);
    }

    private List<AheadState.Days> reckoned(WorkingBack back) {
        return back.rows().stream()
                .filter(row -> RECKONED.contains(row.step()))
                .flatMap(row -> back.days(row).stream().map(days -> new AheadState.Days(daysTo(row), words.say(days))))
                .distinct()
                .toList();
    }

    private String daysTo(WorkingBack.Row row) {
        boolean follows = row.step() == Steps.Step.FIRST_EGG && row.round() > 1;
        return words.say("ahead.days-to." + (follows ? "next-round" : Message.word(row.step())));
    }

    private List<String> notes(Ahead ahead) {
        List<String> notes = new ArrayList<>();
        notes.add(words.say(ahead.numbers()));
        ahead.rings().map(NewRings::told).map(words::say).ifPresent(notes::add);
        return notes;
    }

    private AheadState.Nest nest(NestAhead nest, LocalDate clearBy) {
        String cage = nest.cage().name();
        String done = words.say("ahead.done", WindowWords.of(nest.clear()));
        String chance = words.say("ahead.chance", Math.round(HUNDRED * nest.chance()));
        String way = nest.inTheWay().map(words::say).orElseGet(() -> words.say(inTime(nest, clearBy)));
        RowFace face = RowFace.of(cage, done, way);
        return new AheadState.Nest(
                cage,
                nest.isInTime()
                        ? face.tagged(TagKind.PLAIN, chance)
                        : face.tagged(TagKind.LATE, words.say("ahead.late", chance)),
                done,
                chance,
                way,
                nest.waysOut().stream().map(this::way).toList());
    }

    private static String inTime(NestAhead nest, LocalDate clearBy) {
        if (nest.chance() < EVEN) {
            return "ahead.in-time-if-quick";
        }
        return nest.clear().latest().isAfter(clearBy) ? "ahead.in-time" : "ahead.surely-in-time";
    }

    private AheadState.Way way(WayOut way) {
        return new AheadState.Way(
                words.say(way.words()), words.say("ahead.done", WindowWords.of(way.clear())), words.say(way.cost()));
    }

    private AheadState.Egg egg(FosterMove move) {
        return new AheadState.Egg(
                RowFace.of(
                        move.from().name(),
                        words.say("ahead.egg", move.mark(), move.to().name()),
                        words.say(move.why())),
                move.from().name(),
                move.mark(),
                move.to().name());
    }

    private List<AheadState.Chart> charts(Ahead ahead) {
        return List.of(
                chart("eggs", ahead, DayAhead::eggs),
                chart("chicks", ahead, DayAhead::chicksInBox),
                chart("to-ring", ahead, DayAhead::toRing),
                chart("to-take-away", ahead, DayAhead::toTakeAway));
    }

    private AheadState.Chart chart(String name, Ahead ahead, Function<DayAhead, Range> range) {
        List<DayAhead> all =
                Stream.concat(ahead.before().stream(), ahead.days().stream()).toList();
        List<RangeChart.Bar> bars = new ArrayList<>();
        int before = ahead.before().size();
        for (int i = 0; i < all.size(); i++) {
            Range each = range.apply(all.get(i));
            boolean named = (i - before) % DAYS_BETWEEN_WORDS == 0;
            bars.add(new RangeChart.Bar(
                    named ? words.shortDay(all.get(i).date()) : "", each.mean(), each.low(), each.high(), i >= before));
        }
        String title = words.say("ahead.chart." + name);
        return new AheadState.Chart(name, title, bars, words.say("ahead.chart-said", title, said(ahead, range)));
    }

    private List<String> said(Ahead ahead, Function<DayAhead, Range> range) {
        return ahead.days().stream()
                .map(day -> words.say(
                        "ahead.day-said",
                        words.shortDay(day.date()),
                        range.apply(day).low(),
                        range.apply(day).high()))
                .toList();
    }
}
