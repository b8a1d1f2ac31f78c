package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds and reads the codes that are no cards, of whatever version, in a picture of which dark and light have been told
 * apart: by their three corner squares. One thread.
 */
final class OtherSearch {

    /** So many of the threes of corner squares are tried; measured. */
    private static final int MOST = 3;

    /** So many of the versions that it may be, and of the ways in which it may lie, are followed up; measured. */
    private static final int FOLLOWED = 4;

    /** How many places the last alignment pattern may be in; measured. */
    private static final int PLACES = 3;

    /** How far from where it should be that may be, of the symbol's side, and in modules at most; measured. */
    private static final double FAR = 0.2;

    private static final double FARTHEST = 8;

    /** So large a symbol has alignment patterns throughout. */
    private static final int LEAST_FOR_MESH = 7;

    private final Look look;
    private final Luma luma;
    private final Corners corners;

    private OtherSearch(Look look) {
        this.look = look;
        this.luma = look.luma();
        this.corners = new Corners(luma);
    }

    /** All codes that can be read; what was seen lies in the pixels of this picture. */
    static List<Sighting> in(Look look) {
        OtherSearch search = new OtherSearch(look);
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
                .boxed()
                .flatMap(version -> starts(triple, version))
                .filter(start -> start.fitted.isSymbol())
                .sorted(Comparator.comparingDouble(start -> -start.fitted.worth()))
                .limit(FOLLOWED)
                .map(this::read)
                .flatMap(Optional::stream)
                .findFirst();
    }

    private Stream<Start> starts(Triple triple, int version) {
        Fit fit = look.fit(version);
        return triple.poses(fit.known().side()).stream()
                .filter(corners::areLikely)
                .flatMap(pose -> Stream.of(pose, new Timing(luma, fit.known()).bent(pose))
                        .distinct())
                .flatMap(pose -> lastCorners(fit, pose))
                .map(pose -> new Start(fit, fit.of(pose)));
    }

    /** The pose, and those whose fourth corner is where the last alignment pattern may be. */
    private Stream<Pose> lastCorners(Fit fit, Pose pose) {
        int[] centres = fit.known().alignments();
        if (centres.length == 0) {
            return Stream.of(pose);
        }
        double centre = centres[centres.length - 1] + 0.5;
        double reach = Math.min(FARTHEST, FAR * fit.known().side());
        return Stream.concat(
                Stream.of(pose),
                new AlignmentSearch(luma, pose)
                        .around(centre, centre, reach, PLACES).stream()
                                .map(found -> {
                                    double[] spot = new double[2];
                                    pose.see(found.column(), found.row(), spot);
                                    return pose.lastCornerBy(centre, centre, spot[0], spot[1]);
                                })
                                .filter(Pose::isConvex));
    }

    private Optional<Sighting> read(Start start) {
        KnownModules known = start.fit.known();
        Pose pose = start.fit.near(start.fitted.pose()).pose();
        return text(pose, known)
                .or(() -> known.version().getVersionNumber() < LEAST_FOR_MESH
                        ? Optional.empty()
                        : text(Mesh.of(luma, pose, known), known))
                .map(text -> Sighting.of(text, pose));
    }

    private Optional<String> text(View view, KnownModules known) {
        Samples samples = Samples.of(luma, view, known);
        return AnySymbol.read(samples.darkness(), known).or(() -> AnySymbol.read(Equaliser.darkness(samples), known));
    }
}
