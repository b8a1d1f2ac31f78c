package org.cagewall.kiosk.setup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Origin;
import org.cagewall.almanac.Timetable;
import org.cagewall.almanac.Timetables;
import org.cagewall.almanac.Value;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Shows what is usual and where each value comes from, and sets the owner's own. Used on the event thread. */
final class DaysPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<DaysState> shown;
    private final Refresher watch;

    DaysPresenter(Desk desk, Pen pen, Words words, Consumer<DaysState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(state(desk.room().settings().species(), Optional.empty(), Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    void turnTo(String species) {
        shown.change(state -> state(species, Optional.empty(), Optional.empty()));
    }

    void touch(Timing timing) {
        shown.change(state -> state.changing(Optional.of(timing)));
    }

    void nothing() {
        shown.change(state -> state.changing(Optional.empty()));
    }

    void set(int earliest, int expected, int latest) {
        Optional<DaysState.Line> line = shown.now().line();
        if (line.isEmpty()) {
            return;
        }
        DaysState.Line now = line.get();
        if (earliest > expected || expected > latest) {
            wrong("setup.days-order");
        } else if (now.earliest() == earliest && now.expected() == expected && now.latest() == latest) {
            wrong("setup.nothing-changed");
        } else {
            record(now, Optional.of(new Span(earliest, expected, latest)));
        }
    }

    /** The value of the book again. */
    void takeBack() {
        shown.now().line().ifPresent(line -> record(line, Optional.empty()));
    }

    private void record(DaysState.Line line, Optional<Span> days) {
        pen.record(
                List.of(new RoomDeed.TimetableSet(
                        Optional.of(shown.now().species()),
                        line.timing(),
                        days.map(Span::earliest),
                        days.map(Span::expected),
                        days.map(Span::latest))),
                desk.today(),
                Optional.empty(),
                Message.of("setup.done.days", line.name()),
                room -> {
                    nothing();
                    refresh();
                });
    }

    private void wrong(String key) {
        shown.change(state -> state.wrong("days", words.say(key)));
    }

    private void refresh() {
        shown.change(state -> state(state.species(), state.changing(), state.problem()));
    }

    private DaysState state(String species, Optional<Timing> changing, Optional<Problem> problem) {
        Timetable timetable = Almanac.of(desk.room()).timetable(species);
        List<String> kinds = Stream.concat(
                        Stream.of(timetable.species()),
                        Timetables.shipped().stream().map(Timetable::species))
                .distinct()
                .toList();
        List<DaysState.Line> lines = Arrays.stream(Timing.values())
                .flatMap(timing -> timetable.value(timing).stream())
                .map(this::line)
                .toList();
        return new DaysState(timetable.species(), kinds, lines, changing, problem);
    }

    private DaysState.Line line(Value value) {
        Span span = value.span();
        return new DaysState.Line(
                value.timing(),
                Integer.toString(span.expected()),
                words.say("setup.timing." + Message.word(value.timing())),
                span.earliest() == span.latest()
                        ? words.say("setup.days-always", span.latest())
                        : words.say("setup.days-between", span.earliest(), span.latest()),
                words.say(value.told()),
                whose(value.origin()),
                span.earliest(),
                span.expected(),
                span.latest());
    }

    private static DaysState.Whose whose(Origin origin) {
        return switch (origin) {
            case BOOK -> DaysState.Whose.BOOK;
            case OWNER -> DaysState.Whose.OWNER;
            case OWN_NUMBERS -> DaysState.Whose.OWN_NUMBERS;
        };
    }
}
