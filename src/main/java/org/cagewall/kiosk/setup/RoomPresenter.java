package org.cagewall.kiosk.setup;

import java.time.LocalTime;
import java.time.Month;
import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.deed.NewValue;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Quiet;
import org.cagewall.room.Settings;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Sets what holds for the whole room, of that only what was changed. Used on the event thread. */
final class RoomPresenter {

    private static final int EVENING = 21;
    private static final int MORNING = 7;
    private static final int MOST_PROSE = 2000;

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<RoomState> shown;
    private final Refresher watch;

    RoomPresenter(Desk desk, Pen pen, Words words, Consumer<RoomState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(state(Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    /** What was filled in; its problem is of no account. */
    void save(RoomState filled) {
        RoomState now = shown.now();
        boolean renamed = !filled.name().strip().equals(now.name());
        Optional<String> wrongName = renamed ? NameChecks.wrong(filled.name(), "setup.write-room") : Optional.empty();
        if (wrongName.isPresent()) {
            wrong("room", wrongName.get());
        } else if (filled.rules().strip().length() > MOST_PROSE) {
            wrong("rules", "setup.long-rules");
        } else if (filled.heatAct() > filled.heatPhone()) {
            wrong("heat", "setup.heat-order");
        } else if (filled.coldPhone() >= filled.heatAct()) {
            wrong("heat", "setup.cold-order");
        } else if (filled.night() == RoomState.Night.DIM && filled.quietFrom() == filled.quietTo()) {
            wrong("quiet", "setup.quiet-same");
        } else if (filled.ringsDay() > Month.of(filled.ringsMonth()).maxLength()) {
            wrong("rings", "setup.no-such-day");
        } else {
            record(changes(filled, now));
        }
    }

    private RoomDeed.RoomSet changes(RoomState filled, RoomState now) {
        MonthDay rings = MonthDay.of(filled.ringsMonth(), filled.ringsDay());
        return new RoomDeed.RoomSet(
                Optional.of(filled.name().strip()).filter(name -> !name.equals(now.name())),
                Optional.empty(),
                Optional.empty(),
                Optional.of(rings).filter(day -> !day.equals(settings().ringsIssued())),
                Optional.of(new NewValue<>(quiet(filled)))
                        .filter(quiet -> !settings().quiet().equals(quiet.value())),
                Optional.of(new NewValue<>(Optional.of(filled.rules().strip()).filter(rules -> !rules.isEmpty())))
                        .filter(rules -> !rules.value().orElse("").equals(now.rules())),
                Optional.of(filled.heatAct()).filter(heat -> heat != now.heatAct()),
                Optional.of(filled.heatPhone()).filter(heat -> heat != now.heatPhone()),
                Optional.of(filled.coldPhone()).filter(cold -> cold != now.coldPhone()),
                Optional.of(filled.illFirst()).filter(first -> first != now.illFirst()),
                Optional.of(filled.mostEggs()).filter(eggs -> eggs != now.mostEggs()),
                Optional.of(filled.mostChicks()).filter(chicks -> chicks != now.mostChicks()),
                Optional.of(filled.mostRounds()).filter(rounds -> rounds != now.mostRounds()),
                Optional.of(filled.restMonths()).filter(months -> months != now.restMonths()),
                Optional.of(filled.leastSpace()).filter(space -> space != now.leastSpace()));
    }

    private Optional<Quiet> quiet(RoomState filled) {
        if (filled.night() == RoomState.Night.BRIGHT) {
            return Optional.empty();
        }
        Optional<Quiet> now = settings().quiet();
        return Optional.of(
                new Quiet(hour(filled.quietFrom(), now.map(Quiet::from)), hour(filled.quietTo(), now.map(Quiet::to))));
    }

    /** The full hour, or the time set before where its hour was left as it was. */
    private static LocalTime hour(int hour, Optional<LocalTime> before) {
        return before.filter(time -> time.getHour() == hour).orElse(LocalTime.of(hour, 0));
    }

    private void record(RoomDeed.RoomSet changes) {
        if (changes.isNothing()) {
            wrong("save", "setup.nothing-changed");
            return;
        }
        pen.record(List.of(changes), desk.today(), Optional.empty(), Message.of("setup.done.room"), room -> refresh());
    }

    private void wrong(String part, String key) {
        shown.change(state -> state.wrong(part, words.say(key)));
    }

    private void refresh() {
        shown.change(state -> state(Optional.empty()));
    }

    private Settings settings() {
        return desk.room().settings();
    }

    private RoomState state(Optional<Problem> problem) {
        Settings now = settings();
        return new RoomState(
                now.name(),
                now.rules().orElse(""),
                now.heatAct(),
                now.heatPhone(),
                now.coldPhone(),
                now.illFirst(),
                now.mostEggs(),
                now.mostChicks(),
                now.mostRounds(),
                now.restMonths(),
                now.leastSpace(),
                now.quiet().isPresent() ? RoomState.Night.DIM : RoomState.Night.BRIGHT,
                now.quiet().map(quiet -> quiet.from().getHour()).orElse(EVENING),
                now.quiet().map(quiet -> quiet.to().getHour()).orElse(MORNING),
                now.ringsIssued().getDayOfMonth(),
                now.ringsIssued().getMonthValue(),
                problem);
    }
}
