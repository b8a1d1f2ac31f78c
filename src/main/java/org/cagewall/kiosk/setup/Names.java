package org.cagewall.kiosk.setup;

import java.util.Optional;

/** What is asked of a name before it is sent to be recorded. Pure; any thread. */
final class Names {

    private static final int MOST_LETTERS = 40;

    private Names() {}

    /** The key of the sentence that says what is wrong with the name; {@code empty} is said where there is none. */
    static Optional<String> wrong(String name, String empty) {
        String kept = name.strip();
        if (kept.isEmpty()) {
            return Optional.of(empty);
        }
        return kept.codePointCount(0, kept.length()) > MOST_LETTERS ? Optional.of("setup.too-long") : Optional.empty();
    }
}
