package org.cagewall.scan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the QR symbols in a picture and says what they say: quick looks first, then those that take longer. Stateless;
 * the lane of frames, or any thread but the event thread.
 */
public final class Decoder {

    /** Measured: with more pixels the plain passes read less, and all take longer. */
    static final int LONGEST_SIDE = 1280;

    /** What is worth looking for with more. */
    private static final List<Pass> CLOSER = List.of(Pass.NEAR, Pass.OTHERS);

    /** ISO/IEC 18004: the smallest symbol has 21 modules on a side. */
    private static final int SMALLEST_SIDE = 21;

    /** What the symbol in this frame says, or why there is nothing to say. */
    public Decoding decode(Frame frame) {
        return frame.decodedBy(this);
    }

    /**
     * What the symbol in this picture says; of several, the one nearest the middle. The answer to the same picture is
     * always the same.
     */
    public Decoding decode(Luma picture) {
        if (!holdsSymbol(picture)) {
            return new Decoding.Nothing();
        }
        return found(picture, LONGEST_SIDE, Pass.IN_ORDER)
                .or(() -> isLarge(picture) ? found(picture, 2 * LONGEST_SIDE, CLOSER) : Optional.empty())
                .<Decoding>map(found -> found)
                .orElseGet(Decoding.Nothing::new);
    }

    /** A large photograph may show a symbol that is too small once it is made smaller. */
    private static boolean isLarge(Luma picture) {
        return Math.max(picture.width(), picture.height()) > LONGEST_SIDE;
    }

    private static Optional<Decoding.Found> found(Luma picture, int longestSide, List<Pass> passes) {
        Luma looked = picture.atMost(longestSide);
        Looks looks = new Looks(looked);
        return passes.stream()
                .map(pass -> found(pass.look(looks), looked))
                .flatMap(Optional::stream)
                .findFirst()
                .map(found -> found.scaled((double) picture.width() / looked.width()));
    }

    static boolean holdsSymbol(Luma picture) {
        return Math.min(picture.width(), picture.height()) >= SMALLEST_SIDE;
    }

    /**
     * Of the cards that were seen, the one nearest the picture's middle; of other codes only where there is no card. A
     * card that carries its symbol twice counts once.
     */
    static Optional<Decoding.Found> found(List<Sighting> seen, Luma picture) {
        double x = picture.width() / 2.0;
        double y = picture.height() / 2.0;
        List<Sighting> cards = seen.stream().filter(Sighting::isCard).toList();
        List<Sighting> meant = cards.isEmpty() ? seen : cards;
        return meant.stream()
                .min(Comparator.comparingDouble(sighting -> sighting.distance(x, y)))
                .map(nearest -> new Decoding.Found(nearest, others(meant, nearest)));
    }

    private static List<String> others(List<Sighting> seen, Sighting nearest) {
        return seen.stream()
                .map(Sighting::text)
                .filter(text -> !text.equals(nearest.text()))
                .distinct()
                .toList();
    }
}
