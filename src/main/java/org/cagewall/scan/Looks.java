package org.cagewall.scan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** The looks that are taken at one picture, each when it is first asked for. One thread. */
final class Looks {

    private final Luma picture;
    private final Map<Contrast, Look> taken = new EnumMap<>(Contrast.class);

    Looks(Luma picture) {
        this.picture = picture;
    }

    Luma picture() {
        return picture;
    }

    /** What is seen by this search, in the pixels of the picture. */
    List<Sighting> seen(Contrast contrast, Function<Look, List<Sighting>> search) {
        Look look = taken.computeIfAbsent(contrast, it -> it.look(picture));
        double scale = (double) picture.width() / look.luma().width();
        return search.apply(look).stream()
                .map(sighting -> sighting.scaled(scale))
                .toList();
    }
}
