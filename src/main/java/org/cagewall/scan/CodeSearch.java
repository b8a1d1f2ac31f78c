package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.stream.Stream;

/**
 * Looks for codes, cards or others, by their three corner squares: each three of these, in each version that it may be, may
 * lie in several ways, and the best of them are followed until one can be read. One thread.
 */
abstract class CodeSearch {

    private final Look look;
    private final int most;
    private final int followed;

    /**
     * @param most the most threes of corner squares that are tried
     * @param followed and the most ways in which each may lie
     */
    CodeSearch(Look look, int most, int followed) {
        this.look = look;
        this.most = most;
        this.followed = followed;
    }

    /** Where a symbol may lie, and how well that fits. */
    record Start(Fit fit, Fit.Fitted fitted) {

        Pose pose() {
            return fitted.pose();
        }

        KnownModules known() {
            return fit.known();
        }
    }

    /** All codes that can be read; what was seen lies in the pixels of this picture. */
    final List<Sighting> all() {
        List<Sighting> seen = new ArrayList<>();
        look.leastOdd().stream()
                .filter(triple -> seen.stream().noneMatch(triple::isWithin))
                .map(look::likely)
                .filter(likely -> !likely.isEmpty())
                .limit(most)
                .map(this::read)
                .flatMap(Optional::stream)
                .forEach(seen::add);
        return List.copyOf(seen);
    }

    private Optional<Sighting> read(SortedMap<Integer, List<Pose>> likely) {
        return likely.entrySet().stream()
                .flatMap(each -> starts(each.getValue(), look.fit(each.getKey())))
                .filter(start -> start.fitted.isSymbol())
                .sorted(Comparator.comparingDouble(start -> -start.fitted.worth()))
                .limit(followed)
                .map(this::read)
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The ways in which a symbol of one version may lie that has its corners in one of these poses. */
    abstract Stream<Start> starts(List<Pose> likely, Fit fit);

    abstract Optional<Sighting> read(Start start);

    /** The poses whose fourth corner is where the last alignment pattern may be, n modules from where it should be. */
    final Stream<Pose> byLastAlignment(Pose pose, KnownModules known, double reach, int places) {
        int[] centres = known.alignments();
        if (centres.length == 0) {
            return Stream.empty();
        }
        double centre = centres[centres.length - 1] + 0.5;
        double[] spot = new double[2];
        return new AlignmentSearch(look.luma(), pose)
                .around(centre, centre, reach, places).stream()
                        .map(found -> {
                            pose.see(found.column(), found.row(), spot);
                            return pose.lastCornerBy(centre, centre, spot[0], spot[1]);
                        })
                        .filter(Pose::isConvex);
    }
}
