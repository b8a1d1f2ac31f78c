package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Cage;
import org.cagewall.room.Keeps;
import org.cagewall.room.Place;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.Wall;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Lays walls and cages out as they are touched. Used on the event thread. */
final class WallsPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Asking asking;
    private final Words words;
    private final Shown<WallsState> shown;
    private final Refresher watch;

    WallsPresenter(Desk desk, Pen pen, Asking asking, Words words, Consumer<WallsState> view) {
        this.desk = desk;
        this.pen = pen;
        this.asking = asking;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(new WallsState(places().plans(), new WallsState.Nothing(), Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    void touch(WallPlan.Spot spot) {
        Optional<Place> free = places().freePlace(spot.name());
        if (shown.now().panel() instanceof WallsState.Moving moving) {
            free.ifPresentOrElse(place -> place(moving.name(), place), () -> wrong("move", "setup.touch-free"));
        } else if (free.isPresent()) {
            shown.change(state -> state.beside(freePlace(free.get())));
        } else {
            desk.room().cage(spot.name()).ifPresent(cage -> shown.change(state -> state.beside(theCage(main(cage)))));
        }
    }

    /** A part of a joined cage leads to the whole. */
    private Cage main(Cage cage) {
        return cage.joinedTo().flatMap(desk.room()::cage).orElse(cage);
    }

    void nothing() {
        shown.change(state -> state.beside(new WallsState.Nothing()));
    }

    void newWall() {
        int number = desk.room().walls().size() + 1;
        shown.change(state -> state.beside(new WallsState.NewWall(words.say("setup.wall-name", number))));
    }

    void addWall(String name, int rows, int columns) {
        Optional<String> wrong = NameChecks.wrong(name, "setup.write-wall");
        if (wrong.isPresent()) {
            wrong("wall", wrong.get());
            return;
        }
        record(
                List.of(new RoomDeed.WallAdded(name.strip(), rows, columns)),
                Message.of("setup.done.wall", name.strip()),
                new WallsState.Nothing());
    }

    void addCage(String name, Use use, Optional<Keeps> keeps) {
        Optional<String> wrong = NameChecks.wrong(name, "setup.write-cage");
        if (wrong.isPresent()) {
            wrong("cage", wrong.get());
        } else if (shown.now().panel() instanceof WallsState.FreePlace place) {
            record(
                    List.of(new RoomDeed.CageAdded(
                            name.strip(), place.wall(), place.row(), place.column(), use, keeps)),
                    Message.of("setup.done.cage", name.strip()),
                    new WallsState.Nothing());
        }
    }

    /** A cage in every free place of the wall of which one was touched. */
    void fill(Use use, Optional<Keeps> keeps) {
        if (shown.now().panel() instanceof WallsState.FreePlace place) {
            desk.room().wall(place.wall()).ifPresent(wall -> {
                List<RoomDeed.CageAdded> cages = places().cagesInEveryFreePlace(wall, use, keeps);
                record(cages, Message.of("setup.done.cages", cages.size(), wall.name()), new WallsState.Nothing());
            });
        }
    }

    /** Records it at once; a touch on what holds already changes nothing. */
    void changeUse(Use use, Optional<Keeps> keeps) {
        if (shown.now().panel() instanceof WallsState.TheCage cage
                && !(cage.use() == use && cage.keeps().equals(keeps))) {
            pen.record(
                    List.of(new RoomDeed.CageUseChanged(cage.name(), use, keeps)),
                    desk.today(),
                    Optional.empty(),
                    Message.of("setup.done.use", cage.name(), use),
                    room -> refresh());
        }
    }

    void move() {
        if (shown.now().panel() instanceof WallsState.TheCage cage) {
            shown.change(state -> state.beside(new WallsState.Moving(cage.name())));
        }
    }

    private void place(String name, Place place) {
        String wall = desk.room().wall(place.wall()).map(Wall::name).orElseThrow();
        record(
                List.of(new RoomDeed.CagePlaced(name, wall, place.row(), place.column())),
                Message.of("setup.done.placed", name),
                new WallsState.Nothing());
    }

    void join(String with) {
        if (shown.now().panel() instanceof WallsState.TheCage cage) {
            record(
                    List.of(new RoomDeed.CagesJoined(cage.name(), with)),
                    Message.of("setup.done.joined", cage.name(), with),
                    new WallsState.Nothing());
        }
    }

    void split(String part) {
        if (shown.now().panel() instanceof WallsState.TheCage cage) {
            record(
                    List.of(new RoomDeed.CagesSplit(cage.name(), part)),
                    Message.of("setup.done.split", cage.name(), part),
                    new WallsState.Nothing());
        }
    }

    void retire() {
        if (shown.now().panel() instanceof WallsState.TheCage cage) {
            asking.ask(Question.of(
                    Message.of("setup.retire-sure", cage.name()),
                    Message.of("setup.retire-text"),
                    AnswerButton.main(
                            "retire",
                            Message.of("setup.retire-yes"),
                            () -> record(
                                    List.of(new RoomDeed.CageRetired(cage.name())),
                                    Message.of("setup.done.retired", cage.name()),
                                    new WallsState.Nothing())),
                    AnswerButton.leave("no", Message.of("setup.retire-no"))));
        }
    }

    private void record(List<? extends RoomDeed> deeds, Message done, WallsState.Panel then) {
        pen.record(deeds, desk.today(), Optional.empty(), done, room -> shown.change(state -> state.beside(then)));
    }

    private void wrong(String part, String key) {
        shown.change(state -> state.wrong(part, words.say(key)));
    }

    private void refresh() {
        shown.change(state -> new WallsState(places().plans(), stillThere(state.panel()), state.problem()));
    }

    private WallsState.Panel stillThere(WallsState.Panel panel) {
        if (panel instanceof WallsState.TheCage cage) {
            return desk.room()
                    .cage(cage.name())
                    .filter(Cage::inUse)
                    .<WallsState.Panel>map(this::theCage)
                    .orElse(new WallsState.Nothing());
        }
        if (panel instanceof WallsState.FreePlace place) {
            return places().freePlace(place.spot())
                    .<WallsState.Panel>map(this::freePlace)
                    .orElse(new WallsState.Nothing());
        }
        return panel;
    }

    private WallsState.FreePlace freePlace(Place place) {
        Wall wall = desk.room().wall(place.wall()).orElseThrow();
        Places places = places();
        return new WallsState.FreePlace(
                places.spotName(place),
                wall.name(),
                place.row(),
                place.column(),
                places.suggestedName(place),
                places.free(wall).size());
    }

    private WallsState.TheCage theCage(Cage cage) {
        Room room = desk.room();
        List<String> neighbours = cage.place()
                .map(this::neighbours)
                .orElseGet(Stream::empty)
                .map(Cage::name)
                .toList();
        List<String> parts = room.cages().stream()
                .filter(other -> other.joinedTo().equals(Optional.of(cage.id())))
                .map(Cage::name)
                .toList();
        return new WallsState.TheCage(
                cage.name(),
                cage.use(),
                cage.keeps(),
                words.say("setup.cage-line", room.headsIn(cage), cage.use()),
                neighbours,
                parts);
    }

    /** The cages in use beside this place, left and right. */
    private Stream<Cage> neighbours(Place place) {
        return Stream.of(-1, 1)
                .map(step -> new Place(place.wall(), place.row(), place.column() + step))
                .flatMap(beside -> desk.room().cageAt(beside).stream())
                .filter(Cage::inUse);
    }

    private Places places() {
        return new Places(desk.room(), words);
    }
}
