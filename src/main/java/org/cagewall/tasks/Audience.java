package org.cagewall.tasks;

import java.time.LocalDate;
import org.cagewall.room.Person;
import org.cagewall.room.Role;
import org.cagewall.room.Room;

/** For whom a day's list is made. */
public enum Audience {
    OWNER,
    SITTER;

    /** The sitter's list is followed by a sitter, and by whoever looks after the birds while the owner is away. */
    public static Audience of(Room room, LocalDate date, Person person) {
        boolean standsIn = room.absenceOn(date)
                .filter(absence -> absence.sitter().equalsIgnoreCase(person.name()))
                .isPresent();
        return person.role() == Role.SITTER || standsIn ? SITTER : OWNER;
    }
}
