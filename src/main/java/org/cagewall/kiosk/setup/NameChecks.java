package org.cagewall.kiosk.setup;

import java.util.Optional;
import org.cagewall.deed.PhoneNumbers;
import org.cagewall.text.Message;

/** What is asked of a name or a phone number before it is sent to be recorded. Pure; any thread. */
final class NameChecks {

    private static final int MOST_LETTERS = 40;

    private NameChecks() {}

    /** The key of the sentence that says what is wrong with the name; {@code empty} is said where there is none. */
    static Optional<String> wrong(String name, String empty) {
        String kept = name.strip();
        if (kept.isEmpty()) {
            return Optional.of(empty);
        }
        return kept.codePointCount(0, kept.length()) > MOST_LETTERS ? Optional.of("setup.too-long") : Optional.empty();
    }

    /** What is wrong with the number, where there has to be one. */
    static Optional<Message> wrongPhone(String phone, String empty) {
        return wrong(phone, empty).map(Message::of).or(() -> PhoneNumbers.whyNot(phone.strip()));
    }
}
