package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Person;
import org.cagewall.room.Place;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.Wall;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Leads an empty room through its first steps, then opens the parts to the owner. Used on the event thread. */
public final class SetupPresenter {

    private enum OneByOne {
        NO,
        YES
    }

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Words words;
    private final Shown<SetupState> shown;
    private final Refresher watch;
    private OneByOne oneByOne = OneByOne.NO;

    public SetupPresenter(Desk desk, Pen pen, Navigator navigator, Words words, Consumer<SetupState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh, pen, this::refresh);
        this.shown = new Shown<>(state(SetupState.Tab.WALLS, Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    void turnTo(SetupState.Tab tab) {
        shown.change(state -> state.on(tab));
    }

    void addOwner(String name, String phone) {
        Optional<String> wrongName = NameChecks.wrong(name, "setup.write-your-name");
        Optional<Message> wrongPhone = NameChecks.wrongPhone(phone, "setup.write-your-phone");
        if (wrongName.isPresent()) {
            wrong("name", Message.of(wrongName.get()));
        } else if (wrongPhone.isPresent()) {
            wrong("phone", wrongPhone.get());
        } else {
            record(
                    List.of(new RoomDeed.PersonAdded(name.strip(), Role.OWNER, Optional.of(phone.strip()))),
                    Message.of("setup.done.owner", name.strip()));
        }
    }

    void addFirstWall(String name, int rows, int columns) {
        Optional<String> wrongName = NameChecks.wrong(name, "setup.write-wall");
        if (wrongName.isPresent()) {
            wrong("wall", Message.of(wrongName.get()));
            return;
        }
        record(
                List.of(new RoomDeed.WallAdded(name.strip(), rows, columns)),
                Message.of("setup.done.wall", name.strip()));
    }

    /** A cage in every place of the first wall, and on to the wall. */
    void fill(Use use) {
        desk.room().walls().stream().findFirst().ifPresentOrElse(wall -> fill(wall, use), this::refresh);
    }

    private void fill(Wall wall, Use use) {
        List<RoomDeed.CageAdded> cages = places().cagesInEveryFreePlace(wall, use, Optional.empty());
        pen.record(
                cages,
                desk.today(),
                Optional.empty(),
                Message.of("setup.done.cages", cages.size(), wall.name()),
                room -> navigator.go(new Destination.Wall()));
    }

    /** Leaves the first wall bare, to put its cages up one by one. */
    void oneByOne() {
        oneByOne = OneByOne.YES;
        refresh();
    }

    void leave() {
        navigator.go(new Destination.Wall());
    }

    private void record(List<? extends RoomDeed> deeds, Message done) {
        pen.record(deeds, desk.today(), Optional.empty(), done, room -> refresh());
    }

    private void wrong(String part, Message why) {
        shown.change(state -> state.wrong(part, words.sentence(why)));
    }

    private void refresh() {
        SetupState.Stage before = shown.now().stage();
        shown.change(state -> state(state.tab(), stage() == before ? state.problem() : Optional.empty()));
    }

    private SetupState state(SetupState.Tab tab, Optional<Problem> problem) {
        Room room = desk.room();
        return new SetupState(
                stage(),
                tab,
                room.walls().stream().findFirst().map(this::firstWall),
                room.owner().map(Person::name).orElse(""),
                subtitle(room),
                problem);
    }

    private String subtitle(Room room) {
        return room.cages().isEmpty()
                ? words.say("setup.three-steps")
                : words.say("setup.subtitle", room.walk().count());
    }

    private SetupState.Stage stage() {
        Room room = desk.room();
        if (room.people().isEmpty()) {
            return SetupState.Stage.OWNER;
        }
        if (pen.holder().filter(person -> person.role() == Role.OWNER).isEmpty()) {
            return SetupState.Stage.CLOSED;
        }
        if (room.walls().isEmpty()) {
            return SetupState.Stage.FIRST_WALL;
        }
        return room.cages().isEmpty() && oneByOne == OneByOne.NO ? SetupState.Stage.FIRST_CAGES : SetupState.Stage.OPEN;
    }

    private SetupState.FirstWall firstWall(Wall wall) {
        Places places = places();
        return new SetupState.FirstWall(
                wall.name(),
                places.free(wall).size(),
                places.suggestedName(new Place(wall.id(), 1, 1)),
                places.suggestedName(new Place(wall.id(), wall.rows(), wall.columns())));
    }

    private Places places() {
        return new Places(desk.room(), words);
    }
}
