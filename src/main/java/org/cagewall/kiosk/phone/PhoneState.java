package org.cagewall.kiosk.phone;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.list.RowFace;

/**
 * What the page of phones shows. Immutable; any thread.
 *
 * @param people whom to phone, the first first
 * @param agreed what was agreed by phone and holds
 * @param calls the last calls, the newest first
 * @param call whose call is being told
 */
public record PhoneState(
        String title,
        String subtitle,
        List<Person> people,
        List<Agreed> agreed,
        List<RowFace> calls,
        Optional<Person> call) {

    public PhoneState {
        people = List.copyOf(people);
        agreed = List.copyOf(agreed);
        calls = List.copyOf(calls);
    }

    /**
     * Somebody to phone.
     *
     * @param said the name, and why one would phone there
     */
    public record Person(String name, String said, String number) {}

    /**
     * What was agreed by phone and holds.
     *
     * @param call the entry of the call
     */
    public record Agreed(long call, RowFace face) {}

    PhoneState telling(Optional<Person> of) {
        return new PhoneState(title, subtitle, people, agreed, calls, of);
    }
}
