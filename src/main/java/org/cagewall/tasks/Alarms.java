package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
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
 * When to stop and phone, and whom. Immutable; any thread.
 *
 * @param rules what to phone about, in whole sentences, each naming the dangers of a group
 * @param phones whom to phone for an ill bird, the first first
 */
public record Alarms(List<Message> rules, List<Phone> phones) {

    private static final Pattern NUMBER = Pattern.compile("\\+?[0-9][0-9 ()./-]{3,}[0-9]");

    /** Why somebody is in the list of phones. */
    public enum Who {
        OWNER,
        SECOND,
        VET
    }

    /**
     * Somebody to phone; without a number where none is known.
     *
     * @param first what this one is the first for, where that is not all the same one
     */
    public record Phone(Who who, String name, Optional<String> number, Optional<Message> first) {

        public Phone(Who who, String name, Optional<String> number) {
            this(who, name, number, Optional.empty());
        }

        private Phone firstFor(String what) {
            return new Phone(who, name, number, Optional.of(Message.of("danger." + what)));
        }
    }

    public Alarms {
        rules = List.copyOf(rules);
        phones = List.copyOf(phones);
    }

    /** The rules with the room's own limits, and the phones of the absence that runs, or else comes next. */
    public static Alarms of(Room room, LocalDate date) {
        return new Alarms(
                Arrays.stream(Danger.Group.values())
                        .filter(group -> group != Danger.Group.WATCH)
                        .map(group -> group.rule(room))
                        .toList(),
                illFirst(
                        usual(room, date),
                        Who.valueOf(room.settings().illFirst().name())));
    }

    /** Whom to phone about this danger: the one named for an ill bird first only where a bird's health is at stake. */
    public List<Phone> phones(Danger danger) {
        return danger.isIllness()
                ? phones
                : phones.stream().sorted(Comparator.comparing(Phone::who)).toList();
    }

    private static List<Phone> illFirst(List<Phone> usual, Who first) {
        List<Phone> ordered = usual.stream()
                .sorted(Comparator.comparing(phone -> phone.who() != first))
                .toList();
        return ordered.equals(usual)
                ? usual
                : ordered.stream()
                        .map(phone -> phone.equals(ordered.get(0))
                                ? phone.firstFor("first-ill")
                                : phone.equals(usual.get(0)) ? phone.firstFor("first-else") : phone)
                        .toList();
    }

    private static List<Phone> usual(Room room, LocalDate date) {
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
