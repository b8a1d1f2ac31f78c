package org.cagewall.kiosk.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Cage;
import org.cagewall.room.FoodKind;
import org.cagewall.room.Place;
import org.cagewall.room.Use;
import org.cagewall.room.Wall;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.Routine;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Says what cages are given and what the sitter may do there, for one cage or many at once. Event thread. */
final class FoodPresenter {

    private static final int MOST_LINES = 12;

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<FoodState> shown;
    private final Refresher watch;

    FoodPresenter(Desk desk, Pen pen, Words words, Consumer<FoodState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(new FoodState(walls(), List.of(), List.of(), Set.of(), Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    /** Takes the cage to those the lines are for, or from them. The first one touched brings its own lines. */
    void touch(String cage) {
        List<String> others = new ArrayList<>(shown.now().cages());
        if (!others.remove(cage)) {
            others.add(cage);
        }
        if (shown.now().cages().isEmpty()) {
            Routine routine = desk.room().cage(cage).map(Cage::routine).orElse(Routine.NONE);
            List<FeedLine> lines =
                    routine.feed().stream().map(line -> line.as(line.knownAs())).toList();
            shown.change(state -> state.giving(lines).allowing(routine.allowed()));
        }
        shown.change(state -> state.forCages(others));
    }

    void all() {
        choose(cage -> true);
    }

    void breeding() {
        choose(cage -> cage.use() == Use.BREEDING);
    }

    /** Lets go of all cages, and of what was not saved. */
    void none() {
        shown.change(state -> state.forCages(List.of()).giving(List.of()).allowing(Set.of()));
    }

    private void choose(Predicate<Cage> which) {
        List<String> names = desk.room().walk().filter(which).map(Cage::name).toList();
        if (shown.now().cages().isEmpty() && !names.isEmpty()) {
            touch(names.get(0));
        }
        shown.change(state -> state.forCages(names));
    }

    void addLine(String what, String amount, DayPart when) {
        Optional<String> wrongWhat = NameChecks.wrong(what, "setup.write-food");
        Optional<String> wrongAmount = NameChecks.wrong(amount, "setup.write-amount");
        if (wrongWhat.isPresent()) {
            wrong("what", wrongWhat.get());
        } else if (wrongAmount.isPresent()) {
            wrong("amount", wrongAmount.get());
        } else if (shown.now().lines().size() >= MOST_LINES) {
            wrong("what", "setup.many-lines");
        } else {
            add(new FeedLine(what.strip(), amount.strip(), when));
        }
    }

    /** What the line is, is guessed from its words, shown, and may be said otherwise. */
    private void add(FeedLine line) {
        if (line.isMedicine()) {
            shown.change(state -> state.wrong("what", words.say("setup.medicine", line.what(), line.amount())));
            return;
        }
        List<FeedLine> longer = new ArrayList<>(shown.now().lines());
        longer.add(line.as(line.knownAs()));
        shown.change(state -> state.giving(longer));
    }

    void sayKind(int line, FoodKind kind) {
        List<FeedLine> lines = new ArrayList<>(shown.now().lines());
        lines.set(line, lines.get(line).as(kind));
        shown.change(state -> state.giving(lines));
    }

    void takeOut(int line) {
        List<FeedLine> shorter = new ArrayList<>(shown.now().lines());
        shorter.remove(line);
        shown.change(state -> state.giving(shorter));
    }

    void allow(Set<Permission> allowed) {
        shown.change(state -> state.allowing(allowed));
    }

    void save() {
        FoodState now = shown.now();
        if (now.cages().isEmpty()) {
            wrong("cages", "setup.choose-cages");
            return;
        }
        List<Permission> allowed = now.allowed().stream().sorted().toList();
        List<RoomDeed.RoutineSet> deeds = now.cages().stream()
                .map(cage -> new RoomDeed.RoutineSet(cage, now.lines(), Optional.of(allowed)))
                .toList();
        pen.record(
                deeds,
                desk.today(),
                Optional.empty(),
                Message.of("setup.done.food", deeds.size(), now.cages()),
                room -> none());
    }

    private void wrong(String part, String key) {
        shown.change(state -> state.wrong(part, words.say(key)));
    }

    private void refresh() {
        shown.change(state -> new FoodState(
                walls(),
                state.cages().stream()
                        .filter(name ->
                                desk.room().cage(name).filter(Cage::inUse).isPresent())
                        .toList(),
                state.lines(),
                state.allowed(),
                state.problem()));
    }

    private List<WallPlan> walls() {
        return desk.room().walls().stream().map(this::plan).toList();
    }

    private WallPlan plan(Wall wall) {
        List<WallPlan.Spot> spots = new ArrayList<>();
        desk.room().walk().forEach(cage -> cage.place()
                .filter(place -> place.wall() == wall.id())
                .ifPresent(place -> spots.add(spot(cage, place))));
        return new WallPlan(wall.name(), wall.rows(), wall.columns(), spots);
    }

    private WallPlan.Spot spot(Cage cage, Place place) {
        String line = words.say("setup.food-lines", cage.routine().feed().size());
        return new WallPlan.Spot(
                place.row(),
                place.column(),
                cage.name(),
                cage.name(),
                line,
                words.say("setup.food-said", cage.name(), line),
                WallPlan.Look.CAGE);
    }
}
