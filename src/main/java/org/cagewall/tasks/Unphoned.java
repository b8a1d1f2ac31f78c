package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Call;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;

/** Reports and alarms of a day that cannot wait and about which nobody has been spoken to. Pure; any thread. */
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

    /** What an alarm was about that was raised at no cage, or a bird that was seen loose. */
    public record Raised(LogEntry entry, CallMatter matter) {

        /** None where the entry tells of something else, or of one cage. */
        public static Optional<Raised> of(LogEntry entry) {
            if (entry.isStruck() || !entry.cages().isEmpty()) {
                return Optional.empty();
            }
            return switch (entry.deed()) {
                case "bird-loose" -> Optional.of(new Raised(entry, CallMatter.LOOSE));
                case "alarm-raised" ->
                    entry.what().args().stream()
                            .filter(CallMatter.class::isInstance)
                            .map(CallMatter.class::cast)
                            .map(matter -> new Raised(entry, matter))
                            .findFirst();
                default -> Optional.empty();
            };
        }

        private boolean isToldIn(Call call) {
            return call.reachedSomebody()
                    && call.entry() > entry.number()
                    && call.matter().equals(matter.word());
        }
    }

    /** The alarms without a cage among the entries of a day, in the order in which they were raised. */
    public static List<Raised> alarms(Room room, List<LogEntry> entries, LocalDate date) {
        return entries.stream()
                .filter(entry -> entry.day().equals(date))
                .flatMap(entry -> Raised.of(entry).stream())
                .filter(raised -> room.callsOn(date).stream().noneMatch(raised::isToldIn))
                .sorted(Comparator.comparing(raised -> raised.entry().number()))
                .toList();
    }

    private static boolean isAbout(Call call, Visit visit) {
        return call.reachedSomebody()
                && call.entry() > visit.entry()
                && (call.cage().filter(cage -> cage == visit.cage()).isPresent()
                        || isAboutFoodAlone(visit) && Unfed.isAboutAllFood(call));
    }

    private static boolean isAboutFoodAlone(Visit visit) {
        return dangers(visit).allMatch(danger -> danger.matter() == CallMatter.FOOD);
    }

    private static boolean cannotWait(Visit visit) {
        return dangers(visit).anyMatch(danger -> danger.urgency() == Urgency.PHONE_NOW);
    }

    private static Stream<Danger> dangers(Visit visit) {
        return visit.signs().stream()
                .flatMap(id -> Sign.of(id).stream())
                .filter(sign -> sign != Sign.ON_FLOOR || !saysWell(visit))
                .flatMap(sign -> Danger.of(sign).stream());
    }

    /** A young bird on the floor that eats, stands and is not hurt is where it should be. */
    private static boolean saysWell(Visit visit) {
        return Stream.of(Sign.EATING, Sign.UPRIGHT, Sign.NOT_HURT).map(Sign::id).allMatch(visit.signs()::contains);
    }
}
