package org.cagewall.scan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the QR symbols in a picture and says what they say: quick looks first, then those that take longer. Stateless;
 * the lane of frames, or any thread but the event thread.
 */
public final class Decoder {

    /** Measured: with more pixels the plain passes read less. */
    static final int LONGEST_SIDE = 1280;

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
        Luma usual = picture.atMost(LONGEST_SIDE);
        double scale = (double) picture.width() / usual.width();
        return Pass.IN_ORDER.stream()
                .map(pass -> found(pass.look(usual), usual))
                .flatMap(Optional::stream)
                .findFirst()
                .<Decoding>map(found -> found.scaled(scale))
                .orElseGet(Decoding.Nothing::new);
    }

    static boolean holdsSymbol(Luma picture) {
        return Math.min(picture.width(), picture.height()) >= SMALLEST_SIDE;
    }

    /** Of what was seen, what lies nearest the picture's middle; a card that carries its symbol twice counts once. */
    static Optional<Decoding.Found> found(List<Sighting> seen, Luma picture) {
        double x = picture.width() / 2.0;
        double y = picture.height() / 2.0;
        return seen.stream()
                .min(Comparator.comparingDouble(sighting -> sighting.distance(x, y)))
                .map(nearest -> new Decoding.Found(nearest, others(seen, nearest)));
    }

    private static List<String> others(List<Sighting> seen, Sighting nearest) {
        return seen.stream()
                .map(Sighting::text)
                .filter(text -> !text.equals(nearest.text()))
                .distinct()
                .toList();
    }
}
