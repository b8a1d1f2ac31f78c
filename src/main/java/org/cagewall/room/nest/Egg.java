package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One egg and what came of it. Immutable; any thread.
 *
 * @param mark the number pencilled on it, running within its round
 * @param about whether the laying date is the keeper's guess
 * @param cage where it was laid
 * @param candlings what it showed against the light, oldest first
 * @param moves the nests it was moved to, oldest first
 */
public record Egg(
        String mark,
        LocalDate laid,
        boolean about,
        EggPlace place,
        long cage,
        long entry,
        List<Candling> candlings,
        Optional<LocalDate> pipped,
        List<NestMove> moves,
        Optional<Removal> removed,
        Optional<Chick> chick) {

    public Egg {
        candlings = List.copyOf(candlings);
        moves = List.copyOf(moves);
    }

    /** The egg before that day. */
    Egg before(LocalDate day) {
        return new Egg(
                mark,
                laid,
                about,
                place,
                cage,
                entry,
                candlings.stream().filter(look -> look.day().isBefore(day)).toList(),
                Days.before(pipped, day),
                moves.stream().filter(move -> move.day().isBefore(day)).toList(),
                removed.filter(gone -> gone.day().isBefore(day)),
                chick.filter(young -> young.hatched().isBefore(day)).map(young -> young.before(day)));
    }

    /** The egg as it would be, had it hatched on about that day. */
    public Egg hatching(LocalDate day) {
        Chick young = new Chick(day, true, Optional.empty(), List.of(), List.of(), Optional.empty(), Optional.empty());
        return new Egg(mark, laid, about, place, cage, entry, candlings, pipped, moves, removed, Optional.of(young));
    }

    /** The last thing known of it as an egg. */
    public EggState state() {
        if (chick.isPresent()) {
            return EggState.HATCHED;
        }
        if (removed.isPresent()) {
            return EggState.REMOVED;
        }
        if (pipped.isPresent()) {
            return EggState.PIPPED;
        }
        return finding().map(found -> EggState.valueOf(found.name())).orElse(EggState.NOT_CANDLED);
    }

    public Optional<EggFinding> finding() {
        return candlings.isEmpty()
                ? Optional.empty()
                : Optional.of(candlings.get(candlings.size() - 1).finding());
    }

    /** Whether it lies in a nest as an egg, be it clear or not. */
    public boolean isLying() {
        return chick.isEmpty() && removed.isEmpty();
    }

    /** Whether a chick may still come of it: it lies in a nest and is not known to be clear or addled. */
    public boolean mayHatch() {
        return isLying() && state() != EggState.CLEAR && state() != EggState.ADDLED;
    }

    /** Whether it was full: by a candling that holds, by pipping, or because it hatched. */
    public boolean wasFull() {
        return chick.isPresent()
                || pipped.isPresent()
                || finding().filter(found -> found == EggFinding.FULL).isPresent()
                || removed.filter(gone -> gone.why() == WhyRemoved.DEAD_IN_SHELL)
                        .isPresent();
    }

    /** Whether the egg, or the chick from it, is in a nest. */
    public boolean isInNest() {
        return isLying() || chick.filter(Chick::isInCare).isPresent();
    }

    /** Whether something is still to come of it: an egg that may hatch, or a chick in the care of a nest. */
    public boolean isYoung() {
        return mayHatch() || chick.filter(Chick::isInCare).isPresent();
    }

    /** The cage where it, or its chick, lies now, or lay last. */
    public long nest() {
        return moves.isEmpty() ? cage : moves.get(moves.size() - 1).cage();
    }

    /** The cage where it lay at the end of that day. */
    public long nestOn(LocalDate day) {
        return moves.stream()
                .filter(move -> !move.day().isAfter(day))
                .reduce((earlier, later) -> later)
                .map(NestMove::cage)
                .orElse(cage);
    }

    /** Whether it was in that cage at some time of that day. */
    public boolean wasIn(long nest, LocalDate day) {
        return !day.isBefore(laid) && isOrWasIn(nest, day);
    }

    private boolean isOrWasIn(long nest, LocalDate day) {
        return nestOn(day) == nest
                || nestOn(day.minusDays(1)) == nest
                || moves.stream().anyMatch(move -> move.day().equals(day) && move.cage() == nest);
    }

    public boolean isMovedIn() {
        return nest() != cage;
    }

    /** What it was marked with when it was last moved. */
    public Optional<String> letter() {
        return moves.isEmpty()
                ? Optional.empty()
                : Optional.of(moves.get(moves.size() - 1).letter());
    }
}
