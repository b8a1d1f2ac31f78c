package org.cagewall.scan;

import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import java.util.List;
import java.util.function.Function;

/** One way of looking for symbols, each good at what the others are not. Stateless; any thread. */
enum Pass {
    NEAR(looks -> looks.seen(Contrast.NEAR, CardSearch::in)),
    HALF(looks -> looks.seen(Contrast.HALF, CardSearch::in)),
    COARSE(looks -> looks.seen(Contrast.COARSE, CardSearch::in)),
    SHARP(looks -> looks.seen(Contrast.SHARP, CardSearch::in)),
    HALF_SHARP(looks -> looks.seen(Contrast.HALF_SHARP, CardSearch::in)),

    /** Codes that are no cards take longer, since nothing is known of them. */
    OTHERS(looks -> looks.seen(Contrast.NEAR, OtherSearch::in)),
    OTHERS_HALF(looks -> looks.seen(Contrast.HALF, OtherSearch::in)),
    OTHERS_SHARP(looks -> looks.seen(Contrast.SHARP, OtherSearch::in)),
    OTHERS_COARSE(looks -> looks.seen(Contrast.COARSE, OtherSearch::in)),
    OTHERS_HALF_SHARP(looks -> looks.seen(Contrast.HALF_SHARP, OtherSearch::in)),
    OTHERS_INVERTED(looks -> looks.seen(Contrast.INVERTED, OtherSearch::in)),

    PLAIN(looks -> PlainLook.in(looks.picture(), GlobalHistogramBinarizer::new)),
    PLAIN_HALF(looks -> PlainLook.in(looks.picture().half(), HybridBinarizer::new).stream()
            .map(sighting -> sighting.scaled(2))
            .toList());

    /** By how much each reads that those before it do not, for its time; measured. */
    static final List<Pass> IN_ORDER = List.of(values());

    private final Function<Looks, List<Sighting>> look;

    Pass(Function<Looks, List<Sighting>> look) {
        this.look = look;
    }

    /** What is seen, in the pixels of the picture. */
    List<Sighting> look(Looks looks) {
        return look.apply(looks);
    }
}
