package org.cagewall.scan;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;

/**
 * Looks for cards in the pictures of a camera as they come: where the last card was at first, then in the whole picture,
 * with the slower passes taking turns, so that no picture takes much longer than it may. A card that stays in view is one
 * scan. The lane of frames alone.
 */
public final class Watch {

    /** How long a picture may take: a camera gives fifteen a second, and the rest of the program wants time too. */
    static final long BUDGET_NANOS = 50_000_000;

    /** A card that was out of view for so long is a new scan. */
    static final long MOMENT_NANOS = 2_000_000_000L;

    /** While a card is held still, n pictures are looked at only where it was; then one as a whole. */
    private static final int PARTS_IN_A_ROW = 4;

    /** How far around the last card is looked, in its sides; and in pixels at least. */
    private static final double AROUND = 1.2;

    private static final double LEAST_AROUND = 120;

    /** By so much of its side a card has to be nearer the middle than another one to take its turn. */
    private static final double NEARER = 0.25;

    /** Measured: what reads most for its time looks at every picture. */
    private static final Pass ALWAYS = Pass.NEAR;

    private static final List<Pass> IN_TURN =
            Pass.IN_ORDER.stream().filter(pass -> pass != ALWAYS).toList();

    /** What was read, and when. */
    private record Seen(Sighting card, long when) {}

    /** Whether there was anything to read a moment ago. */
    public enum Sight {
        CODE,
        NOTHING
    }

    private final LongSupplier nanos;
    private final Map<Pass, Long> usualCost = new EnumMap<>(Pass.class);
    private final Map<String, Seen> lastSeen = new HashMap<>();
    private Optional<Sighting> last = Optional.empty();
    private int partsInARow;
    private int turn;

    /** @param nanos a clock that never goes back, in nanoseconds */
    public Watch(LongSupplier nanos) {
        this.nanos = nanos;
    }

    /** The card that has newly come into this picture; of several, the one nearest the middle. */
    public Optional<Decoding.Found> see(Luma picture) {
        forget();
        if (!Decoder.holdsSymbol(picture)) {
            return Optional.empty();
        }
        Luma usual = picture.atMost(Decoder.LONGEST_SIDE);
        Optional<Decoding.Found> found = where(usual);
        last = found.map(Decoding.Found::nearest);
        double scale = (double) picture.width() / usual.width();
        return found.filter(it -> isNew(it.nearest(), usual)).map(it -> it.scaled(scale));
    }

    /** What was in view a moment ago; a code that cannot be read for a few pictures is still there. */
    public Sight sight() {
        return lastSeen.isEmpty() ? Sight.NOTHING : Sight.CODE;
    }

    /** Where another card has come to where the last one was, what lies beside it is looked at too. */
    private Optional<Decoding.Found> where(Luma picture) {
        long begun = nanos.getAsLong();
        if (last.isPresent() && partsInARow < PARTS_IN_A_ROW) {
            Optional<Decoding.Found> there = around(last.get(), picture).filter(this::isTheLastAlone);
            if (there.isPresent()) {
                partsInARow++;
                return there;
            }
        }
        partsInARow = 0;
        Looks looks = new Looks(picture);
        Optional<Decoding.Found> found = timed(ALWAYS, looks);
        for (int i = 0; i < IN_TURN.size() && found.isEmpty() && hasTimeFor(IN_TURN.get(turn), begun); i++) {
            found = timed(IN_TURN.get(turn), looks);
            turn = (turn + 1) % IN_TURN.size();
        }
        return found;
    }

    /** A pass that always takes longer than there is time for would never have its turn: one that begins in time may. */
    private boolean hasTimeFor(Pass pass, long begun) {
        long spent = nanos.getAsLong() - begun;
        long cost = Math.min(usualCost.getOrDefault(pass, 0L), BUDGET_NANOS / 2);
        return spent + cost <= BUDGET_NANOS;
    }

    private static Optional<Decoding.Found> around(Sighting card, Luma picture) {
        double reach = Math.max(LEAST_AROUND, AROUND * card.side());
        int left = (int) Math.max(0, card.x() - reach);
        int top = (int) Math.max(0, card.y() - reach);
        int right = (int) Math.min(picture.width(), card.x() + reach);
        int bottom = (int) Math.min(picture.height(), card.y() + reach);
        Luma part = picture.part(left, top, right - left, bottom - top);
        return Decoder.found(ALWAYS.look(new Looks(part)), part).map(found -> found.moved(left, top));
    }

    private boolean isTheLastAlone(Decoding.Found found) {
        return found.others().isEmpty()
                && last.filter(card -> card.text().equals(found.nearest().text()))
                        .isPresent();
    }

    private Optional<Decoding.Found> timed(Pass pass, Looks looks) {
        long begun = nanos.getAsLong();
        List<Sighting> seen = pass.look(looks);
        usualCost.merge(pass, nanos.getAsLong() - begun, (before, now) -> (3 * before + now) / 4);
        return Decoder.found(seen, looks.picture());
    }

    private boolean isNew(Sighting card, Luma picture) {
        if (!lastSeen.containsKey(card.text()) && isBesideAnother(card, picture)) {
            return false;
        }
        return lastSeen.put(card.text(), new Seen(card, nanos.getAsLong())) == null;
    }

    /**
     * Not each look reads every card: one that was read a moment ago, nearer the middle or about as near, is still there,
     * unless this one has come to its place. A code that is no card keeps no card from being read.
     */
    private boolean isBesideAnother(Sighting card, Luma picture) {
        double x = picture.width() / 2.0;
        double y = picture.height() / 2.0;
        double clearlyNearer = card.distance(x, y) + NEARER * card.side();
        return lastSeen.values().stream()
                .map(Seen::card)
                .filter(other -> other.isCard() || !card.isCard())
                .anyMatch(other ->
                        other.distance(x, y) < clearlyNearer && other.distance(card.x(), card.y()) > card.side());
    }

    private void forget() {
        long now = nanos.getAsLong();
        lastSeen.values().removeIf(seen -> now - seen.when() > MOMENT_NANOS);
    }
}
