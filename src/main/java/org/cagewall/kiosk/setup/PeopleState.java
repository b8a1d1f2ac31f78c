package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.room.Role;

/** What the part of people shows: who there is, and whom one is adding or changing. Immutable; free of Swing. */
record PeopleState(List<Someone> people, Optional<Someone> changing, Optional<Problem> problem) {

    /** A person; the phone is empty where none is known. */
    record Someone(String name, Role role, String phone) {}

    PeopleState {
        people = List.copyOf(people);
    }

    PeopleState changing(Optional<Someone> other) {
        return new PeopleState(people, other, Optional.empty());
    }

    PeopleState wrong(String part, String words) {
        return new PeopleState(people, changing, Optional.of(new Problem(part, words)));
    }
}
