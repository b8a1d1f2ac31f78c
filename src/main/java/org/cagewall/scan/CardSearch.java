package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds and reads the cards in a picture of which dark and light have been told apart: by three corner squares, or by two,
 * or by one, when the others are under dirt. One thread.
 */
final class CardSearch {

    /** So many of the best poses are followed up; measured. */
    private static final int FOLLOWED = 3;

    private static final int MOST_TRIPLES = 40;
    private static final int MOST_FOR_PAIRS = 6;
    private static final int MOST_ALONE = 4;

    private final Look look;
    private final Fit cards;
    private final List<Sighting> seen;

    private CardSearch(Look look) {
        this.look = look;
        this.cards = look.fit(CardSymbol.MODULES.version().getVersionNumber());
        this.seen = new ArrayList<>(ClearSearch.in(look));
    }

    /** All cards that can be read; what was seen lies in the pixels of this picture. */
    static List<Sighting> in(Look look) {
        CardSearch search = new CardSearch(look);
        if (search.leavesOver()) {
            search.search();
        }
        return List.copyOf(search.seen);
    }

    /** Whether corner squares were seen that belong to nothing that was read. */
    private boolean leavesOver() {
        return !look.finders().stream()
                .allMatch(finder -> seen.stream().anyMatch(sighting -> sighting.covers(finder.x(), finder.y())));
    }

    private void search() {
        follow(look.triples().stream()
                .limit(MOST_TRIPLES)
                .filter(Triple::mayBeCard)
                .map(triple -> cards.best(triple.poses(CardSymbol.MODULES.side())))
                .toList());
        if (seen.isEmpty()) {
            List<Outlined> outlined = look.finders().stream()
                    .limit(MOST_FOR_PAIRS)
                    .flatMap(finder -> Shape.of(finder, look.dark()).map(shape -> new Outlined(finder, shape)).stream())
                    .toList();
            follow(Outlined.pairs(outlined).stream().map(cards::of).toList());
            if (seen.isEmpty()) {
                follow(Outlined.alone(outlined.subList(0, Math.min(MOST_ALONE, outlined.size()))).stream()
                        .map(cards::of)
                        .toList());
            }
        }
    }

    private void follow(List<Fit.Fitted> starts) {
        List<Fit.Fitted> best = starts.stream()
                .filter(Fit.Fitted::isSymbol)
                .sorted(Comparator.comparingDouble(Fit.Fitted::worth).reversed())
                .toList();
        int missed = 0;
        for (Fit.Fitted start : best) {
            boolean beside = !seen.isEmpty() && !start.isSurelySymbol();
            if (missed == FOLLOWED || beside) {
                return;
            }
            if (!isSeen(start.pose())) {
                Optional<Sighting> found = readCard(start);
                found.ifPresent(seen::add);
                missed += found.isPresent() ? 0 : 1;
            }
        }
    }

    private boolean isSeen(Pose pose) {
        Sighting here = Sighting.of("", pose);
        return seen.stream().anyMatch(sighting -> sighting.covers(here.x(), here.y()));
    }

    private Optional<Sighting> readCard(Fit.Fitted start) {
        Optional<String> text = Optional.empty();
        Pose pose = start.pose();
        if (start.isSurelySymbol()) {
            text = card(Samples.of(look.luma(), pose, CardSymbol.MODULES).darkness());
        }
        if (text.isEmpty()) {
            Fit.Fitted fitted = cards.near(pose);
            pose = fitted.pose();
            Samples samples = Samples.of(look.luma(), pose, CardSymbol.MODULES);
            text = card(samples, samples.darkness()).or(() -> card(samples, samples.darknessUnevenlyLit()));
            if (text.isEmpty() && fitted.isSurelySymbol()) {
                text = AnySymbol.read(samples.darkness(), CardSymbol.MODULES);
            }
        }
        Pose there = pose;
        return text.map(it -> Sighting.of(it, there));
    }

    private static Optional<String> card(Samples samples, double[] darkness) {
        return card(darkness).or(() -> card(Equaliser.darkness(samples, darkness)));
    }

    private static Optional<String> card(double[] darkness) {
        return CardSymbol.read(darkness).map(code -> code.text());
    }
}
