package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads what is clear, cards and other codes alike: all three corner squares are seen, the paper is flat, and nothing has
 * to be moved. One thread.
 */
final class ClearSearch {

    /** So many of the threes of corner squares are tried, and of the versions that they may be; measured. */
    private static final int MOST = 6;

    private static final int FOLLOWED = 2;

    /** How far from where it should be the last alignment pattern is looked for, in modules; measured. */
    private static final double REACH = 3;

    /** A pose worth more is surely that of a symbol, and if of no card, then of another code as large; measured. */
    static final double SURE_WORTH = 0.9;

    private final Look look;

    private ClearSearch(Look look) {
        this.look = look;
    }

    /** All codes that are read at once; what was seen lies in the pixels of this picture. */
    static List<Sighting> in(Look look) {
        ClearSearch search = new ClearSearch(look);
        List<Sighting> seen = new ArrayList<>();
        look.likely().stream()
                .limit(MOST)
                .filter(triple -> seen.stream().noneMatch(triple::isWithin))
                .map(search::read)
                .flatMap(Optional::stream)
                .forEach(seen::add);
        return List.copyOf(seen);
    }

    private record Start(Fit fit, Fit.Fitted fitted) {}

    private Optional<Sighting> read(Triple triple) {
        return triple.versions()
                .mapToObj(look::fit)
                .map(fit -> new Start(fit, best(triple, fit)))
                .filter(start -> start.fitted.isSymbol())
                .sorted(Comparator.comparingDouble(start -> -start.fitted.worth()))
                .limit(FOLLOWED)
                .map(this::read)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Fit.Fitted best(Triple triple, Fit fit) {
        Fit.Fitted flat = fit.best(triple.poses(fit.known().side()));
        int[] centres = fit.known().alignments();
        if (centres.length == 0) {
            return flat;
        }
        double last = centres[centres.length - 1] + 0.5;
        double[] spot = new double[2];
        return fit.best(Stream.concat(
                        Stream.of(flat.pose()),
                        new AlignmentSearch(look.luma(), flat.pose())
                                .around(last, last, REACH, 1).stream().map(found -> {
                                    flat.pose().see(found.column(), found.row(), spot);
                                    return flat.pose().lastCornerBy(last, last, spot[0], spot[1]);
                                }))
                .toList());
    }

    private Optional<Sighting> read(Start start) {
        Pose pose = start.fitted.pose();
        KnownModules known = start.fit.known();
        double[] darkness = Samples.of(look.luma(), pose, known).darkness();
        return text(start, darkness).map(text -> Sighting.of(text, pose));
    }

    private static Optional<String> text(Start start, double[] darkness) {
        KnownModules known = start.fit.known();
        if (known.side() != CardSymbol.MODULES.side()) {
            return AnySymbol.read(darkness, known);
        }
        return start.fitted.worth() > SURE_WORTH
                ? CardSymbol.read(darkness).map(code -> code.text()).or(() -> AnySymbol.read(darkness, known))
                : Optional.empty();
    }
}
