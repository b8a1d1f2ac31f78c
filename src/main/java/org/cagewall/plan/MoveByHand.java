package org.cagewall.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Lying;
import org.cagewall.text.Message;

/**
 * What is to be said of an egg or chick that a keeper moves to a nest of their own choice: that it lies further from the
 * stage of that nest than any move that is proposed. Pure; any thread.
 */
public final class MoveByHand {

    private MoveByHand() {}

    /**
     * The sentence, with the days; nothing where it is at nearly the same stage, or there is nothing to tell the stage by.
     *
     * @param day on which it is moved
     * @param young an egg or chick that is in {@code from} now
     */
    public static Optional<Message> warning(Room room, LocalDate day, Lying young, Cage from, Cage to) {
        Almanac almanac = Almanac.of(room);
        return HostStage.of(almanac.nest(to)).flatMap(host -> gap(almanac.nest(from), day, young, host)
                .filter(gap -> Math.abs(gap) > Fosters.MOST_GAP)
                .map(gap -> Message.of(key(young, host, gap), young.name(from.id()), to.name(), Math.abs(gap))));
    }

    /**
     * The nests nearest to the stage of an egg or chick first; those of which nothing tells the stage after all that are
     * near, and before those that {@link #warning} speaks of.
     */
    public static Comparator<Cage> nearest(Room room, LocalDate day, Lying young, Cage from) {
        Almanac almanac = Almanac.of(room);
        return Comparator.comparingInt(to -> HostStage.of(almanac.nest(to))
                .flatMap(host -> gap(almanac.nest(from), day, young, host))
                .map(gap -> 2 * Math.abs(gap))
                .orElse(2 * Fosters.MOST_GAP + 1));
    }

    private static Optional<Integer> gap(Outlook from, LocalDate day, Lying young, HostStage host) {
        return young.chick().map(Chick::hatched).map(host::gap).or(() -> HostStage.live(from).stream()
                .filter(egg -> egg.lying().equals(young))
                .findFirst()
                .map(egg -> host.gap(egg, day)));
    }

    private static String key(Lying young, HostStage host, int gap) {
        String what = young.chick().isPresent() ? "chick" : "egg";
        return switch (host.on()) {
            case CLEAR_EGGS -> "plan.apart-" + what + "-clear";
            case YOUNG -> "plan.apart-" + what + (gap < 0 ? "-before" : "-after");
        };
    }
}
