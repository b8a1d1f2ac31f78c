package org.cagewall.scan;

import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import java.util.List;

/** One way of looking for symbols, each good at what the others are not. Stateless; any thread. */
enum Pass {
    /** Clear pictures, also of small symbols. */
    NEAR {
        @Override
        List<Sighting> look(Luma luma) {
            return SymbolSearch.in(luma, Dark.belowMean(luma, shortSide(luma) / 32, 0.05));
        }
    },

    /** Noise is averaged away. */
    HALF {
        @Override
        List<Sighting> look(Luma luma) {
            Luma half = luma.half();
            return doubled(SymbolSearch.in(half, Dark.belowMean(half, shortSide(half) / 16, 0.05)));
        }
    },

    /** Symbols that fill the picture. */
    COARSE {
        @Override
        List<Sighting> look(Luma luma) {
            Luma coarse = luma.atMost(COARSE_SIDE);
            double scale = (double) luma.width() / coarse.width();
            return SymbolSearch.in(coarse, Dark.belowMean(coarse, shortSide(coarse) / 8, 0.05)).stream()
                    .map(sighting -> sighting.scaled(scale))
                    .toList();
        }
    },

    /** Blur and movement: edges are made steep. */
    SHARP {
        @Override
        List<Sighting> look(Luma luma) {
            return SymbolSearch.in(luma, Dark.belowMean(luma.sharpened(8, 5), shortSide(luma) / 8, 0.1));
        }
    },

    HALF_SHARP {
        @Override
        List<Sighting> look(Luma luma) {
            Luma half = luma.half();
            return doubled(SymbolSearch.in(half, Dark.belowMean(half.sharpened(4, 3), shortSide(half) / 16, 0.05)));
        }
    },

    /** Codes that are no cards: they take longer, since nothing is known of them. */
    OTHERS {
        @Override
        List<Sighting> look(Luma luma) {
            return SymbolSearch.others(luma, Dark.belowMean(luma, shortSide(luma) / 32, 0.05));
        }
    },

    OTHERS_HALF {
        @Override
        List<Sighting> look(Luma luma) {
            Luma half = luma.half();
            return doubled(SymbolSearch.others(half, Dark.belowMean(half, shortSide(half) / 16, 0.05)));
        }
    },

    OTHERS_SHARP {
        @Override
        List<Sighting> look(Luma luma) {
            return SymbolSearch.others(luma, Dark.belowMean(luma.sharpened(8, 5), shortSide(luma) / 8, 0.1));
        }
    },

    /** Light codes on dark, as on a screen; no card is. */
    INVERTED {
        @Override
        List<Sighting> look(Luma luma) {
            Luma other = luma.inverted();
            return SymbolSearch.others(other, Dark.belowMean(other, shortSide(other) / 16, 0.05));
        }
    },

    PLAIN {
        @Override
        List<Sighting> look(Luma luma) {
            return PlainLook.in(luma, GlobalHistogramBinarizer::new);
        }
    },

    PLAIN_HALF {
        @Override
        List<Sighting> look(Luma luma) {
            return doubled(PlainLook.in(luma.half(), HybridBinarizer::new));
        }
    };

    /** By how much each reads that those before it do not, for its time; measured. */
    static final List<Pass> IN_ORDER = List.of(values());

    private static final int COARSE_SIDE = 320;

    /** What is seen, in the pixels of the picture. */
    abstract List<Sighting> look(Luma luma);

    private static int shortSide(Luma luma) {
        return Math.min(luma.width(), luma.height());
    }

    private static List<Sighting> doubled(List<Sighting> seen) {
        return seen.stream().map(sighting -> sighting.scaled(2)).toList();
    }
}
