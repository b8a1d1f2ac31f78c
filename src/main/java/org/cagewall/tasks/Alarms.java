package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cagewall.room.Absence;
import org.cagewall.room.Person;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/**
 * The three rules to stop and phone, and whom. Immutable; any thread.
 *
 * @param rules what to phone about, in whole sentences
 * @param phones whom to phone, the first first
 */
public record Alarms(List<Message> rules, List<Phone> phones) {

    private static final Pattern NUMBER = Pattern.compile("\\+?[0-9][0-9 ()./-]{3,}[0-9]");

    /** Why somebody is in the list of phones. */
    public enum Who {
        OWNER,
        SECOND,
        VET
    }

    /** Somebody to phone; without a number where none is known. */
    public record Phone(Who who, String name, Optional<String> number) {}

    public Alarms {
        rules = List.copyOf(rules);
        phones = List.copyOf(phones);
    }

    /** The rules with the room's own heat limit, and the phones of the absence that runs, or else comes next. */
    public static Alarms of(Room room, LocalDate date) {
        return new Alarms(
                List.of(
                        Message.of("tasks.alarm-ill"),
                        Message.of("tasks.alarm-gone"),
                        Message.of("tasks.alarm-room", room.settings().heatPhone())),
                phones(room, date));
    }

    /** Whom to phone in this order where it is urgent: the vet first. */
    public List<Phone> phones(Urgency urgency) {
        boolean vetFirst = urgency == Urgency.VET_FIRST;
        return phones.stream()
                .sorted(Comparator.comparing(phone -> vetFirst && phone.who() != Who.VET))
                .toList();
    }

    private static List<Phone> phones(Room room, LocalDate date) {
        Optional<Absence> absence = room.absenceOn(date).or(() -> room.absenceAfter(date));
        List<Phone> phones = new ArrayList<>();
        room.owner().map(owner -> phone(Who.OWNER, owner)).ifPresent(phones::add);
        absence.flatMap(Absence::second)
                .flatMap(room::person)
                .map(second -> phone(Who.SECOND, second))
                .ifPresent(phones::add);
        absence.flatMap(Absence::vet).or(() -> lastVet(room)).map(Alarms::vet).ifPresent(phones::add);
        return phones;
    }

    private static Optional<String> lastVet(Room room) {
        return room.absences().stream()
                .flatMap(absence -> absence.vet().stream())
                .reduce((earlier, later) -> later);
    }

    private static Phone phone(Who who, Person person) {
        return new Phone(who, person.name(), person.phone());
    }

    /** The owner wrote name and number as one text, in either order. */
    private static Phone vet(String text) {
        Matcher number = NUMBER.matcher(text);
        if (!number.find()) {
            return new Phone(Who.VET, text, Optional.empty());
        }
        String name = (text.substring(0, number.start()) + text.substring(number.end()))
                .replaceAll("[\\s,;:]+", " ")
                .strip();
        return new Phone(Who.VET, name, Optional.of(number.group()));
    }
}
