package org.cagewall.tasks;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.FirstCall;
import org.cagewall.room.Keeps;
import org.cagewall.room.Person;
import org.cagewall.room.Place;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;
import org.cagewall.room.Use;
import org.cagewall.room.Wall;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.card.CardFace;
import org.cagewall.room.card.PrintedCard;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.Routine;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.Hung;
import org.cagewall.room.nest.PairPlan;

/** Furnishes a birdroom by hand, without a record, for what is worked out from a room. For one thread. */
public final class RoomSketch {

    public static final LocalDate DAY = LocalDate.of(2026, 4, 14);

    private final List<Wall> walls = new ArrayList<>();
    private final List<CageSketch> cages = new ArrayList<>();
    private final List<Bird> birds = new ArrayList<>();
    private final List<Person> people = new ArrayList<>();
    private final List<Absence> absences = new ArrayList<>();
    private final List<Visit> visits = new ArrayList<>();
    private final List<Visit> unread = new ArrayList<>();
    private final List<TaskOutcome> outcomes = new ArrayList<>();
    private final List<PairPlan> plans = new ArrayList<>();
    private Optional<String> rules = Optional.empty();
    private Optional<String> feeder = Optional.empty();
    private String person = "Tomas";
    private FirstCall illFirst = FirstCall.OWNER;
    private long next = 1;

    public RoomSketch() {
        people.add(new Person(next++, "Ines", Role.OWNER, Optional.of("0555 0142")));
        people.add(new Person(next++, "Tomas", Role.SITTER, Optional.empty()));
        people.add(new Person(next++, "Joan", Role.KEEPER, Optional.of("0555 0177")));
    }

    /** A cage in the making. */
    public final class CageSketch {

        private final long id;
        private final String name;
        private final Optional<Place> place;
        private final Use use;
        private Optional<Keeps> keeps = Optional.empty();
        private Routine routine = Routine.NONE;
        private int flock;
        private Box box = Box.NONE;
        private Optional<LocalDate> retired = Optional.empty();
        private Optional<PrintedCard> card = Optional.empty();
        private Optional<LocalDate> treated = Optional.empty();
        private Optional<LocalDate> backFromShow = Optional.empty();

        private CageSketch(String name, Optional<Place> place, Use use) {
            this.id = next++;
            this.name = name;
            this.place = place;
            this.use = use;
        }

        public CageSketch keeps(Keeps kept) {
            keeps = Optional.of(kept);
            return this;
        }

        public CageSketch flock(int count) {
            flock = count;
            return this;
        }

        public CageSketch box(BoxStep step) {
            box = new Box(
                    List.of(new Hung(DAY, false, Optional.empty())),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(step));
            return this;
        }

        public CageSketch feed(FeedLine... lines) {
            routine = new Routine(List.of(lines), routine.allowed());
            return this;
        }

        public CageSketch allowed(Permission... permissions) {
            routine = new Routine(routine.feed(), Set.of(permissions));
            return this;
        }

        public CageSketch card(CardFace face) {
            card = Optional.of(new PrintedCard(face, "", 1, DAY));
            return this;
        }

        public CageSketch retired() {
            retired = Optional.of(DAY);
            return this;
        }

        public CageSketch bird(Sex sex) {
            return bird(sex, "2024");
        }

        public CageSketch bird(Sex sex, String hatched) {
            long bird = next++;
            birds.add(new Bird(
                    bird,
                    "R" + bird,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    sex,
                    Optional.empty(),
                    Optional.of(hatched),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    List.of(new Stay(id, DAY.minusDays(11), bird)),
                    List.of(),
                    Optional.empty(),
                    treated,
                    Optional.empty(),
                    backFromShow,
                    false,
                    Optional.empty()));
            return this;
        }

        /** Of the birds put in from here on. */
        public CageSketch treated(LocalDate day) {
            treated = Optional.of(day);
            return this;
        }

        /** Of the birds put in from here on. */
        public CageSketch backFromShow(LocalDate day) {
            backFromShow = Optional.of(day);
            return this;
        }

        public long id() {
            return id;
        }

        public RoomSketch and() {
            return RoomSketch.this;
        }

        private Cage cage() {
            Optional<Visit> last =
                    visits.stream().filter(visit -> visit.cage() == id).reduce((earlier, later) -> later);
            return new Cage(
                    id,
                    (int) id,
                    name,
                    place,
                    use,
                    keeps,
                    retired,
                    Optional.empty(),
                    routine,
                    flock,
                    box,
                    0,
                    List.of(),
                    Optional.empty(),
                    Optional.empty(),
                    card,
                    last);
        }
    }

    public RoomSketch wall(String name, int rows, int columns) {
        walls.add(new Wall(next++, name, rows, columns));
        return this;
    }

    /** A cage on the wall added last. */
    public CageSketch cage(String name, int row, int column, Use use) {
        return add(new CageSketch(
                name, Optional.of(new Place(walls.get(walls.size() - 1).id(), row, column)), use));
    }

    /** A cage or flight that hangs in no row. */
    public CageSketch cage(String name, Use use) {
        return add(new CageSketch(name, Optional.empty(), use));
    }

    private CageSketch add(CageSketch cage) {
        cages.add(cage);
        return cage;
    }

    /** Who feeds the cages that are left alone, in the days away that follow. */
    public RoomSketch feeder(String name) {
        feeder = Optional.of(name);
        return this;
    }

    public RoomSketch away(LocalDate from, LocalDate to, CageSketch... alone) {
        absences.add(new Absence(
                next++,
                from,
                to,
                "Tomas",
                Optional.of("Joan"),
                Optional.of("Bird vet 0555 0190"),
                feeder,
                java.util.Arrays.stream(alone).map(CageSketch::id).toList(),
                Optional.empty(),
                List.of(new Absence.Plan(from, from, to, "Tomas"))));
        return this;
    }

    /** Who makes the checks that follow. */
    public RoomSketch by(String name) {
        person = name;
        return this;
    }

    /** One entry that tells of several cages. */
    public RoomSketch rowWalked(LocalDate day, DayPart part, CageSketch... row) {
        long entry = next++;
        for (CageSketch cage : row) {
            visits.add(new Visit(
                    entry,
                    cage.id(),
                    person,
                    Answer.WELL,
                    How.HAND,
                    Optional.of(part),
                    List.of(),
                    day,
                    Optional.empty(),
                    Optional.empty()));
        }
        return this;
    }

    public RoomSketch check(CageSketch cage, LocalDate day, Answer answer, DayPart part) {
        return visit(cage, day, answer, Optional.of(part));
    }

    public RoomSketch check(CageSketch cage, LocalDate day) {
        return visit(cage, day, Answer.WELL, Optional.empty());
    }

    private RoomSketch visit(CageSketch cage, LocalDate day, Answer answer, Optional<DayPart> part) {
        Visit visit = new Visit(
                next++,
                cage.id(),
                person,
                answer,
                How.HAND,
                part,
                answer == Answer.DIFFERENT ? List.of("puffed-up") : List.of(),
                day,
                Optional.empty(),
                Optional.empty());
        visits.add(visit);
        if (visit.isDifferent()) {
            unread.add(visit);
        }
        return this;
    }

    /** The two birds added last, meant for each other and for that cage. */
    public RoomSketch plan(CageSketch cage, LocalDate day) {
        plans.add(new PairPlan(
                next++,
                cage.id(),
                birds.get(birds.size() - 2).id(),
                birds.get(birds.size() - 1).id(),
                Optional.empty(),
                day));
        return this;
    }

    /** Whom the owner wants to be phoned first for an ill bird. */
    public RoomSketch illFirst(FirstCall who) {
        illFirst = who;
        return this;
    }

    public RoomSketch rules(String words) {
        rules = Optional.of(words);
        return this;
    }

    public RoomSketch done(String task) {
        outcomes.add(new TaskOutcome(
                next++, task, true, Optional.empty(), "Tomas", DAY, Optional.empty(), Optional.empty()));
        return this;
    }

    public RoomSketch notDone(String task, String why) {
        outcomes.add(new TaskOutcome(
                next++, task, false, Optional.of(why), "Tomas", DAY, Optional.empty(), Optional.empty()));
        return this;
    }

    public Room room() {
        return new Room(
                next,
                "7K2",
                DAY,
                DAY.minusDays(20),
                settings(),
                walls,
                cages.stream().map(CageSketch::cage).toList(),
                birds,
                List.of(),
                plans,
                people,
                absences,
                visits,
                unread,
                outcomes,
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private Settings settings() {
        Settings initial = Settings.initial(ZoneOffset.UTC);
        return new Settings(
                initial.name(),
                initial.zone(),
                initial.species(),
                initial.ringsIssued(),
                initial.quiet(),
                rules,
                initial.heatAct(),
                initial.heatPhone(),
                initial.coldPhone(),
                illFirst,
                initial.mostEggs(),
                initial.mostChicks(),
                initial.mostRounds(),
                initial.restMonths(),
                initial.leastSpace(),
                initial.timetable(),
                initial.rings());
    }
}
