package org.cagewall.scan;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A picture in which dark has been told from light, and what the searches ask of it, so that it is made once for all of
 * them. One thread.
 */
final class Look {

    private static final int MOST = 40;

    private final Luma luma;
    private final Dark dark;
    private final List<Finder> finders;
    private final List<Triple> triples;
    private final Corners corners;
    private final Map<Triple, SortedMap<Integer, List<Pose>>> likely = new HashMap<>();
    private final Map<Integer, Fit> fits = new HashMap<>();

    Look(Luma luma, Dark dark) {
        this.luma = luma;
        this.dark = dark;
        corners = new Corners(luma);
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

    /** The least odd of them first, and no more than are worth a look; measured. */
    List<Triple> leastOdd() {
        return triples.stream()
                .sorted(Comparator.comparingDouble(Triple::oddness))
                .limit(MOST)
                .toList();
    }

    /** Of the versions that it may be those in which its corners look like corners, and the poses in which they do. */
    SortedMap<Integer, List<Pose>> likely(Triple triple) {
        return likely.computeIfAbsent(triple, this::found);
    }

    private SortedMap<Integer, List<Pose>> found(Triple triple) {
        SortedMap<Integer, List<Pose>> found = new TreeMap<>();
        triple.versions().forEach(version -> {
            List<Pose> poses = triple.poses(KnownModules.side(version)).stream()
                    .filter(corners::areLikely)
                    .toList();
            if (!poses.isEmpty()) {
                found.put(version, poses);
            }
        });
        return found;
    }

    Fit fit(int version) {
        return fits.computeIfAbsent(version, it -> new Fit(luma, KnownModules.of(it)));
    }
}
