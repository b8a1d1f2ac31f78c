package org.cagewall.handover;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Place;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.Permission;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Food;
import org.cagewall.tasks.NestName;
import org.cagewall.tasks.Reckoned;
import org.cagewall.tasks.Sight;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;

/** Puts the pack together. Lives for one answer, on one thread. */
final class Packing {

    /** What may happen besides the dangers, and in how many steps it is met. */
    private static final Map<String, Integer> CASES = cases();

    private static final int NEVER = 9;
    private static final int SAY_BACK = 7;

    private final Room room;
    private final LocalDate today;
    private final Absence absence;
    private final LocalDate first;
    private final String owner;
    private final Almanac almanac;

    Packing(Room room, LocalDate today, Absence absence) {
        this.first = absence.firstFrom(today);
        this.room = Reckoned.of(room, first);
        this.today = today;
        this.absence = absence;
        this.owner = room.owner().map(Person::name).orElse("-");
        this.almanac = Almanac.of(room);
    }

    private static Map<String, Integer> cases() {
        Map<String, Integer> cases = new LinkedHashMap<>();
        cases.put("seed", 3);
        cases.put("tablet", 2);
        return Collections.unmodifiableMap(cases);
    }

    Pack pack() {
        List<Pack.Day> days = days();
        long all = Math.max(0, ChronoUnit.DAYS.between(first, absence.to()) + 1);
        return new Pack(
                room.settings().name(),
                today,
                absence,
                owner,
                Effort.of(room, Rehearsal.of(room, today, first)),
                door(),
                walls(),
                room.walk()
                        .filter(cage -> cage.place().isEmpty())
                        .map(cage -> spot(cage, 0, 0))
                        .toList(),
                routine(),
                days,
                all - days.size(),
                never(),
                room.settings().rules(),
                topics(),
                numbered("back-", SAY_BACK));
    }

    private List<Message> never() {
        Message medicine = say("never-of", Message.of("safety.medicine"), Message.of("safety.medicine-text"));
        return Stream.concat(numbered("never-", NEVER).stream(), Stream.of(medicine))
                .toList();
    }

    private List<Pack.Topic> topics() {
        Stream<Pack.Topic> dangers =
                Stream.of(Danger.values()).map(danger -> new Pack.Topic(danger.title(), danger.steps(room)));
        Pack.Topic signs = new Pack.Topic(Message.of("safety.signs"), List.of(Message.of("safety.signs-text")));
        Stream<Pack.Topic> others = CASES.entrySet().stream()
                .map(each -> new Pack.Topic(
                        say("if-" + each.getKey()), numbered("if-" + each.getKey() + "-", each.getValue())));
        return Stream.of(dangers, Stream.of(signs), others)
                .flatMap(each -> each)
                .toList();
    }

    /** Sentences that stand one after the other; each may name the owner. */
    private List<Message> numbered(String key, int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(n -> say(key + n, owner))
                .toList();
    }

    private static Message say(String key, Object... args) {
        return Message.of("pack." + key, args);
    }

    // ------------------------------------------------------------------ the page for the door

    private Pack.Door door() {
        Alarms alarms = Alarms.of(room, first);
        List<Message> watch = watch();
        return new Pack.Door(
                alarms.phones(),
                alarms.rules(),
                watch.isEmpty() ? List.of(say("watch-none")) : watch,
                List.of(
                        Danger.BREATH.rule(room),
                        Danger.STRAINING.rule(room),
                        Danger.ILL.rule(room),
                        Message.of("safety.hide-text")),
                List.of(
                        say("hours-food"),
                        Danger.HEAT.rule(room),
                        Danger.COLD.rule(room),
                        say("hours-cough"),
                        Message.of("safety.lungs-text")),
                Stream.concat(Stream.of(Danger.OWN_HEAT), numbered("fumes-", 3).stream())
                        .toList());
    }

    /** Why a cage is looked at first, the most pressing first. */
    private enum Care {
        DIFFERENT,
        ALONE,
        APART,
        CHICKS,
        CHICKS_LOOK_IN,
        EGGS,
        EGGS_LOOK_IN,
        YOUNG
    }

    private List<Message> watch() {
        Map<Care, List<String>> cages = new EnumMap<>(Care.class);
        room.walk().forEach(cage -> care(cage).ifPresent(care -> cages.computeIfAbsent(care, any -> new ArrayList<>())
                .add(cage.name())));
        return cages.entrySet().stream()
                .map(each -> say("watch-" + Message.word(each.getKey()), each.getValue()))
                .toList();
    }

    private Optional<Care> care(Cage cage) {
        if (room.unreadAt(cage).isPresent()) {
            return Optional.of(Care.DIFFERENT);
        }
        if (isAlone(cage)) {
            return Optional.of(Care.ALONE);
        }
        if (!room.isLivedIn(cage)) {
            return Optional.empty();
        }
        if (cage.use().isSickroom()) {
            return Optional.of(Care.APART);
        }
        Outlook nest = almanac.nest(cage);
        if (!nest.chicksHere().isEmpty()) {
            return Optional.of(mayLookIn(cage) ? Care.CHICKS_LOOK_IN : Care.CHICKS);
        }
        if (!nest.eggsHere().isEmpty()) {
            return Optional.of(mayLookIn(cage) ? Care.EGGS_LOOK_IN : Care.EGGS);
        }
        return cage.use() == Use.NURSERY ? Optional.of(Care.YOUNG) : Optional.empty();
    }

    private static boolean mayLookIn(Cage cage) {
        return cage.routine().allows(Permission.LOOK_IN);
    }

    private boolean isAlone(Cage cage) {
        return absence.leaveAlone().contains(cage.id());
    }

    // ------------------------------------------------------------------ the wall

    private List<Pack.WallMap> walls() {
        return room.walls().stream()
                .map(wall -> new Pack.WallMap(
                        wall.name(),
                        wall.rows(),
                        wall.columns(),
                        room.walk()
                                .filter(cage -> cage.place()
                                        .filter(place -> place.wall() == wall.id())
                                        .isPresent())
                                .map(this::spot)
                                .toList()))
                .filter(wall -> !wall.cages().isEmpty())
                .toList();
    }

    private Pack.Spot spot(Cage cage) {
        Place place = cage.place().orElseThrow();
        return spot(cage, place.row(), place.column());
    }

    private Pack.Spot spot(Cage cage, int row, int column) {
        Optional<Message> note = isAlone(cage) ? Optional.of(say("just-look")) : Optional.empty();
        return new Pack.Spot(cage.name(), row, column, Sight.of(room, cage, first), note);
    }

    // ------------------------------------------------------------------ what is given

    /** What is the same for several cages, in the order in which it is met on the walk. */
    private List<Pack.Given> routine() {
        Map<Pack.Given, List<String>> cages = new LinkedHashMap<>();
        room.walk().filter(cage -> room.isLivedIn(cage)).forEach(cage -> cages.computeIfAbsent(
                        given(cage), any -> new ArrayList<>())
                .add(cage.name()));
        return cages.entrySet().stream()
                .map(each -> new Pack.Given(
                        each.getValue(),
                        each.getKey().morning(),
                        each.getKey().evening(),
                        each.getKey().notes()))
                .toList();
    }

    private Pack.Given given(Cage cage) {
        if (isAlone(cage)) {
            return new Pack.Given(
                    List.of(),
                    List.of(),
                    List.of(),
                    absence.feeder()
                            .map(name -> List.of(say("note-alone"), say("note-alone-fed", name)))
                            .orElse(List.of(say("note-alone"))));
        }
        List<Message> notes = new ArrayList<>();
        if (cage.box().isOn()) {
            notes.add(NestName.at(room, cage).say(mayLookIn(cage) ? "pack.note-look-in" : "pack.note-box-shut"));
        }
        if (cage.routine().allows(Permission.SOFT_FOOD)) {
            notes.add(say("note-soft-food"));
        }
        if (cage.use().isSickroom()) {
            notes.add(say("note-last"));
        }
        return new Pack.Given(List.of(), morning(cage), evening(cage), notes);
    }

    private static List<Message> morning(Cage cage) {
        if (cage.routine().feed().isEmpty()) {
            return List.of(say("given-plain"));
        }
        Food food = new Food(cage.routine());
        List<Message> all = new ArrayList<>(food.takenOut(DayPart.MORNING, Food.Form.BRIEF));
        all.addAll(food.dish(Food.Form.BRIEF));
        all.addAll(food.given(DayPart.MORNING, Food.Form.BRIEF));
        return all;
    }

    private static List<Message> evening(Cage cage) {
        Food food = new Food(cage.routine());
        List<Message> all = new ArrayList<>(food.takenOut(DayPart.EVENING, Food.Form.BRIEF));
        all.addAll(food.given(DayPart.EVENING, Food.Form.BRIEF));
        return all;
    }

    // ------------------------------------------------------------------ the days

    private List<Pack.Day> days() {
        return first.isAfter(absence.to())
                ? List.of()
                : first.datesUntil(absence.to().plusDays(1))
                        .limit(Pack.MOST_DAYS)
                        .map(this::day)
                        .toList();
    }

    private Pack.Day day(LocalDate date) {
        List<Task> tasks = Rehearsal.of(room, today, date);
        return new Pack.Day(
                date,
                ChronoUnit.DAYS.between(absence.from(), date) + 1,
                of(tasks, DayPart.MORNING),
                of(tasks, DayPart.EVENING));
    }

    private static List<Task> of(List<Task> tasks, DayPart part) {
        return tasks.stream()
                .filter(task -> task.part().filter(part::equals).isPresent())
                .toList();
    }
}
