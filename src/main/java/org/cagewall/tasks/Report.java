package org.cagewall.tasks;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Use;
import org.cagewall.room.care.Sign;

/**
 * What somebody saw that was different, and how they answered the questions about the bird. Immutable; any thread.
 *
 * @param replies answers to those questions that could be answered
 */
public record Report(List<Sign> signs, Map<Vital, Reply> replies) {

    /** Where there is no bird to look at, nothing is asked about it; an egg is an egg. */
    private static final Set<Sign> NO_BIRD_TO_ASK_ABOUT =
            Set.of(Sign.DEAD, Sign.MISSING, Sign.LOOSE, Sign.EGG_ON_FLOOR);

    public Report {
        signs = signs.stream().sorted().distinct().toList();
        replies = Map.copyOf(replies);
    }

    /** What there is to touch, the most pressing first. */
    public static Set<Sign> choices() {
        return EnumSet.range(Sign.ON_FLOOR, Sign.OTHER);
    }

    /** What is asked after these signs: nothing where there is no bird to look at, and nothing that a sign has said. */
    public static List<Vital> questions(Collection<Sign> signs) {
        boolean noBird = !signs.isEmpty() && NO_BIRD_TO_ASK_ABOUT.containsAll(signs);
        return noBird
                ? List.of()
                : Stream.of(Vital.values())
                        .filter(vital -> !vital.isAnswered(signs))
                        .toList();
    }

    /** Signs with which nobody stops to answer a question first: it is phoned about at once. */
    public static boolean cannotWait(Collection<Sign> signs) {
        return signs.stream()
                .flatMap(sign -> Danger.of(sign).stream())
                .anyMatch(danger -> danger == Danger.BREATH || danger == Danger.BLEEDING || danger == Danger.STRAINING);
    }

    /** The signs, then the answers, as a check keeps them. */
    public List<Sign> told() {
        Stream<Sign> answers =
                Arrays.stream(Vital.values()).filter(replies::containsKey).map(vital -> vital.told(replies.get(vital)));
        return Stream.concat(signs.stream(), answers).distinct().toList();
    }

    /** Of what dangers the signs and the answers speak there, the most pressing first. */
    public List<Danger> dangers(Cage cage) {
        return told().stream()
                .filter(sign -> sign != Sign.ON_FLOOR || !isYoungAndBright(cage))
                .flatMap(sign -> Danger.of(sign).stream())
                .distinct()
                .sorted()
                .toList();
    }

    /** A chick that is being weaned spends its day on the floor: eating, upright and unhurt it is where it should be. */
    private boolean isYoungAndBright(Cage cage) {
        return cage.use() == Use.NURSERY
                && Arrays.stream(Vital.values()).allMatch(vital -> Optional.ofNullable(replies.get(vital))
                        .filter(vital.good()::equals)
                        .isPresent());
    }

    /** How soon somebody has to know of it. */
    public Urgency urgency(Cage cage) {
        return dangers(cage).stream().map(Danger::urgency).sorted().findFirst().orElse(Urgency.PHONE_IF_UNSURE);
    }
}
