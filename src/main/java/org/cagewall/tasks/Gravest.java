package org.cagewall.tasks;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.text.Message;

/**
 * What weighs most among several reports, so that a small thing said later hides no grave one. Immutable; any thread.
 *
 * @param visit the report that says it, the newest of those that say something equally grave
 * @param sign what was seen; empty where the reports hold words alone
 */
public record Gravest(Visit visit, Optional<Message> sign) {

    private record Told(Visit visit, Optional<String> sign) {

        /** By how soon to phone about it, then as the signs stand; another's words after those, and no sign last. */
        private int order() {
            int all = Sign.values().length;
            return sign.map(kept -> Sign.of(kept)
                            .map(known -> all * urgency(known) + known.ordinal())
                            .orElse(all * Urgency.values().length))
                    .orElse(Integer.MAX_VALUE);
        }

        private static int urgency(Sign sign) {
            return Danger.of(sign).map(Danger::urgency).map(Urgency::ordinal).orElse(Urgency.values().length);
        }

        private static Stream<Told> of(Visit visit) {
            return visit.signs().isEmpty()
                    ? Stream.of(new Told(visit, Optional.empty()))
                    : visit.signs().stream().map(sign -> new Told(visit, Optional.of(sign)));
        }
    }

    /** None where there is no report. */
    public static Optional<Gravest> of(Collection<Visit> reports) {
        return reports.stream()
                .flatMap(Told::of)
                .min(Comparator.comparingInt(Told::order)
                        .thenComparing(told -> told.visit().entry(), Comparator.reverseOrder()))
                .map(told -> new Gravest(told.visit(), told.sign().flatMap(sign -> Sign.told(List.of(sign)).stream()
                        .findFirst())));
    }
}
