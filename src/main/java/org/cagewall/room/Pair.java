package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** A cock and a hen paired up in a cage, with their rounds, oldest first. Immutable; any thread. */
public record Pair(long id, String label, long cage, long cock, long hen, LocalDate since, List<Round> rounds) {

    public Pair {
        rounds = List.copyOf(rounds);
    }

    public Optional<Round> openRound() {
        return rounds.stream().filter(Round::isOpen).reduce((earlier, later) -> later);
    }

    public int eggs() {
        return openRound().map(round -> round.eggs().size()).orElse(0);
    }
}
