package org.cagewall.almanac;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;
import org.cagewall.room.Timing;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.Routine;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.BoxTrip;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickLoss;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.Hung;
import org.cagewall.room.nest.NestLook;
import org.cagewall.room.nest.NestMove;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.PartingBegun;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.SkippedStage;
import org.cagewall.room.nest.Stage;
import org.cagewall.room.nest.ToldDay;
import org.cagewall.room.nest.Weaning;
import org.cagewall.room.nest.WhyRemoved;

/**
 * Furnishes breeding cages by hand, with pairs, rounds, eggs and chicks, for what is worked out from them. For one
 * thread.
 */
public final class NestSketch {

    private final String species;
    private final List<Home> homes = new ArrayList<>();
    private final Map<String, String> timetable = new HashMap<>();
    private final List<Absence> absences = new ArrayList<>();
    private final List<PastEgg> past = new ArrayList<>();
    private final List<TaskOutcome> outcomes = new ArrayList<>();
    private int mostEggs = Settings.initial(ZoneOffset.UTC).mostEggs();
    private int mostChicks = Settings.initial(ZoneOffset.UTC).mostChicks();
    private int mostRounds = Settings.initial(ZoneOffset.UTC).mostRounds();
    private long next = 1;

    public NestSketch() {
        this("budgerigar");
    }

    public NestSketch(String species) {
        this.species = species;
    }

    /** A cage with a pair. */
    public final class Home {

        private final long cage = next++;
        private final long cock = next++;
        private final long hen = next++;
        private final long pair = next++;
        private final String name;
        private final LocalDate since;
        private final List<Clutch> rounds = new ArrayList<>();
        private final List<SkippedStage> skipped = new ArrayList<>();
        private final List<Hung> hung = new ArrayList<>();
        private boolean sinceAbout;
        private Optional<LocalDate> boxTurned = Optional.empty();
        private Optional<LocalDate> boxOff = Optional.empty();
        private Optional<BoxStep> hanging = Optional.empty();
        private Optional<LocalDate> cockOut = Optional.empty();
        private Optional<LocalDate> henOut = Optional.empty();
        private Optional<PartingBegun> parting = Optional.empty();
        private final List<NestLook> looks = new ArrayList<>();
        private Routine routine = Routine.NONE;
        private Use use = Use.BREEDING;
        private List<String> hensTraits = List.of();
        private String kind = species;

        private Home(String name, LocalDate since) {
            this.name = name;
            this.since = since;
        }

        public Home box(BoxStep step, LocalDate day) {
            switch (step) {
                case ON -> hung.add(new Hung(day, false, Optional.empty()));
                case TURNED -> boxTurned = Optional.of(day);
                default -> {
                    boxOff = Optional.of(day);
                    if (!hung.isEmpty()) {
                        Hung last = hung.remove(hung.size() - 1);
                        hung.add(new Hung(last.on(), last.about(), Optional.of(day)));
                    }
                }
            }
            hanging = Optional.of(step).filter(it -> it != BoxStep.OFF);
            return this;
        }

        public Home boxOnAbout(LocalDate day) {
            hung.add(new Hung(day, true, Optional.empty()));
            hanging = Optional.of(BoxStep.ON);
            return this;
        }

        /** The day on which they were paired up is a guess. */
        public Home sinceAbout() {
            sinceAbout = true;
            return this;
        }

        public Home cockOut(LocalDate day) {
            cockOut = Optional.of(day);
            return this;
        }

        public Home henOut(LocalDate day) {
            henOut = Optional.of(day);
            return this;
        }

        public Home parting(LocalDate day) {
            parting = Optional.of(new PartingBegun(PartedFor.ROUNDS, day));
            return this;
        }

        public Home skip(Stage stage) {
            skipped.add(new SkippedStage(stage, "no need", since));
            return this;
        }

        public Home nestLook(LocalDate day) {
            looks.add(new NestLook(
                    day, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(false)));
            return this;
        }

        /** A look at which nobody minded backs and napes. */
        public Home quickLook(LocalDate day) {
            looks.add(new NestLook(
                    day, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
            return this;
        }

        /** The sitter may do this here. */
        public Home allowed(Permission permission) {
            routine = new Routine(List.of(), Set.of(permission));
            return this;
        }

        public Home use(Use other) {
            use = other;
            return this;
        }

        /** The two are of another species than the rest. */
        public Home kind(String other) {
            kind = other;
            return this;
        }

        /** What the hen is marked with. */
        public Home henIs(String trait) {
            hensTraits = List.of(trait);
            return this;
        }

        public Clutch round() {
            Clutch clutch = new Clutch(this, rounds.size() + 1);
            rounds.add(clutch);
            return clutch;
        }

        /** The round of that place, from 0. */
        public Clutch clutch(int index) {
            return rounds.get(index);
        }

        private Cage cage() {
            return new Cage(
                    cage,
                    (int) cage,
                    name,
                    Optional.empty(),
                    use,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    routine,
                    0,
                    new Box(hung, boxTurned, boxOff, Optional.empty(), hanging),
                    0,
                    looks,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
        }

        private Bird bird(long id, Sex sex, Optional<LocalDate> out) {
            List<Stay> stays = new ArrayList<>(List.of(new Stay(cage, since, pair)));
            out.ifPresent(day -> stays.add(new Stay(9999, day, Long.MAX_VALUE)));
            return new Bird(
                    id,
                    "R" + id,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    sex,
                    Optional.of(kind),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    stays,
                    id == hen ? hensTraits : List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    Optional.empty());
        }

        private Pair pair(Random order) {
            return new Pair(
                    pair,
                    "Pair " + pair,
                    cage,
                    cock,
                    hen,
                    since,
                    sinceAbout,
                    rounds.stream().map(round -> round.round(order)).toList(),
                    parting,
                    skipped);
        }
    }

    /** A round in the making. */
    public final class Clutch {

        private final long id = next++;
        private final Home home;
        private final int number;
        private final List<EggSketch> eggs = new ArrayList<>();
        private Optional<ToldDay> sitting = Optional.empty();
        private Optional<LocalDate> ended = Optional.empty();

        private Clutch(Home home, int number) {
            this.home = home;
            this.number = number;
        }

        public EggSketch egg(LocalDate laid) {
            EggSketch egg = new EggSketch(this, laid, Integer.toString(eggs.size() + 1));
            eggs.add(egg);
            return egg;
        }

        /** So many eggs, so many days apart. */
        public Clutch eggs(int count, LocalDate first, int gap) {
            for (int i = 0; i < count; i++) {
                egg(first.plusDays((long) gap * i));
            }
            return this;
        }

        /** The egg of that mark, from 1. */
        public EggSketch egg(int mark) {
            return eggs.get(mark - 1);
        }

        public Clutch sitting(LocalDate day) {
            sitting = Optional.of(new ToldDay(day, false));
            return this;
        }

        public Clutch sittingAbout(LocalDate day) {
            sitting = Optional.of(new ToldDay(day, true));
            return this;
        }

        public Clutch ended(LocalDate day) {
            ended = Optional.of(day);
            return this;
        }

        private Round round(Random order) {
            List<EggSketch> shuffled = new ArrayList<>(eggs);
            Collections.shuffle(shuffled, order);
            return new Round(
                    id,
                    number,
                    eggs.get(0).laid,
                    ended,
                    sitting,
                    shuffled.stream().map(EggSketch::egg).toList());
        }
    }

    /** An egg in the making, and the chick it becomes. */
    public final class EggSketch {

        private final long entry = next++;
        private final Clutch clutch;
        private final LocalDate laid;
        private final String mark;
        private final List<Candling> candlings = new ArrayList<>();
        private final List<NestMove> moves = new ArrayList<>();
        private final List<BoxTrip> trips = new ArrayList<>();
        private boolean about;
        private Optional<LocalDate> pipped = Optional.empty();
        private Optional<Removal> removed = Optional.empty();
        private Optional<LocalDate> hatched = Optional.empty();
        private boolean hatchedAbout;
        private Optional<ChickRing> ring = Optional.empty();
        private Optional<ChickLoss> lost = Optional.empty();
        private Optional<Weaning> weaned = Optional.empty();

        private EggSketch(Clutch clutch, LocalDate laid, String mark) {
            this.clutch = clutch;
            this.laid = laid;
            this.mark = mark;
        }

        public EggSketch about() {
            about = true;
            return this;
        }

        public EggSketch candled(EggFinding finding, LocalDate day) {
            candlings.add(new Candling(finding, day));
            return this;
        }

        public EggSketch pipped(LocalDate day) {
            pipped = Optional.of(day);
            return this;
        }

        public EggSketch moved(Home to, LocalDate day) {
            moves.add(new NestMove(to.cage, "K", day));
            return this;
        }

        public EggSketch removed(WhyRemoved why, LocalDate day) {
            removed = Optional.of(new Removal(why, day));
            return this;
        }

        public EggSketch hatched(LocalDate day) {
            hatched = Optional.of(day);
            return this;
        }

        public EggSketch hatchedAbout(LocalDate day) {
            hatchedAbout = true;
            return hatched(day);
        }

        public EggSketch ringed(LocalDate day) {
            ring = Optional.of(new ChickRing("C" + entry, day, false, Optional.empty()));
            return this;
        }

        public EggSketch ringSeen(LocalDate day) {
            ring = ring.map(worn -> new ChickRing(worn.ring(), worn.day(), worn.about(), Optional.of(day)));
            return this;
        }

        public EggSketch out(LocalDate day) {
            trips.add(new BoxTrip(true, day, false));
            return this;
        }

        public EggSketch putBack(LocalDate day) {
            trips.add(new BoxTrip(false, day, false));
            return this;
        }

        /** The days it was ringed, left the box and was weaned are guesses. */
        public EggSketch rearedAbout() {
            ring = ring.map(worn -> new ChickRing(worn.ring(), worn.day(), true, worn.checked()));
            trips.replaceAll(trip -> new BoxTrip(trip.out(), trip.day(), true));
            weaned = weaned.map(it -> new Weaning(it.bird(), it.day(), true));
            return this;
        }

        public EggSketch died(LocalDate day) {
            lost = Optional.of(new ChickLoss(true, day, Optional.empty()));
            return this;
        }

        public EggSketch weaned(LocalDate day) {
            weaned = Optional.of(new Weaning(entry, day, false));
            return this;
        }

        public LocalDate laid() {
            return laid;
        }

        public long entry() {
            return entry;
        }

        public Home home() {
            return clutch.home;
        }

        public boolean isHatched() {
            return hatched.isPresent();
        }

        /** The day it hatched. */
        public LocalDate hatched() {
            return hatched.orElseThrow();
        }

        public boolean isCandled(EggFinding finding) {
            return candlings.stream().anyMatch(candling -> candling.finding() == finding);
        }

        private Egg egg() {
            return new Egg(
                    mark,
                    laid,
                    about,
                    EggPlace.BOX,
                    clutch.home.cage,
                    entry,
                    candlings,
                    pipped,
                    moves,
                    removed,
                    hatched.map(day -> new Chick(day, hatchedAbout, ring, trips, List.of(), lost, weaned)));
        }
    }

    public Home home(String name, LocalDate since) {
        Home home = new Home(name, since);
        homes.add(home);
        return home;
    }

    public NestSketch set(String kind, Timing timing, String days) {
        timetable.put(Settings.timingName(kind, timing), days);
        return this;
    }

    /** So many eggs one hen covers, and so many chicks one pair feeds. */
    public NestSketch most(int eggs, int chicks) {
        mostEggs = eggs;
        mostChicks = chicks;
        return this;
    }

    /** After so many rounds a pair is parted. */
    public NestSketch mostRounds(int rounds) {
        mostRounds = rounds;
        return this;
    }

    public NestSketch away(LocalDate from, LocalDate to) {
        absences.add(new Absence(
                next++,
                from,
                to,
                "Tomas",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.empty(),
                List.of(new Absence.Plan(from, from, to, "Tomas"))));
        return this;
    }

    /** A task that was ticked off in the list. */
    public NestSketch ticked(String task, LocalDate day) {
        outcomes.add(
                new TaskOutcome(next++, task, true, Optional.empty(), "Ines", day, Optional.empty(), Optional.empty()));
        return this;
    }

    public NestSketch past(List<PastEgg> eggs) {
        past.addAll(eggs);
        return this;
    }

    public Room room() {
        return room(new Random(1));
    }

    /** The same room, with what has no order in it in another. */
    public Room room(Random order) {
        List<Home> shuffled = new ArrayList<>(homes);
        Collections.shuffle(shuffled, order);
        List<Bird> birds = new ArrayList<>();
        shuffled.forEach(home -> {
            birds.add(home.bird(home.cock, Sex.COCK, home.cockOut));
            birds.add(home.bird(home.hen, Sex.HEN, home.henOut));
        });
        Settings initial = Settings.initial(ZoneOffset.UTC);
        LocalDate day = LocalDate.of(2026, 4, 14);
        return new Room(
                next,
                "7K2",
                day,
                day.minusDays(20),
                new Settings(
                        initial.name(),
                        initial.zone(),
                        species,
                        initial.ringsIssued(),
                        initial.quiet(),
                        initial.rules(),
                        initial.heatAct(),
                        initial.heatPhone(),
                        initial.coldPhone(),
                        initial.illFirst(),
                        mostEggs,
                        mostChicks,
                        mostRounds,
                        initial.restMonths(),
                        initial.leastSpace(),
                        timetable,
                        initial.rings()),
                List.of(),
                shuffled.stream().map(Home::cage).toList(),
                birds,
                shuffled.stream().map(home -> home.pair(order)).toList(),
                List.of(),
                List.of(),
                absences,
                List.of(),
                List.of(),
                outcomes,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                past);
    }

    public Outlook outlook(Home home) {
        Room room = room();
        return Almanac.of(room).nest(room.cage(home.name).orElseThrow());
    }

    /** A day of a spring, counted from 1. */
    public static LocalDate day(int number) {
        return LocalDate.of(2026, 3, 1).plusDays(number - 1L);
    }

    /** Which day of that spring a date is. */
    public static int number(LocalDate date) {
        return (int) (date.toEpochDay() - day(0).toEpochDay());
    }

    /** A window in days of that spring: {@code 19 20 23}. */
    public static String days(Window window) {
        return number(window.earliest()) + " " + number(window.expected()) + " " + number(window.latest());
    }

    public static String days(Optional<Due> due) {
        return due.map(it -> days(it.window())).orElse("none");
    }
}
