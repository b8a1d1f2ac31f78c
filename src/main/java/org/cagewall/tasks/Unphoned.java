package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cagewall.room.Call;
import org.cagewall.room.Room;
import org.cagewall.room.Sign;
import org.cagewall.room.Visit;

/** Reports of a day that cannot wait and about which nobody has been spoken to. Pure; any thread. */
public final class Unphoned {

    private Unphoned() {}

    /** The newest report of each such cage that day, in the order in which they were made. */
    public static List<Visit> at(Room room, LocalDate date) {
        Map<Long, Visit> reports = new LinkedHashMap<>();
        room.visits().stream()
                .filter(visit -> visit.isDifferent() && visit.day().equals(date) && cannotWait(visit))
                .sorted(Comparator.comparing(Visit::entry))
                .forEach(visit -> reports.put(visit.cage(), visit));
        return reports.values().stream()
                .filter(visit -> room.callsOn(date).stream().noneMatch(call -> isAbout(call, visit)))
                .toList();
    }

    private static boolean isAbout(Call call, Visit visit) {
        return call.reachedSomebody()
                && call.entry() > visit.entry()
                && call.cage().filter(cage -> cage == visit.cage()).isPresent();
    }

    private static boolean cannotWait(Visit visit) {
        return visit.signs().stream()
                .flatMap(id -> Sign.of(id).stream())
                .filter(sign -> sign != Sign.ON_FLOOR || !saysWell(visit))
                .flatMap(sign -> Danger.of(sign).stream())
                .anyMatch(danger -> danger.urgency() == Urgency.PHONE_NOW);
    }

    /** A young bird on the floor that eats, stands and is not hurt is where it should be. */
    private static boolean saysWell(Visit visit) {
        return Stream.of(Sign.EATING, Sign.UPRIGHT, Sign.NOT_HURT).map(Sign::id).allMatch(visit.signs()::contains);
    }
}
