package org.cagewall.scan;

import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import java.util.List;
import java.util.function.Function;

/** One way of looking for symbols, each good at what the others are not. Stateless; any thread. */
enum Pass {
    NEAR(luma -> Contrast.NEAR.look(luma, CardSearch::in)),
    HALF(luma -> Contrast.HALF.look(luma, CardSearch::in)),
    COARSE(luma -> Contrast.COARSE.look(luma, CardSearch::in)),
    SHARP(luma -> Contrast.SHARP.look(luma, CardSearch::in)),
    HALF_SHARP(luma -> Contrast.HALF_SHARP.look(luma, CardSearch::in)),

    /** Codes that are no cards take longer, since nothing is known of them. */
    OTHERS(luma -> Contrast.NEAR.look(luma, OtherSearch::in)),
    OTHERS_HALF(luma -> Contrast.HALF.look(luma, OtherSearch::in)),
    OTHERS_SHARP(luma -> Contrast.SHARP.look(luma, OtherSearch::in)),
    OTHERS_INVERTED(luma -> Contrast.INVERTED.look(luma, OtherSearch::in)),

    PLAIN(luma -> PlainLook.in(luma, GlobalHistogramBinarizer::new)),
    PLAIN_HALF(luma -> PlainLook.in(luma.half(), HybridBinarizer::new).stream()
            .map(sighting -> sighting.scaled(2))
            .toList());

    /** By how much each reads that those before it do not, for its time; measured. */
    static final List<Pass> IN_ORDER = List.of(values());

    private final Function<Luma, List<Sighting>> look;

    Pass(Function<Luma, List<Sighting>> look) {
        this.look = look;
    }

    /** What is seen, in the pixels of the picture. */
    List<Sighting> look(Luma luma) {
        return look.apply(luma);
    }
}
