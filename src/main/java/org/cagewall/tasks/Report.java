package org.cagewall.tasks;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.room.Sign;

/**
 * What somebody saw that was different, and how they answered the three questions. Immutable; any thread.
 *
 * @param replies answers to those questions that could be answered
 */
public record Report(List<Sign> signs, Map<Vital, Reply> replies) {

    /** Where there is no bird to look at, nothing is asked about it. */
    private static final Set<Sign> NO_BIRD_TO_ASK_ABOUT = Set.of(Sign.DEAD, Sign.MISSING, Sign.LOOSE);

    public Report {
        signs = signs.stream().sorted().distinct().toList();
        replies = Map.copyOf(replies);
    }

    /** What there is to touch, the most pressing first. */
    public static Set<Sign> choices() {
        return EnumSet.range(Sign.ON_FLOOR, Sign.OTHER);
    }

    /** Whether the questions are to be asked after these signs. */
    public static boolean asksAfter(Collection<Sign> signs) {
        return signs.isEmpty() || !NO_BIRD_TO_ASK_ABOUT.containsAll(signs);
    }

    /** The answers that these signs have given already. */
    public static Map<Vital, Reply> known(Collection<Sign> signs) {
        Map<Vital, Reply> known = new EnumMap<>(Vital.class);
        for (Vital vital : Vital.values()) {
            vital.known(signs).ifPresent(reply -> known.put(vital, reply));
        }
        return known;
    }

    /** The signs, then the answers that they do not hold already, as a check keeps them. */
    public List<Sign> told() {
        Map<Vital, Reply> known = known(signs);
        Stream<Sign> answers = Arrays.stream(Vital.values())
                .filter(vital -> replies.containsKey(vital) && replies.get(vital) != known.get(vital))
                .map(vital -> vital.told(replies.get(vital)));
        return Stream.concat(signs.stream(), answers).toList();
    }

    /** The most pressing of the signs and the answers. */
    public Urgency urgency() {
        return told().stream().map(Urgency::of).sorted().findFirst().orElse(Urgency.PHONE_IF_UNSURE);
    }
}
