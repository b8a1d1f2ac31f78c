package org.cagewall.kiosk.alarm;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Cage;
import org.cagewall.room.Call;
import org.cagewall.room.Room;
import org.cagewall.room.care.How;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Leads through an alarm, and records it; neither a cage nor a ring has to be known. Used on the event thread. */
public final class AlarmPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Words words;
    private final Halfway<AlarmHalf> halfway;
    private final Shown<AlarmState> shown;
    private final Refresher watch;

    public AlarmPresenter(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Words words,
            Halfway<AlarmHalf> halfway,
            Optional<Danger> danger,
            Consumer<AlarmState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.words = words;
        this.halfway = halfway;
        this.watch = new Refresher(desk, this::refresh);
        if (danger.isEmpty() && !isBegun()) {
            halfway.clear();
        }
        danger.filter(it -> halfway.kept().filter(half -> half.danger() == it).isEmpty())
                .ifPresent(it -> halfway.keep(new AlarmHalf(it, Optional.empty())));
        this.shown = new Shown<>(state(), view);
    }

    Refresher watch() {
        return watch;
    }

    /** Whether it was said where, and is not recorded yet. */
    boolean isBegun() {
        return halfway.kept().flatMap(AlarmHalf::at).isPresent();
    }

    private void refresh() {
        shown.change(before -> state());
    }

    private AlarmState state() {
        return new AlarmState(
                words.say("alarm.title"),
                words.say("alarm.subtitle"),
                Stream.of(Danger.values())
                        .map(danger -> new Choice<>(danger.word(), words.say(danger.title()), danger))
                        .toList(),
                halfway.kept().map(this::open));
    }

    private AlarmState.Open open(AlarmHalf half) {
        Room room = desk.room();
        Danger danger = half.danger();
        List<AlarmState.Phone> phones = Alarms.of(room, desk.today()).phones(danger).stream()
                .map(this::phone)
                .toList();
        return new AlarmState.Open(
                danger,
                words.say(danger.title()),
                words.say(danger.rule(room)),
                danger.steps(room).stream().map(words::say).toList(),
                danger.sign().isPresent() ? cages(room) : List.of(),
                half.at(),
                phones,
                words.say(danger.isLeftFirst() ? "alarm.until-out" : "alarm.until"),
                words.say(phones.isEmpty() ? Message.of("today.no-phones") : danger.noAnswer()),
                room.agreedOn(desk.today()).stream()
                        .map(Call::agreement)
                        .map(words::say)
                        .toList());
    }

    private AlarmState.Phone phone(Alarms.Phone phone) {
        String name = phone.name().isBlank() ? words.say("phone.who.vet") : phone.name();
        return new AlarmState.Phone(name, phone.number().orElseGet(() -> words.say("phone.no-number")));
    }

    private List<Choice<Optional<String>>> cages(Room room) {
        return Stream.concat(
                        Stream.of(new Choice<>("unknown", words.say("alarm.unknown"), Optional.<String>empty())),
                        room.walk().map(Cage::name).map(name -> new Choice<>(name, name, Optional.of(name))))
                .toList();
    }

    void choose(Danger danger) {
        halfway.keep(new AlarmHalf(danger, Optional.empty()));
        refresh();
    }

    void at(Optional<String> cage) {
        halfway.kept().ifPresent(half -> halfway.keep(new AlarmHalf(half.danger(), Optional.of(cage))));
        refresh();
    }

    /** To all the alarms again, for somebody who touched the wrong one. */
    void another() {
        halfway.clear();
        refresh();
    }

    /** What was touched stays, so that it is there when one comes back from the phones. */
    void phone() {
        halfway.kept()
                .ifPresent(half -> navigator.go(new Destination.Phone(
                        Optional.of(half.danger()), half.at().flatMap(cage -> cage))));
    }

    /** It is kept for the owner: as a report of the cage where that is known, and in the words that were touched. */
    void record() {
        halfway.kept().ifPresent(half -> {
            if (half.danger().sign().isPresent() && half.at().isEmpty()) {
                asking.tell(Message.of("alarm.cage-first"), Message.of("alarm.cage-first-text"));
            } else {
                record(half);
            }
        });
    }

    private void record(AlarmHalf half) {
        pen.record(
                List.of(deed(half)),
                desk.today(),
                Optional.empty(),
                Message.of("alarm.kept", half.danger().title()),
                room -> {
                    halfway.clear();
                    refresh();
                });
    }

    private static Deed deed(AlarmHalf half) {
        Danger danger = half.danger();
        Optional<String> cage = half.at().flatMap(it -> it);
        if (cage.isPresent() && danger.sign().isPresent()) {
            return VisitDeed.Check.different(
                    cage.get(),
                    How.HAND,
                    Optional.empty(),
                    danger.sign().stream().toList());
        }
        return danger == Danger.LOOSE
                ? new BirdDeed.BirdLoose(Optional.empty(), Optional.of(1))
                : new VisitDeed.AlarmRaised(cage, danger.alarm());
    }
}
