package org.cagewall.handover;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Overdue;
import org.cagewall.almanac.Window;
import org.cagewall.handover.Ready.Line;
import org.cagewall.handover.Ready.State;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.AheadQuestion;
import org.cagewall.plan.Draws;
import org.cagewall.plan.NestAhead;
import org.cagewall.plan.Policy;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Person;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;

/** Works out what has to be ready for some days away. Lives for one answer, on one thread. */
final class Preparing {

    /** So long a chick should have fed itself before a neighbour looks after it, in days: common practice, no source. */
    private static final int WEANED_DAYS = 10;

    /** So long a bird should have been in its flight, in days: common practice, no source. */
    private static final int SETTLED_DAYS = 3;

    /** The windows do not depend on it, and the chances are not shown here. */
    private static final Draws FEW = new Draws(1, 1);

    private final Room room;
    private final LocalDate today;
    private final Absence absence;
    private final LocalDate leaving;
    private final List<Outlook> nests;

    Preparing(Room room, LocalDate today, Absence absence) {
        this.room = room;
        this.today = today;
        this.absence = absence;
        this.leaving = absence.firstFrom(today);
        Almanac almanac = Almanac.of(room);
        this.nests = room.walk().map(almanac::nest).toList();
    }

    Ready ready() {
        Shopping shopping = Shopping.of(room, absence);
        List<Line> lines = new ArrayList<>();
        lines.add(nests());
        lines.add(ringing());
        lines.add(told(Matter.WEANED, weaned()));
        lines.add(told(Matter.FLIGHT, unsettled()));
        lines.add(told(Matter.QUARANTINE, quarantine()));
        lines.add(treatments());
        lines.add(cards());
        lines.add(routines());
        lines.add(alone());
        lines.add(shopping(shopping));
        lines.add(phones());
        lines.add(second());
        lines.add(vet());
        lines.add(byHand(Matter.KEYS, text("keys", absence.sitter())));
        lines.add(byHand(
                Matter.HEAT_PLAN,
                meanwhile(
                        "heat-plan", room.settings().heatAct(), room.settings().heatPhone())));
        lines.add(byHand(Matter.NIGHT_LIGHT, text("night-light")));
        lines.add(round());
        return new Ready(absence, lines, shopping, Effort.of(room, Rehearsal.of(room, today, leaving)));
    }

    // ------------------------------------------------------------------ what the record shows

    private Line nests() {
        List<NestAhead> ahead = Ahead.of(room, today, new AheadQuestion(leaving, Policy.WEANED, 1, FEW))
                .nests();
        List<NestAhead> late = ahead.stream().filter(nest -> !nest.isInTime()).toList();
        if (ahead.isEmpty()) {
            return line(Matter.NESTS, State.NOT_NEEDED, text("nests-none"), Lead.Place.AHEAD);
        }
        if (late.isEmpty()) {
            return line(Matter.NESTS, State.DONE, text("nests-clear", leaving), Lead.Place.AHEAD);
        }
        NestAhead last = late.stream()
                .max(Comparator.comparing(nest -> nest.clear().expected()))
                .orElseThrow();
        return line(
                Matter.NESTS,
                State.OPEN,
                meanwhile(
                        "nests-open",
                        late.stream().map(nest -> nest.cage().name()).toList(),
                        last.cage().name(),
                        last.clear().expected(),
                        ChronoUnit.DAYS.between(leaving, last.clear().expected())),
                Lead.Place.AHEAD);
    }

    /** A chick, hatched or still in its egg, and about when it is ringed. */
    private record ToRing(String name, String cage, LocalDate day) {

        Message words() {
            return Message.of("ready.chick", name, cage, day);
        }
    }

    private Line ringing() {
        List<ToRing> all = nests.stream()
                .flatMap(this::toRing)
                .sorted(Comparator.comparing(ToRing::day))
                .toList();
        List<ToRing> before =
                all.stream().filter(each -> each.day().isBefore(leaving)).toList();
        List<ToRing> meanwhile = all.stream()
                .filter(each -> !each.day().isBefore(leaving) && !each.day().isAfter(absence.to()))
                .toList();
        Optional<String> who = absence.second().filter(this::canRing);
        if (before.isEmpty() && meanwhile.isEmpty()) {
            return line(Matter.RINGING, State.NOT_NEEDED, text("ringing-none"), Lead.Place.TODAY);
        }
        if (before.isEmpty()) {
            return who.map(name -> line(
                            Matter.RINGING,
                            State.DONE,
                            text("ringing-by", words(meanwhile), name),
                            new Lead.ToCage(meanwhile.get(0).cage())))
                    .orElseGet(() -> line(
                            Matter.RINGING, State.OPEN, text("ringing-nobody", words(meanwhile)), Lead.Place.PLAN));
        }
        Message text = meanwhile.isEmpty()
                ? text("ringing-before", words(before))
                : who.map(name -> text("ringing-both", words(before), words(meanwhile), name))
                        .orElseGet(() -> text("ringing-both-nobody", words(before), words(meanwhile)));
        return line(
                Matter.RINGING, State.OPEN, text, new Lead.ToCage(before.get(0).cage()));
    }

    private boolean canRing(String name) {
        return room.person(name)
                .map(Person::role)
                .filter(role -> role != Role.SITTER)
                .isPresent();
    }

    private Stream<ToRing> toRing(Outlook nest) {
        String cage = room.cageName(nest.cage());
        Stream<ToRing> chicks = nest.chicksHere().stream()
                .filter(chick -> chick.chick().ring().isEmpty())
                .filter(chick -> Overdue.missed(chick).filter(today::isBefore).isPresent())
                .flatMap(chick -> chick.ringing().filter(Due::isOpen).map(Due::window).stream()
                        .map(window -> new ToRing(
                                chick.lying().name(nest.cage()), cage, Window.later(window.expected(), today))));
        Optional<Span> ringing = nest.timetable().span(Timing.RINGING);
        Stream<ToRing> eggs = nest.eggsHere().stream()
                .flatMap(egg -> hatch(egg)
                        .flatMap(hatch -> ringing.map(span ->
                                new ToRing(egg.lying().name(nest.cage()), cage, hatch.plusDays(span.expected()))))
                        .stream())
                .filter(each -> !each.day().isBefore(leaving));
        return Stream.concat(chicks, eggs);
    }

    private static Optional<LocalDate> hatch(EggOutlook egg) {
        return egg.hatch().filter(Due::isOpen).map(Due::window).map(Window::expected);
    }

    private static List<Message> words(List<ToRing> all) {
        return all.stream().map(ToRing::words).toList();
    }

    private Line treatments() {
        List<Task> due = Stream.of(today, leaving, absence.to())
                .flatMap(day -> DailyList.of(room, day, Audience.OWNER).stream())
                .filter(task -> task.kind() == Kind.AFTER_SHOW || task.kind() == Kind.YEARLY)
                .toList();
        List<String> open = due.stream()
                .filter(Task::isOpen)
                .flatMap(task -> task.cage().stream())
                .distinct()
                .toList();
        if (due.isEmpty()) {
            return line(Matter.TREATMENTS, State.NOT_NEEDED, text("treatments-none"), Lead.Place.TODAY);
        }
        return open.isEmpty()
                ? line(Matter.TREATMENTS, State.DONE, text("treatments-done"), Lead.Place.TODAY)
                : line(Matter.TREATMENTS, State.OPEN, text("treatments-open", open), new Lead.ToCage(open.get(0)));
    }

    private Line cards() {
        List<String> old = names(room.walk().filter(cage -> CardFaces.isOutOfDate(room, cage)));
        if (!old.isEmpty()) {
            return line(Matter.CARDS, State.OPEN, text("cards-open", old), Lead.Place.CARDS);
        }
        boolean printed = room.walk().anyMatch(cage -> cage.card().isPresent());
        return printed
                ? line(Matter.CARDS, State.DONE, text("cards-done"), Lead.Place.CARDS)
                : line(Matter.CARDS, State.NOT_NEEDED, text("cards-none"), Lead.Place.CARDS);
    }

    private Line routines() {
        List<Cage> fed = room.walk().filter(cage -> room.isLivedIn(cage)).toList();
        List<String> nothing =
                names(fed.stream().filter(cage -> cage.routine().feed().isEmpty()));
        List<String> noAmount = names(fed.stream().filter(cage -> cage.routine().feed().stream()
                .anyMatch(line -> line.amount().isBlank())));
        if (fed.isEmpty()) {
            return line(Matter.ROUTINES, State.NOT_NEEDED, text("routines-none"), Lead.Place.SETUP);
        }
        if (!nothing.isEmpty()) {
            return line(Matter.ROUTINES, State.OPEN, text("routines-open", nothing), Lead.Place.SETUP);
        }
        return noAmount.isEmpty()
                ? line(Matter.ROUTINES, State.DONE, text("routines-done"), Lead.Place.SETUP)
                : line(Matter.ROUTINES, State.OPEN, text("routines-amounts", noAmount), Lead.Place.SETUP);
    }

    private Line alone() {
        List<String> cages =
                names(room.walk().filter(cage -> absence.leaveAlone().contains(cage.id()) && room.isLivedIn(cage)));
        if (cages.isEmpty()) {
            return line(Matter.ALONE, State.NOT_NEEDED, text("alone-none"), Lead.Place.PLAN);
        }
        return absence.feeder()
                .map(name -> line(Matter.ALONE, State.DONE, text("alone-done", name, cages), Lead.Place.PLAN))
                .orElseGet(() -> line(Matter.ALONE, State.OPEN, text("alone-open", cages), Lead.Place.PLAN));
    }

    private Line shopping(Shopping shopping) {
        if (shopping.isEmpty()) {
            return line(Matter.SHOPPING, State.NOT_NEEDED, text("shopping-none"), Lead.Place.SETUP);
        }
        return byHand(Matter.SHOPPING, text("shopping", shopping.days(), shopping.words()));
    }

    private Line phones() {
        List<String> people = Stream.of(
                        room.owner().map(Person::name),
                        Optional.of(absence.sitter()),
                        absence.second(),
                        absence.feeder().filter(name -> !absence.leaveAlone().isEmpty()))
                .flatMap(Optional::stream)
                .distinct()
                .toList();
        List<String> silent = people.stream()
                .filter(name -> room.person(name).flatMap(Person::phone).isEmpty())
                .toList();
        return silent.isEmpty()
                ? line(Matter.PHONES, State.DONE, text("phones-done", people), Lead.Place.SETUP)
                : line(Matter.PHONES, State.OPEN, text("phones-open", silent), Lead.Place.SETUP);
    }

    private Line second() {
        return absence.second()
                .map(name -> line(Matter.SECOND, State.DONE, text("second-done", name), Lead.Place.PLAN))
                .orElseGet(() -> line(Matter.SECOND, State.OPEN, text("second-open"), Lead.Place.PLAN));
    }

    private Line vet() {
        Optional<Alarms.Phone> vet = absence.vet().flatMap(text -> Alarms.of(room, leaving).phones().stream()
                .filter(phone -> phone.who() == Alarms.Who.VET)
                .findFirst());
        if (vet.isEmpty()) {
            return line(Matter.VET, State.OPEN, text("vet-open"), Lead.Place.PLAN);
        }
        return vet.get().number().isPresent()
                ? line(Matter.VET, State.DONE, text("vet-done", absence.vet().orElseThrow()), Lead.Place.PLAN)
                : line(Matter.VET, State.OPEN, text("vet-no-number"), Lead.Place.PLAN);
    }

    // ------------------------------------------------------------------ what the sitter is told

    /** Those that have fed themselves for too few days by then, or will only just do so. */
    private List<String> weaned() {
        Stream<String> weaned = room.pairs().stream()
                .flatMap(pair -> pair.allEggs())
                .flatMap(egg -> egg.chick().stream())
                .flatMap(chick -> chick.weaned().stream())
                .filter(weaning -> weaning.day().plusDays(WEANED_DAYS).isAfter(leaving))
                .flatMap(weaning -> room.bird(weaning.bird()).stream())
                .flatMap(bird -> bird.cage().map(room::cageName).stream());
        Stream<String> soon = nests.stream()
                .filter(nest -> nest.chicksHere().stream()
                        .flatMap(chick -> independent(chick).stream())
                        .anyMatch(day -> !day.isAfter(leaving)
                                && day.plusDays(WEANED_DAYS).isAfter(leaving)))
                .map(nest -> room.cageName(nest.cage()));
        return Stream.concat(weaned, soon).distinct().toList();
    }

    private static Optional<LocalDate> independent(ChickOutlook chick) {
        return chick.independent().filter(Due::isOpen).map(Due::window).map(Window::expected);
    }

    private List<String> unsettled() {
        return names(room.walk().filter(cage -> cage.use() == Use.FLIGHT).filter(cage -> room.birdsIn(cage).stream()
                .flatMap(bird ->
                        bird.stays().stream().skip(Math.max(1, bird.stays().size() - 1L)))
                .map(Stay::since)
                .anyMatch(since -> since.plusDays(SETTLED_DAYS).isAfter(leaving))));
    }

    private List<String> quarantine() {
        return names(room.walk().filter(cage -> cage.use() == Use.QUARANTINE && room.isLivedIn(cage)));
    }

    private Line told(Matter matter, List<String> cages) {
        return cages.isEmpty()
                ? line(matter, State.NOT_NEEDED, text(matter.word() + "-none"), Lead.Place.TODAY)
                : byHand(matter, meanwhile(matter.word() + "-open", cages, absence.sitter()));
    }

    // ------------------------------------------------------------------ what is ticked by hand

    /** Nobody walks it together with an owner who has left. */
    private Line round() {
        return isAway() && outcome(Matter.ROUND).isEmpty()
                ? line(Matter.ROUND, State.NOT_NEEDED, text("round-away", absence.sitter()), Lead.Place.TODAY)
                : byHand(Matter.ROUND, text("round", absence.sitter()));
    }

    private Line byHand(Matter matter, Message text) {
        Optional<Cage> first = room.walk().findFirst();
        if (first.isEmpty()) {
            return line(matter, State.OPEN, text, Lead.Place.SETUP);
        }
        Optional<TaskOutcome> told = outcome(matter);
        State state = told.map(outcome -> outcome.done() ? State.DONE : State.NOT_NEEDED)
                .orElse(State.OPEN);
        String id = told.map(TaskOutcome::task)
                .orElseGet(() -> absence.from() + "/" + first.get().name() + "/" + matter.kind());
        return line(matter, state, text, new Lead.ByHand(id));
    }

    /**
     * What was said of it for these days away: the id holds their first day and the first cage, either of which may have
     * changed since.
     */
    private Optional<TaskOutcome> outcome(Matter matter) {
        List<String> others = room.absences().stream()
                .filter(other -> other.id() != absence.id())
                .map(other -> other.from() + "/")
                .toList();
        return room.outcomes().stream()
                .filter(outcome -> outcome.task().endsWith("/" + matter.kind()) && outcome.entry() > absence.id())
                .filter(outcome -> others.stream().noneMatch(outcome.task()::startsWith))
                .max(Comparator.comparing(TaskOutcome::entry));
    }

    private static Line line(Matter matter, State state, Message text, Lead lead) {
        return new Line(matter, state, Message.of("ready.title." + matter.word()), text, lead);
    }

    private static Message text(String key, Object... args) {
        return Message.of("ready." + key, args);
    }

    /** What is said otherwise while the owner is away: nothing can be shown, and nobody is still to go. */
    private Message meanwhile(String key, Object... args) {
        return text(isAway() ? key + "-away" : key, args);
    }

    private boolean isAway() {
        return absence.runsOn(today);
    }

    private static List<String> names(Stream<Cage> cages) {
        return cages.map(Cage::name).toList();
    }
}
