package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.deed.NewValue;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Person;
import org.cagewall.room.Role;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Adds people and changes what they may do and where they are phoned. Used on the event thread. */
final class PeoplePresenter {

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<PeopleState> shown;
    private final Refresher watch;

    PeoplePresenter(Desk desk, Pen pen, Words words, Consumer<PeopleState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(new PeopleState(people(), Optional.empty(), Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    void touch(String name) {
        shown.change(state -> state.changing(
                state.people().stream().filter(each -> each.name().equals(name)).findFirst()));
    }

    void nobody() {
        shown.change(state -> state.changing(Optional.empty()));
    }

    void add(String name, Role role, String phone) {
        Optional<String> wrongName = NameChecks.wrong(name, "setup.write-name");
        if (wrongName.isPresent()) {
            wrong("name", Message.of(wrongName.get()));
        } else if (isPhone(phone)) {
            record(
                    new RoomDeed.PersonAdded(name.strip(), role, written(phone)),
                    Message.of("setup.done.person", name.strip()));
        }
    }

    void change(Role role, String phone) {
        Optional<PeopleState.Someone> whom = shown.now().changing();
        if (whom.isEmpty() || !isPhone(phone)) {
            return;
        }
        PeopleState.Someone now = whom.get();
        Optional<Role> other = Optional.of(role).filter(it -> it != now.role());
        Optional<NewValue<String>> number =
                phone.strip().equals(now.phone()) ? Optional.empty() : Optional.of(new NewValue<>(written(phone)));
        if (other.isEmpty() && number.isEmpty()) {
            wrong("phone", Message.of("setup.nothing-changed"));
            return;
        }
        record(new RoomDeed.PersonChanged(now.name(), other, number), Message.of("setup.done.changed", now.name()));
    }

    private boolean isPhone(String phone) {
        Optional<Message> wrong = phone.isBlank() ? Optional.empty() : NameChecks.wrongPhone(phone, "setup.too-long");
        wrong.ifPresent(why -> wrong("phone", why));
        return wrong.isEmpty();
    }

    private static Optional<String> written(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
    }

    private void record(RoomDeed deed, Message done) {
        pen.record(List.of(deed), desk.today(), Optional.empty(), done, room -> {
            nobody();
            refresh();
        });
    }

    private void wrong(String part, Message why) {
        shown.change(state -> state.wrong(part, words.sentence(why)));
    }

    private void refresh() {
        shown.change(state -> new PeopleState(people(), state.changing(), state.problem()));
    }

    private List<PeopleState.Someone> people() {
        return desk.room().people().stream().map(PeoplePresenter::someone).toList();
    }

    private static PeopleState.Someone someone(Person person) {
        return new PeopleState.Someone(
                person.name(), person.role(), person.phone().orElse(""));
    }
}
