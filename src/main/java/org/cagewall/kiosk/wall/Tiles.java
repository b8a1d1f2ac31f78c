package org.cagewall.kiosk.wall;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Coming;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Overdue;
import org.cagewall.kiosk.kit.wall.TileFace;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Keeps;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Outing;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.tasks.Gravest;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.LeftUndone;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts each cage into three short lines. Pure; any thread. */
final class Tiles {

    /** A cage not seen since the day before yesterday is late. */
    private static final int LATE_DAYS = 2;

    /** Beside a longer sign the time finds no place on a tile. */
    private static final int SHORT_SIGN = 12;

    /** In a longer tag the days find no place in the largest letters. */
    private static final int SHORT_TAG = 16;

    private static final Message NEW_CARD = Message.of("wall.card-changed");

    private final Room room;
    private final LocalDate today;
    private final Words words;
    private final Almanac almanac;
    private final Map<String, Kind> undone;

    Tiles(Room room, LocalDate today, Words words) {
        this.almanac = Almanac.of(room);
        this.undone = LeftUndone.at(room, today);
        this.room = room;
        this.today = today;
        this.words = words;
    }

    TileFace of(Cage cage) {
        Optional<Gravest> different = Gravest.of(room.unread().stream()
                .filter(visit -> visit.cage() == cage.id())
                .toList());
        if (different.isPresent()) {
            return different(cage, different.get());
        }
        if (cage.joinedTo().isPresent()) {
            return face(
                    cage,
                    Message.of("wall.joined", room.cageName(cage.joinedTo().get())),
                    Optional.empty(),
                    TileFace.State.EMPTY);
        }
        if (room.headsIn(cage) == 0 && almanac.nest(cage).chicksHere().isEmpty()) {
            return face(
                    cage,
                    Message.of("wall.empty"),
                    out(cage).or(() -> cage.cleaned().map(day -> Message.of("wall.clean-since", words.shortDay(day)))),
                    TileFace.State.EMPTY);
        }
        return occupied(cage);
    }

    private TileFace occupied(Cage cage) {
        Outlook nest = almanac.nest(cage);
        Message big = nest.pair().map(pair -> ofPair(cage, pair, nest)).orElseGet(() -> ofNestAlone(cage, nest));
        long unseen = cage.lastVisit()
                .flatMap(visit -> room.lookedInto(cage, today))
                .map(day -> ChronoUnit.DAYS.between(day, today))
                .orElse(0L);
        Optional<Kind> notDone = Optional.ofNullable(undone.get(cage.name()));
        if (notDone.isPresent()) {
            return face(cage, big, List.of(notDone(notDone.get()), Message.of("wall.late-only")), TileFace.State.LATE);
        }
        if (unseen >= LATE_DAYS && !isLeftAlone(cage)) {
            return face(
                    cage,
                    big,
                    List.of(Message.of("wall.not-seen", unseen), Message.of("wall.late-only")),
                    TileFace.State.LATE);
        }
        return overdue(cage, big, nest, Overdue.What.HATCH)
                .or(() -> toDo(nest).filter(this::isLate).map(coming -> toDo(cage, big, coming)))
                .or(() -> weaning(nest).map(coming -> toDo(cage, big, coming)))
                .or(() -> overdue(cage, big, nest, Overdue.What.EGG))
                .or(() -> toDo(nest).map(coming -> toDo(cage, big, coming)))
                .or(() -> overdue(cage, big, nest, Overdue.What.RING))
                .orElseGet(() -> calm(cage, big, nest));
    }

    private Optional<TileFace> overdue(Cage cage, Message big, Outlook nest, Overdue.What what) {
        return Overdue.at(nest, today, what).map(each -> face(cage, big, late(each), state(each)));
    }

    private TileFace toDo(Cage cage, Message big, Coming coming) {
        return face(cage, big, due(coming), isLate(coming) ? TileFace.State.LATE : TileFace.State.DUE);
    }

    private List<Message> late(Overdue overdue) {
        String what = "wall.overdue." + Message.word(overdue.what());
        long days = ChronoUnit.DAYS.between(overdue.since(), today) + 1;
        return longestFirst(
                Message.of(what, days, overdue.whom().size()),
                Message.of(what + "-alone", overdue.whom().size()),
                Message.of("wall.late-only"));
    }

    /** Nothing can be done about a missed ring. */
    private static TileFace.State state(Overdue overdue) {
        return overdue.what() == Overdue.What.RING ? TileFace.State.DUE : TileFace.State.LATE;
    }

    /** A new card is said where no date is awaited; beside a date, in the line above. */
    private TileFace calm(Cage cage, Message big, Outlook nest) {
        Optional<Message> date = awaited(nest);
        return date.isEmpty() && CardFaces.isOutOfDate(room, cage)
                ? face(cage, big, List.of(NEW_CARD, Message.of("wall.card-changed-only")), TileFace.State.DUE)
                : face(cage, big, date.or(() -> out(cage)).or(() -> lastSeen(cage)), TileFace.State.CALM);
    }

    /** Where the birds of a cage are that are out of the birdroom; of several, the one that went last. */
    private Optional<Message> out(Cage cage) {
        return room.birdsOf(cage).stream()
                .flatMap(bird -> bird.out().stream())
                .max(Comparator.comparing(Outing::since))
                .map(Outing::words);
    }

    /** Nobody has to look in there while the owner is away, so that nobody came is no news. */
    private boolean isLeftAlone(Cage cage) {
        return room.absenceOn(today)
                .filter(absence -> absence.leaveAlone().contains(cage.id()))
                .isPresent();
    }

    private static Message notDone(Kind kind) {
        return switch (kind) {
            case MORNING -> Message.of("wall.not-fed");
            case EVENING, EVENING_ROW -> Message.of("wall.not-walked");
            default -> Message.of("wall.not-done");
        };
    }

    // ------------------------------------------------------------------ what comes next

    /** What its keeper has to do now, by its last day; a look into the box, which comes round every second day, last. */
    private Optional<Coming> toDo(Outlook nest) {
        return Coming.at(nest, today).stream()
                .filter(coming -> coming.what().isKeepers() && coming.isDue(today))
                .min(Comparator.comparing((Coming coming) -> isLook(coming))
                        .thenComparing(coming -> coming.window().latest()));
    }

    /** Chicks that can go are in the way of the hen, so they are said before an egg that she has not laid. */
    private Optional<Coming> weaning(Outlook nest) {
        return Coming.at(nest, today).stream()
                .filter(coming -> coming.what() == Coming.What.WEAN && coming.isDue(today))
                .findFirst();
    }

    private static boolean isLook(Coming coming) {
        return coming.what() == Coming.What.NEST_LOOK;
    }

    private boolean isLate(Coming coming) {
        return coming.isLate(today) && !isLook(coming);
    }

    /** What it asks for: in full, and what may be said instead where there is less room. */
    private List<Message> due(Coming coming) {
        Message what = Message.of(
                "wall.next." + Message.word(coming.what()), coming.whom().size());
        LocalDate last = coming.window().latest();
        if (isLate(coming)) {
            return longestFirst(
                    Message.of("wall.late", what, ChronoUnit.DAYS.between(last, today)),
                    Message.of("wall.late-alone", what),
                    Message.of("wall.late-only"));
        }
        if (coming.what() == Coming.What.WEAN && last.isAfter(today)) {
            return List.of(Message.of("wall.by", Message.of("wall.next.wean-alone"), words.shortDay(last)), what);
        }
        return isLook(coming) || !last.isAfter(today)
                ? List.of(Message.of("wall.now", what), what)
                : longestFirst(
                        Message.of("wall.by", what, words.shortDay(last)), Message.of("wall.due-alone", what), what);
    }

    private List<Message> longestFirst(Message whole, Message shorter, Message least) {
        return words.say(whole).length() > SHORT_TAG ? List.of(shorter, least) : List.of(whole, shorter, least);
    }

    private Optional<Message> awaited(Outlook nest) {
        return Coming.at(nest, today).stream()
                .filter(coming -> coming.what() != Coming.What.CLEAR_EGGS && !isLook(coming))
                .filter(coming -> !(coming.window().isPast(today) && isGivenUp(coming)))
                .findFirst()
                .map(this::awaited);
    }

    /** What is not waited for once its days are over: she has laid all, or does not go on. */
    private static boolean isGivenUp(Coming coming) {
        return coming.what() == Coming.What.NEXT_EGG || coming.what() == Coming.What.NEXT_ROUND;
    }

    private Message awaited(Coming coming) {
        if (coming.window().isPast(today)) {
            return Message.of(
                    "wall.was-due." + Message.word(coming.what()),
                    words.shortDay(coming.window().latest()));
        }
        boolean begins = coming.what() == Coming.What.HATCH || coming.what().isKeepers();
        if (coming.what() == Coming.What.HEN_OUT) {
            return Message.of(
                    "wall.await.hen-out", words.shortDay(coming.window().expected()));
        }
        LocalDate day = coming.what() == Coming.What.FIRST_EGG
                ? coming.window().latest()
                : begins ? coming.window().earliest() : coming.window().expected();
        return Message.of("wall.await." + Message.word(coming.what()), words.shortDay(day));
    }

    // ------------------------------------------------------------------ what is in it

    private Message ofPair(Cage cage, Pair pair, Outlook nest) {
        int eggs = nest.eggsHere().size();
        int chicks = nest.chicksHere().size();
        if (chicks > 0) {
            return eggs > 0 ? Message.of("wall.chicks-and-eggs", chicks, eggs) : Message.of("wall.chicks", chicks);
        }
        if (room.henOut(pair).isPresent()) {
            return Message.of("wall.cock-alone");
        }
        if (room.cockOut(pair).isPresent()) {
            return eggs > 0 ? Message.of("wall.hen-and-eggs", eggs) : Message.of("wall.hen-alone");
        }
        if (eggs > 0) {
            return eggs(nest);
        }
        if (cage.box().isTurned()) {
            return Message.of("wall.box-turned");
        }
        if (cage.box().isOn()) {
            long day = cage.box()
                    .on()
                    .map(on -> ChronoUnit.DAYS.between(on, today) + 1)
                    .orElse(1L);
            return Message.of("wall.box-day", day);
        }
        return Message.of("wall.no-box");
    }

    private static Message eggs(Outlook nest) {
        int eggs = nest.eggsHere().size();
        long full = nest.eggsHere().stream()
                .filter(egg -> egg.lying().egg().mayHatch() && egg.lying().egg().wasFull())
                .count();
        boolean allClear =
                nest.eggsHere().stream().allMatch(egg -> egg.lying().egg().state() == EggState.CLEAR);
        if (allClear) {
            return Message.of("wall.all-clear", eggs);
        }
        return full > 0 ? Message.of("wall.eggs-full", eggs, full) : Message.of("wall.eggs", eggs);
    }

    private Message ofNestAlone(Cage cage, Outlook nest) {
        int chicks = nest.chicksHere().size();
        return chicks > 0 ? Message.of("wall.chicks", chicks) : ofOthers(cage);
    }

    private Message ofOthers(Cage cage) {
        int heads = room.headsIn(cage);
        if (cage.use() == Use.QUARANTINE) {
            return room.birdsIn(cage).stream()
                    .map(this::came)
                    .flatMap(Optional::stream)
                    .max(LocalDate::compareTo)
                    .map(day -> Message.of("wall.new-day", ChronoUnit.DAYS.between(day, today) + 1))
                    .orElse(Message.of("wall.new", heads));
        }
        return Message.of("wall.heads." + kind(cage), heads);
    }

    /** The day a bird was last moved; its first cage has none. */
    private Optional<LocalDate> came(Bird bird) {
        return bird.stays().stream()
                .map(Stay::since)
                .filter(day -> !day.equals(LocalDate.MIN))
                .max(LocalDate::compareTo);
    }

    private String kind(Cage cage) {
        List<Bird> birds = room.birdsIn(cage);
        if (cage.keeps().filter(Keeps.YOUNG::equals).isPresent() || cage.use() == Use.NURSERY) {
            return "young";
        }
        if (cage.flock() == 0 && birds.stream().allMatch(bird -> bird.sex() == Sex.COCK)) {
            return "cocks";
        }
        if (cage.flock() == 0 && birds.stream().allMatch(bird -> bird.sex() == Sex.HEN)) {
            return "hens";
        }
        if (cage.keeps().filter(Keeps.COCKS::equals).isPresent()) {
            return "cocks";
        }
        if (cage.keeps().filter(Keeps.HENS::equals).isPresent()) {
            return "hens";
        }
        return "birds";
    }

    private Optional<Message> lastSeen(Cage cage) {
        return room.lookedInto(cage, today)
                .filter(day -> !day.isBefore(today.minusDays(1)))
                .map(day -> day.equals(today)
                        ? cage.lastVisit()
                                .filter(visit -> visit.day().equals(today))
                                .flatMap(Visit::time)
                                .map(time -> Message.of("wall.seen-at", time))
                                .orElse(Message.of("wall.seen-today"))
                        : Message.of("wall.seen-yesterday"));
    }

    /** What was reported today stands with its time; of any other day the day is said, however long the sign. */
    private TileFace different(Cage cage, Gravest report) {
        Visit visit = report.visit();
        if (visit.day().equals(today)) {
            Message when = visit.time().map(time -> Message.of("wall.at", time)).orElse(Message.of("wall.today"));
            Message foot = report.sign()
                    .map(words::say)
                    .map(sign -> sign.length() > SHORT_SIGN
                            ? Message.of("wall.sign-alone", sign)
                            : Message.of("wall.sign", sign, when))
                    .orElse(when);
            return face(cage, Message.of("wall.different"), Optional.of(foot), TileFace.State.DIFFERENT);
        }
        return face(
                cage,
                Message.of("wall.different-on", words.shortDay(visit.day())),
                report.sign().map(sign -> Message.of("wall.sign-alone", sign)),
                TileFace.State.DIFFERENT);
    }

    private TileFace face(Cage cage, Message big, Optional<Message> foot, TileFace.State state) {
        return face(cage, big, foot.stream().toList(), state);
    }

    private TileFace face(Cage cage, Message big, List<Message> feet, TileFace.State state) {
        List<String> small = new ArrayList<>();
        room.pairIn(cage).ifPresent(pair -> {
            small.add(words.say("wall.pair", pair.label()));
            pair.openRound()
                    .map(Round::number)
                    .filter(number -> number > 1)
                    .ifPresent(number -> small.add(words.say("wall.round", number)));
            if (!feet.contains(NEW_CARD) && CardFaces.isOutOfDate(room, cage)) {
                small.add(words.say("wall.new-card"));
            }
        });
        return new TileFace(
                cage.name(),
                String.join(" \u00b7 ", small),
                words.say(big),
                feet.stream().findFirst().map(words::say).orElse(""),
                feet.stream().skip(1).map(words::say).toList(),
                state);
    }
}
