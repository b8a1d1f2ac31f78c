package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A cock and a hen paired up in a cage, with their rounds, oldest first. Immutable; any thread.
 *
 * @param about whether the day since which they are a pair is the keeper's guess
 * @param skipped stages of their parting that were left out
 */
public record Pair(
        long id,
        String label,
        long cage,
        long cock,
        long hen,
        LocalDate since,
        boolean about,
        List<Round> rounds,
        Optional<PartingBegun> parting,
        List<SkippedStage> skipped) {

    public Pair {
        rounds = List.copyOf(rounds);
        skipped = List.copyOf(skipped);
    }

    /** The pair before that day; its birds may have been put together on it. */
    public Pair before(LocalDate day) {
        return new Pair(
                id,
                label,
                cage,
                cock,
                hen,
                since,
                about,
                rounds.stream().flatMap(round -> round.before(day).stream()).toList(),
                parting,
                skipped);
    }

    public Optional<Round> openRound() {
        return rounds.stream().filter(Round::isOpen).reduce((earlier, later) -> later);
    }

    /** How many eggs of the round under way were laid, whatever became of them. */
    public int eggs() {
        return openRound().map(round -> round.eggs().size()).orElse(0);
    }

    /** All its eggs, oldest round first. */
    public Stream<Egg> allEggs() {
        return rounds.stream().flatMap(round -> round.eggs().stream());
    }

    public boolean isBeingParted() {
        return parting.isPresent();
    }

    public boolean isSkipped(Stage stage) {
        return skipped.stream().anyMatch(skip -> skip.stage() == stage);
    }
}
