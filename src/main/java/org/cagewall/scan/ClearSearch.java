package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Reads what is clear, cards and other codes alike: all three corner squares are seen, the paper is flat, and nothing has
 * to be moved. One thread.
 */
final class ClearSearch extends CodeSearch {

    private static final int MOST = 6;
    private static final int FOLLOWED = 2;

    /** How far from where it should be the last alignment pattern is looked for, in modules; measured. */
    private static final double REACH = 3;

    private final Luma luma;

    private ClearSearch(Look look) {
        super(look, MOST, FOLLOWED);
        luma = look.luma();
    }

    /** All that are read at once; what was seen lies in the pixels of this picture. */
    static List<Sighting> in(Look look) {
        return new ClearSearch(look).all();
    }

    @Override
    Stream<Start> starts(List<Pose> likely, Fit fit) {
        Fit.Fitted flat = fit.best(likely);
        Fit.Fitted best =
                fit.best(Stream.concat(Stream.of(flat.pose()), byLastAlignment(flat.pose(), fit.known(), REACH, 1))
                        .toList());
        return Stream.of(new Start(fit, best));
    }

    @Override
    Optional<Sighting> read(Start start) {
        Samples samples = Samples.of(luma, start.pose(), start.known());
        return text(start, samples.darkness())
                .or(() -> text(start, samples.darknessUnevenlyLit()))
                .map(text -> Sighting.of(text, start.pose()));
    }

    private static Optional<String> text(Start start, double[] darkness) {
        if (start.known().side() != CardSymbol.MODULES.side()) {
            return AnySymbol.read(darkness, start.known());
        }
        return start.fitted().isSurelySymbol()
                ? CardSymbol.read(darkness).map(code -> code.text()).or(() -> AnySymbol.read(darkness, start.known()))
                : Optional.empty();
    }
}
