package org.cagewall.scan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A picture in which dark has been told from light, and what the searches ask of it, so that it is made once for all of
 * them. One thread.
 */
final class Look {

    private final Luma luma;
    private final Dark dark;
    private final List<Finder> finders;
    private final List<Triple> triples;
    private final Map<Integer, Fit> fits = new HashMap<>();

    Look(Luma luma, Dark dark) {
        this.luma = luma;
        this.dark = dark;
        finders = FinderSearch.in(dark);
        triples = Triple.of(finders, dark);
    }

    Luma luma() {
        return luma;
    }

    Dark dark() {
        return dark;
    }

    /** The corner squares, those seen on most rows first. */
    List<Finder> finders() {
        return finders;
    }

    /** The threes of corner squares that may be one symbol's, those most like a card's first. */
    List<Triple> triples() {
        return triples;
    }

    /** Those of them whose corners look like one symbol's, the least odd first. */
    List<Triple> likely() {
        Corners corners = new Corners(luma);
        return triples.stream()
                .filter(triple -> triple.versions()
                        .anyMatch(version -> triple.poses(KnownModules.side(version)).stream()
                                .anyMatch(corners::areLikely)))
                .sorted(Comparator.comparingDouble(Triple::oddness))
                .toList();
    }

    Fit fit(int version) {
        return fits.computeIfAbsent(version, it -> new Fit(luma, KnownModules.of(it)));
    }
}
