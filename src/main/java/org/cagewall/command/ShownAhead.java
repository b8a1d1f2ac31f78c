package org.cagewall.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
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
import org.cagewall.text.Words;

/** The days ahead, as lines or as an object. Immutable; any thread. */
record ShownAhead(Ahead ahead, Words words) {

    private static final double HUNDRED = 100;

    /** Letters of one cell. */
    private static final int CELL = 24;

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(words.say(
                "command.ahead.heading",
                ahead.question().clearBy(),
                ahead.question().policy()));
        ahead.back().ifPresent(back -> columns(back, lines));
        lines.add(words.say(ahead.numbers()));
        ahead.rings().map(NewRings::told).map(words::say).ifPresent(lines::add);
        ahead.nests().forEach(nest -> lines.addAll(nest(nest)));
        ahead.days().forEach(day -> lines.add(day(day)));
        ahead.fosters()
                .forEach(move -> lines.add(words.say(
                        "command.ahead.foster",
                        move.mark(),
                        move.from().name(),
                        move.to().name(),
                        move.why())));
        lines.add(words.say(
                "command.ahead.drawn",
                Integer.toString(ahead.question().draws().count()),
                Long.toString(ahead.question().draws().seed())));
        return lines;
    }

    private void columns(WorkingBack back, List<String> lines) {
        int width = back.rows().stream()
                .mapToInt(row -> words.sentence(back.word(row)).length() + 2)
                .reduce(CELL, Math::max);
        lines.add(row(width, "", words::heading, ""));
        for (WorkingBack.Row row : back.rows()) {
            lines.add(row(
                    width,
                    words.sentence(back.word(row)),
                    pace -> words.date(back.day(pace, row)),
                    back.before(row)
                            .map(back::word)
                            .flatMap(before ->
                                    back.days(row).map(days -> words.say("command.ahead.days-after", days, before)))
                            .orElse("")));
        }
    }

    /** A head, three cells and what belongs to them, below one another, for letters of one width. */
    private static String row(int width, String head, Function<Pace, String> cell, String after) {
        String cells = Stream.of(Pace.values())
                .map(cell)
                .map(text -> padded(text, CELL))
                .collect(Collectors.joining());
        return (padded(head, width) + cells + after).stripTrailing();
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - text.length()));
    }

    private List<String> nest(NestAhead nest) {
        Stream<String> first = Stream.of(words.say(
                "command.ahead.nest", nest.cage().name(), WindowWords.of(nest.clear()), percent(nest.chance())));
        return Stream.of(
                        first,
                        nest.inTheWay().stream().map(way -> words.say("command.ahead.in-the-way", way)),
                        nest.waysOut().stream().map(this::wayOut))
                .flatMap(lines -> lines)
                .toList();
    }

    private String wayOut(WayOut way) {
        return words.say("command.ahead.way-out", way.words(), WindowWords.of(way.clear()), way.cost());
    }

    private String day(DayAhead day) {
        return words.say(
                "command.ahead.day",
                day.date(),
                range(day.eggs()),
                range(day.chicksInBox()),
                range(day.toRing()),
                range(day.toTakeAway()));
    }

    private String range(Range range) {
        return range.low() == range.high()
                ? Integer.toString(range.low())
                : words.say("command.ahead.range", range.low(), range.high());
    }

    private static String percent(double chance) {
        return Long.toString(Math.round(HUNDRED * chance));
    }

    Json json() {
        return Json.object()
                .with("clearBy", ahead.question().clearBy())
                .with("policy", ahead.question().policy())
                .with("rounds", ahead.question().rounds())
                .with("push", column(Pace.PUSH))
                .with("usual", column(Pace.USUAL))
                .with("safe", column(Pace.SAFE))
                .with("ringYear", ahead.rings().map(ShownAhead::rings))
                .with("nests", ahead.nests().stream().map(this::nestJson).toList())
                .with("days", ahead.days().stream().map(ShownAhead::dayJson).toList())
                .with("fosters", ahead.fosters().stream().map(this::foster).toList())
                .with(
                        "ownNumbers",
                        ahead.back().stream()
                                .flatMap(back -> back.ownNumbers().stream())
                                .map(value -> Json.object()
                                        .with("value", value.timing())
                                        .with("count", value.count()))
                                .toList())
                .with("draws", ahead.question().draws().count())
                .with("seed", ahead.question().draws().seed());
    }

    private Optional<Json> column(Pace pace) {
        return ahead.back().map(back -> column(back, pace, back.column(pace)));
    }

    private static Json column(WorkingBack back, Pace pace, Steps steps) {
        return Json.object()
                .with("boxOn", steps.boxOn())
                .with("firstEgg", steps.firstEgg())
                .with("lastEgg", steps.lastEgg())
                .with("lastHatch", steps.lastHatch())
                .with("boxTurned", steps.boxTurned())
                .with("boxOff", steps.boxOff())
                .with("independent", steps.independent())
                .with("cockOut", steps.cockOut())
                .with("henOut", steps.henOut())
                .with(
                        "eachRound",
                        IntStream.rangeClosed(1, back.rounds())
                                .mapToObj(round -> round(back, pace, round))
                                .toList());
    }

    private static Json round(WorkingBack back, Pace pace, int round) {
        Function<Steps.Step, LocalDate> day = step -> back.day(pace, new WorkingBack.Row(round, step));
        return Json.object()
                .with("round", round)
                .with("firstEgg", day.apply(Steps.Step.FIRST_EGG))
                .with("lastEgg", day.apply(Steps.Step.LAST_EGG))
                .with("lastHatch", day.apply(Steps.Step.LAST_HATCH))
                .with("independent", day.apply(Steps.Step.INDEPENDENT));
    }

    private static Json rings(NewRings rings) {
        return Json.object()
                .with("year", rings.year())
                .with("issued", rings.issued())
                .with("firstHatch", from(rings.firstHatch()))
                .with("firstEgg", from(rings.firstEgg()))
                .with("boxOn", from(rings.boxOn()));
    }

    private static Json from(NewRings.From from) {
        return Json.object()
                .with("earliest", from.earliest())
                .with("expected", from.expected())
                .with("latest", Optional.empty());
    }

    private Json nestJson(NestAhead nest) {
        return Json.object()
                .with("cage", nest.cage().name())
                .with("clear", Json.of(nest.clear()))
                .with("chance", nest.chance())
                .with("inTheWay", nest.inTheWay().map(words::say))
                .with("waysOut", nest.waysOut().stream().map(this::way).toList());
    }

    private Json way(WayOut way) {
        return Json.object()
                .with("way", way.way())
                .with("clear", Json.of(way.clear()))
                .with("words", words.say(way.words()))
                .with("cost", words.say(way.cost()));
    }

    private static Json dayJson(DayAhead day) {
        return Json.object()
                .with("date", day.date())
                .with("eggs", rangeJson(day.eggs()))
                .with("chicksInBox", rangeJson(day.chicksInBox()))
                .with("toRing", rangeJson(day.toRing()))
                .with("toTakeAway", rangeJson(day.toTakeAway()));
    }

    private static Json rangeJson(Range range) {
        return Json.object().with("mean", range.mean()).with("low", range.low()).with("high", range.high());
    }

    private Json foster(FosterMove move) {
        return Json.object()
                .with("mark", move.mark())
                .with("from", move.from().name())
                .with("to", move.to().name())
                .with("gap", move.gap())
                .with("why", words.say(move.why()));
    }
}
