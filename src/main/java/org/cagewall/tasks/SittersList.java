package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.almanac.Almanac;
import org.cagewall.room.Cage;
import org.cagewall.room.Place;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Task.WallRow;
import org.cagewall.text.Message;

/**
 * The sitter's day: in the morning one line a cage, in the evening what goes bad and one line a row. It asks
 * for nothing that needs a nest box opened, a bird caught or a medicine, unless the owner allowed it for that cage.
 * Pure; any thread.
 */
final class SittersList {

    private final Room room;
    private final LocalDate date;
    private final Closed closed;
    private final List<Long> alone;
    private final List<Task> looks;

    SittersList(Room room, LocalDate date) {
        this.room = room;
        this.date = date;
        this.closed = new Closed(room, date);
        this.alone = room.absenceOn(date).map(absence -> absence.leaveAlone()).orElse(List.of());
        this.looks = looksIn();
    }

    List<Task> tasks() {
        List<Cage> walked = room.walk()
                .filter(cage -> room.isLivedIn(cage))
                .sorted(Comparator.comparingInt(this::turn))
                .toList();
        List<Task> tasks = new ArrayList<>();
        walked.stream().filter(cage -> !isApart(cage)).map(this::morning).forEach(tasks::add);
        tasks.addAll(looks);
        walked.stream().filter(SittersList::isApart).map(this::morning).forEach(tasks::add);
        tasks.addAll(evening());
        return tasks;
    }

    /**
     * The walls first, then the flights, then the birds left in peace, and last those that are new or sick: no hand comes
     * from them to the healthy ones.
     */
    private int turn(Cage cage) {
        if (isApart(cage)) {
            return 3;
        }
        if (isAlone(cage)) {
            return 2;
        }
        return cage.use() == Use.FLIGHT ? 1 : 0;
    }

    private boolean isAlone(Cage cage) {
        return alone.contains(cage.id());
    }

    private Task morning(Cage cage) {
        String id = Task.id(date, cage.name(), Kind.MORNING);
        Optional<Visit> visit = closed.visit(cage, DayPart.MORNING);
        Closed.Verdict verdict =
                isFed(cage) ? closed.ofFeeding(id, cage, DayPart.MORNING) : closed.byOutcomeOr(id, visit);
        boolean reported = isFed(cage) && verdict.state() == Task.State.OPEN && isReported(cage);
        Errand errand = reported && isHurt(cage) ? atTheHurt() : errand(cage);
        List<Message> how = new ArrayList<>(errand.how());
        if (reported) {
            how.add(0, say("how-reported"));
        }
        return new Task(
                id,
                Optional.of(cage.name()),
                Kind.MORNING,
                date,
                0,
                errand.words(),
                Optional.of(Sight.of(room, cage, date)),
                errand.why(),
                how,
                errand.brief(),
                Optional.of(DayPart.MORNING),
                Optional.empty(),
                verdict.state(),
                verdict.closing());
    }

    private boolean isFed(Cage cage) {
        return !isAlone(cage);
    }

    private boolean isReported(Cage cage) {
        return room.visitsOf(cage, date).stream().anyMatch(Visit::isDifferent);
    }

    /** Whether a bird there was said to be ill or hurt that day: it is not to be frightened by a hand. */
    private boolean isHurt(Cage cage) {
        return room.visitsOf(cage, date).stream()
                .filter(Visit::isDifferent)
                .flatMap(visit -> visit.signs().stream())
                .flatMap(id -> Sign.of(id).stream())
                .flatMap(sign -> Danger.of(sign).stream())
                .anyMatch(Danger::isLeftInPeace);
    }

    private static Errand atTheHurt() {
        return new Errand(
                say("do-morning"),
                say("why-morning"),
                List.of(say("how-hurt"), say("how-hurt-else"), say("how-hurt-no-husks"), say("how-look")),
                List.of(say("brief-hurt")));
    }

    /**
     * Only into the boxes into which the owner lets the sitter look, and only when the chicks are due a look; one that was
     * recorded that day with them.
     */
    private List<Task> looksIn() {
        List<Cage> allowed = room.walk()
                .filter(cage -> cage.routine().allows(Permission.LOOK_IN) && !isAlone(cage))
                .toList();
        if (allowed.isEmpty()) {
            return List.of();
        }
        Map<String, Task> due = looksIn(room, allowed);
        Answered answered = new Answered(room, date);
        List<Cage> lookedInto = allowed.stream()
                .filter(cage -> answered.at(cage).contains(Kind.NEST_LOOK) && !due.containsKey(cage.name()))
                .toList();
        Map<String, Task> done = lookedInto.isEmpty() ? Map.of() : looksIn(room.before(date), lookedInto);
        return allowed.stream()
                .flatMap(cage -> Optional.ofNullable(due.get(cage.name()))
                        .or(() -> Optional.ofNullable(done.get(cage.name()))
                                .map(task -> task.recorded(Sight.of(room, cage, date))))
                        .stream())
                .toList();
    }

    /** The looks that are due in that state of the room, by the names of the cages. */
    private Map<String, Task> looksIn(Room state, List<Cage> cages) {
        Almanac almanac = Almanac.of(state);
        LookIn lookIn = new LookIn(state, date);
        Map<String, Task> looks = new LinkedHashMap<>();
        cages.stream().flatMap(cage -> state.cage(cage.id()).stream()).forEach(cage -> lookIn.due(
                        cage, almanac.nest(cage))
                .ifPresent(day -> looks.put(cage.name(), looksIn(cage, day))));
        return looks;
    }

    private Task looksIn(Cage cage, LocalDate due) {
        String id = Task.id(due, cage.name(), Kind.NEST_LOOK);
        Closed.Verdict verdict = closed.byOutcome(id);
        NestName nest = NestName.at(room, cage);
        return new Task(
                id,
                Optional.of(cage.name()),
                Kind.NEST_LOOK,
                due,
                verdict.state() == Task.State.OPEN ? Task.lateBy(due.plusDays(1), date) : 0,
                nest.say("tasks.do-look-in"),
                Optional.empty(),
                say("why-look-in"),
                List.of(say("how-look-in-count"), nest.say("tasks.how-look-in-shut"), say("how-look-in-phone")),
                List.of(nest.say("tasks.brief-look-in")),
                Optional.of(DayPart.MORNING),
                Optional.empty(),
                verdict.state(),
                verdict.closing());
    }

    private record Errand(Message words, Message why, List<Message> how, List<Message> brief) {}

    private Errand errand(Cage cage) {
        if (isAlone(cage)) {
            return new Errand(
                    Message.of(Task.IN_PEACE),
                    feeder().map(name -> Message.of("tasks.why-alone-fed", name))
                            .orElse(say("why-alone")),
                    inPeace(),
                    List.of(say("brief-alone"), say("brief-alone-touch")));
        }
        return new Errand(say("do-morning"), say("why-morning"), how(cage), brief(cage));
    }

    private List<Message> how(Cage cage) {
        Food food = new Food(cage.routine());
        List<Message> how = new ArrayList<>();
        how.addAll(food.takenOut(DayPart.MORNING, Food.Form.WHOLE));
        how.add(say("how-husks"));
        how.addAll(food.dish(Food.Form.WHOLE));
        how.add(say("how-water"));
        how.addAll(food.given(DayPart.MORNING, Food.Form.WHOLE));
        if (food.mayBeSoft()) {
            how.add(say("how-soft-food-allowed"));
        }
        if (!food.takenOut(DayPart.EVENING, Food.Form.WHOLE).isEmpty()) {
            how.add(Message.of("tasks.how-soft-out", room.settings().heatAct()));
        }
        if (cage.use() == Use.FLIGHT) {
            how.add(say("how-flight"));
        }
        how.add(say("how-look"));
        how.add(say("how-count"));
        box(cage).ifPresent(how::add);
        if (cage.use() == Use.NURSERY) {
            how.add(say("how-weaning"));
            how.add(say("how-weaning-phone"));
        }
        if (isApart(cage)) {
            how.add(say("how-hands"));
        }
        return how;
    }

    /** Whether chicks are due a look that the sitter may take and has not taken yet. */
    private boolean isLookedInto(Cage cage) {
        return looks.stream()
                .filter(Task::isOpen)
                .anyMatch(look -> look.cage().filter(cage.name()::equals).isPresent());
    }

    private Optional<Message> box(Cage cage) {
        if (cage.box().isOn()) {
            NestName nest = NestName.at(room, cage);
            return Optional.of(isLookedInto(cage) ? nest.say("tasks.how-look-in") : nest.say("tasks.how-box-shut"));
        }
        return cage.box().isTurned() ? Optional.of(say("how-box-faces-wall")) : Optional.empty();
    }

    private List<Message> brief(Cage cage) {
        Food food = new Food(cage.routine());
        List<Message> brief = new ArrayList<>(food.takenOut(DayPart.MORNING, Food.Form.BRIEF));
        brief.add(say("brief-husks"));
        brief.addAll(food.dish(Food.Form.BRIEF));
        brief.add(say("brief-water"));
        brief.addAll(food.given(DayPart.MORNING, Food.Form.BRIEF));
        if (cage.box().isOn() && !isLookedInto(cage)) {
            brief.add(NestName.at(room, cage).say("tasks.brief-box-shut"));
        }
        if (cage.use() == Use.NURSERY) {
            brief.add(say("brief-weaning"));
        }
        if (isApart(cage)) {
            brief.add(say("brief-hands"));
        }
        return brief;
    }

    private static boolean isApart(Cage cage) {
        return cage.use().isSickroom();
    }

    private List<Task> evening() {
        List<Task> tasks = new ArrayList<>();
        Map<Place, List<Cage>> rows = new LinkedHashMap<>();
        List<Cage> inNoRow = new ArrayList<>();
        room.walk().forEach(cage -> cage.place()
                .ifPresentOrElse(
                        place -> rows.computeIfAbsent(new Place(place.wall(), place.row(), 0), row -> new ArrayList<>())
                                .add(cage),
                        () -> inNoRow.add(cage)));
        rows.forEach((row, cages) -> {
            cages.forEach(cage -> eveningFood(cage).ifPresent(tasks::add));
            if (cages.stream().anyMatch(room::isLivedIn)) {
                tasks.add(eveningRow(row, cages));
            }
        });
        inNoRow.stream().filter(cage -> room.isLivedIn(cage)).forEach(cage -> {
            eveningFood(cage).ifPresent(tasks::add);
            tasks.add(eveningLook(cage));
        });
        tasks.sort(Comparator.comparing(this::isAtTheNewOrSick));
        return tasks;
    }

    /** Where hands go last. A row is only walked past, whoever lives in it. */
    private boolean isAtTheNewOrSick(Task task) {
        return task.row().isEmpty()
                && task.cage().flatMap(room::cage).filter(SittersList::isApart).isPresent();
    }

    private Optional<Task> eveningFood(Cage cage) {
        Food food = new Food(cage.routine());
        if (isAlone(cage) || !room.isLivedIn(cage)) {
            return Optional.empty();
        }
        List<Message> how = evening(food, Food.Form.WHOLE);
        if (how.isEmpty()) {
            return Optional.empty();
        }
        boolean takesOut = !food.takenOut(DayPart.EVENING, Food.Form.WHOLE).isEmpty();
        String id = Task.id(date, cage.name(), Kind.EVENING_FOOD);
        Closed.Verdict verdict = closed.byOutcome(id);
        return Optional.of(new Task(
                id,
                Optional.of(cage.name()),
                Kind.EVENING_FOOD,
                date,
                0,
                say(takesOut ? "do-food-out" : "do-evening-food"),
                Optional.empty(),
                say(takesOut ? "why-food-out" : "why-evening-food"),
                how,
                evening(food, Food.Form.BRIEF),
                Optional.of(DayPart.EVENING),
                Optional.empty(),
                verdict.state(),
                verdict.closing()));
    }

    private static List<Message> evening(Food food, Food.Form form) {
        List<Message> all = new ArrayList<>(food.takenOut(DayPart.EVENING, form));
        all.addAll(food.given(DayPart.EVENING, form));
        return all;
    }

    private Task eveningRow(Place place, List<Cage> cages) {
        List<String> names = cages.stream().map(Cage::name).toList();
        String first = names.get(0);
        String last = names.get(names.size() - 1);
        WallRow row =
                new WallRow(room.wall(place.wall()).map(wall -> wall.name()).orElse("-"), place.row(), names);
        Message span = names.size() == 1 ? Message.of("tasks.one-cage", first) : Message.of("tasks.span", first, last);
        long empty = cages.stream().filter(cage -> !room.isLivedIn(cage)).count();
        List<Cage> livedIn = cages.stream().filter(room::isLivedIn).toList();
        List<Message> how = new ArrayList<>(List.of(say("how-evening-row")));
        how.addAll(eveningHow(livedIn));
        if (empty > 0) {
            how.add(say("how-empty-phone"));
        }
        return evening(
                Kind.EVENING_ROW,
                first,
                empty == 0
                        ? Message.of("tasks.do-evening-row", span)
                        : Message.of("tasks.do-evening-row-empty", span, empty),
                Optional.of(row),
                how,
                eveningBrief(livedIn),
                closed.everyVisit(cages, DayPart.EVENING));
    }

    /** Birds that somebody else feeds are looked at from a step away, as in the morning. */
    private List<Message> eveningHow(List<Cage> cages) {
        if (cages.stream().allMatch(this::isAlone)) {
            return inPeace();
        }
        List<Message> how = new ArrayList<>(List.of(say("how-evening-look"), say("how-evening-touch")));
        List<String> inPeace =
                cages.stream().filter(this::isAlone).map(Cage::name).toList();
        if (!inPeace.isEmpty()) {
            how.add(Message.of("tasks.how-evening-alone", inPeace));
        }
        return how;
    }

    private List<Message> eveningBrief(List<Cage> cages) {
        return cages.stream().allMatch(this::isAlone)
                ? List.of(say("brief-alone"), say("brief-alone-touch"))
                : List.of(say("brief-evening"), say("brief-evening-touch"));
    }

    private List<Message> inPeace() {
        return List.of(
                say("how-alone-look"),
                say("how-alone-touch"),
                feeder().map(name -> Message.of("tasks.how-alone-dish-fed", name))
                        .orElse(say("how-alone-dish")));
    }

    private Optional<String> feeder() {
        return room.absenceOn(date).flatMap(absence -> absence.feeder());
    }

    private Task eveningLook(Cage cage) {
        return evening(
                Kind.EVENING,
                cage.name(),
                say("do-evening"),
                Optional.empty(),
                eveningHow(List.of(cage)),
                eveningBrief(List.of(cage)),
                closed.visit(cage, DayPart.EVENING));
    }

    private Task evening(
            Kind kind,
            String cage,
            Message words,
            Optional<WallRow> row,
            List<Message> how,
            List<Message> brief,
            Optional<Visit> visit) {
        String id = Task.id(date, cage, kind);
        Closed.Verdict verdict = closed.byOutcomeOr(id, visit);
        return new Task(
                id,
                Optional.of(cage),
                kind,
                date,
                0,
                words,
                Optional.empty(),
                say("why-evening"),
                how,
                brief,
                Optional.of(DayPart.EVENING),
                row,
                verdict.state(),
                verdict.closing());
    }

    private static Message say(String key) {
        return Message.of("tasks." + key);
    }
}
