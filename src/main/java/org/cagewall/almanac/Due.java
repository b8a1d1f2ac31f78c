package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Something that is expected between two days, or has happened: then the window is that day three times. Immutable; any
 * thread.
 */
public record Due(Window window, Optional<LocalDate> happened) {

    static Due expected(Window window) {
        return new Due(window, Optional.empty());
    }

    static Due happened(LocalDate day) {
        return new Due(Window.on(day), Optional.of(day));
    }

    static Due of(Optional<LocalDate> happened, Window otherwise) {
        return happened.map(Due::happened).orElseGet(() -> expected(otherwise));
    }

    static Optional<Due> of(Optional<LocalDate> happened, Optional<Window> otherwise) {
        return happened.map(Due::happened).or(() -> otherwise.map(Due::expected));
    }

    Due guessed(boolean guess) {
        return new Due(window.guessed(guess), happened);
    }

    public boolean isOpen() {
        return happened.isEmpty();
    }
}
