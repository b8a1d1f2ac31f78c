package org.cagewall.scan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds and reads the codes that are no cards, of whatever version, also on bent paper. One thread. */
final class OtherSearch extends CodeSearch {

    /** Measured, as all that follows. */
    private static final int MOST = 3;

    private static final int FOLLOWED = 4;

    /** How many places the last alignment pattern may be in. */
    private static final int PLACES = 3;

    /** How far from where it should be that may be, of the symbol's side, and in modules at most. */
    private static final double FAR = 0.2;

    private static final double FARTHEST = 8;

    /** So large a symbol has alignment patterns throughout. */
    private static final int LEAST_FOR_MESH = 7;

    private final Luma luma;

    private OtherSearch(Look look) {
        super(look, MOST, FOLLOWED);
        luma = look.luma();
    }

    /** All that can be read; what was seen lies in the pixels of this picture. */
    static List<Sighting> in(Look look) {
        return new OtherSearch(look).all();
    }

    @Override
    Stream<Start> starts(List<Pose> likely, Fit fit) {
        KnownModules known = fit.known();
        double reach = Math.min(FARTHEST, FAR * known.side());
        return likely.stream()
                .flatMap(pose -> Stream.of(pose, new TimingPattern(luma, known).bent(pose))
                        .distinct())
                .flatMap(pose -> Stream.concat(Stream.of(pose), byLastAlignment(pose, known, reach, PLACES)))
                .map(pose -> new Start(fit, fit.of(pose)));
    }

    @Override
    Optional<Sighting> read(Start start) {
        KnownModules known = start.known();
        Pose pose = start.fit().fine(start.fit().near(start.pose()).pose());
        return text(pose, known)
                .or(() -> known.version().getVersionNumber() < LEAST_FOR_MESH
                        ? Optional.empty()
                        : text(Mesh.of(luma, pose, known), known))
                .map(text -> Sighting.of(text, pose));
    }

    private Optional<String> text(View view, KnownModules known) {
        Samples samples = Samples.of(luma, view, known);
        return text(samples, samples.darkness()).or(() -> text(samples, samples.darknessUnevenlyLit()));
    }

    private static Optional<String> text(Samples samples, double[] darkness) {
        KnownModules known = samples.known();
        return AnySymbol.read(darkness, known).or(() -> AnySymbol.read(Equaliser.darkness(samples, darkness), known));
    }
}
