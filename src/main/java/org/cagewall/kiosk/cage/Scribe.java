package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Outlook;
import org.cagewall.deed.Deed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Pair;
import org.cagewall.text.Message;

/** Writes down what happened at one cage, on the day that is chosen there. Free of Swing; used on the event thread. */
record Scribe(Desk desk, Pen pen, String name, Supplier<LocalDate> chosenDay) {

    Room room() {
        return desk.room();
    }

    Optional<Cage> cage() {
        return room().cage(name);
    }

    Optional<Pair> pair() {
        return cage().flatMap(room()::pairIn);
    }

    Optional<Outlook> outlook() {
        return cage().map(cage -> Almanac.of(room()).nest(cage));
    }

    LocalDate day() {
        return chosenDay.get();
    }

    Message did(String what) {
        return Message.of("cage.done." + what, name);
    }

    void record(Deed deed, Message done) {
        record(List.of(deed), done);
    }

    void record(List<? extends Deed> deeds, Message done) {
        record(deeds, done, room -> {});
    }

    void record(List<? extends Deed> deeds, Message done, Consumer<Room> then) {
        pen.record(deeds, day(), Optional.empty(), done, then);
    }

    void note(Deed deed, String note, Message done) {
        pen.record(List.of(deed), day(), Optional.of(note), done, room -> {});
    }
}
