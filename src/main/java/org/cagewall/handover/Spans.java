package org.cagewall.handover;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/** Names many cages in few words: those that follow one another on the walk as "B1 to C4". Pure; any thread. */
public final class Spans {

    /** From this many on, the first and the last stand for all. */
    private static final int LEAST = 3;

    private Spans() {}

    /** The cages in the order of the walk; any that stands on no walk comes last. */
    public static List<Object> of(Room room, List<String> cages) {
        List<String> walk = room.walk().map(Cage::name).toList();
        List<String> sorted = cages.stream()
                .distinct()
                .sorted(Comparator.comparing(cage -> walk.contains(cage) ? walk.indexOf(cage) : walk.size()))
                .toList();
        List<Object> spans = new ArrayList<>();
        int from = 0;
        while (from < sorted.size()) {
            int to = from;
            while (to + 1 < sorted.size() && follows(walk, sorted.get(to), sorted.get(to + 1))) {
                to++;
            }
            if (to - from + 1 >= LEAST) {
                spans.add(Message.of("daynote.span", sorted.get(from), sorted.get(to)));
            } else {
                spans.addAll(sorted.subList(from, to + 1));
            }
            from = to + 1;
        }
        return List.copyOf(spans);
    }

    private static boolean follows(List<String> walk, String one, String other) {
        return walk.contains(one) && walk.indexOf(other) == walk.indexOf(one) + 1;
    }
}
