package org.cagewall.demo;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.deed.AwayDeed;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.room.CallMatter;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.Whither;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Sign;

/**
 * Tells of the sitter's few days in the invented birdroom, when three nests were under way: most of it done, by scan and
 * by hand, some of it not, two things out of the ordinary, calls and a mistake struck out. The owner's friend comes at
 * noon every other day. Seeded; bound to one thread.
 */
final class DemoAbsence {

    static final String VET = "Bird vet at the mill, 01632 960190";

    private static final String OWNER = DemoRoom.OWNER;
    private static final String KEEPER = DemoRoom.KEEPER;
    private static final String SITTER = DemoRoom.SITTER;

    private static final int FIRST = DemoRoom.LEFT;
    private static final int LAST = DemoRoom.BACK + 1;
    private static final int FRIEND_EVERY = 2;

    /** The day on which a cage was not visited. */
    private static final int FORGETFUL = FIRST - 1;

    /** The day, one of the friend's, on which a hen fell ill. */
    private static final int ILL = FIRST - 2;

    /** The day on which soft food was left in. */
    private static final int HURRIED = FIRST - 3;

    private static final Set<String> EMPTY = Set.of("A2", "A3", "A5", "C3", "C5", "C6", DemoRoom.QUARANTINE);

    private static final List<String> FED_IN_THE_EVENING = Stream.concat(
                    DemoNests.FED_SOFT.stream(), Stream.of(DemoRoom.NURSERY, DemoRoom.COCK_FLIGHT, DemoRoom.HEN_FLIGHT))
            .toList();

    private final DemoStory story;
    private final Random random;
    private final DemoNests nests;
    private final String ill;
    private final List<DemoStory.Telling> reports = new ArrayList<>();

    DemoAbsence(DemoStory story, Random random, DemoNests nests, String ill) {
        this.story = story;
        this.random = random;
        this.nests = nests;
        this.ill = ill;
    }

    void tell() {
        plan();
        for (int day = FIRST; day >= LAST; day--) {
            morning(day);
            events(day);
            evening(day);
        }
        ownerIsBack();
    }

    private void plan() {
        story.by(OWNER, FIRST + 9)
                .tells(new AwayDeed.AwayPlanned(
                        story.ago(FIRST),
                        story.ago(LAST),
                        SITTER,
                        Optional.of(KEEPER),
                        Optional.of(VET),
                        Optional.empty(),
                        Optional.empty()));
        story.by(OWNER, FIRST + 1)
                .noting(
                        "Seed and soft food stand on the left. Aldo comes at noon every other day, first on the day I go.")
                .tells(new VisitDeed.Noted(Optional.empty(), Optional.empty()));
    }

    private void morning(int day) {
        LocalTime time = LocalTime.of(7, 25).plusMinutes(random.nextInt(15));
        double high = day == HURRIED ? 31.0 : 22.5 + random.nextInt(6) * 0.5;
        story.by(SITTER, day).at(time).tells(DemoRoom.climate(high, 17.5 + random.nextInt(4) * 0.5, 50 + day % 5));
        for (String cage : DemoRoom.CAGES) {
            time = time.plusMinutes(1 + random.nextInt(2));
            if (!isPassedOver(cage, day)) {
                check(cage, day, time);
            }
        }
    }

    private static boolean isPassedOver(String cage, int day) {
        return EMPTY.contains(cage)
                || cage.equals(DemoRoom.HOSPITAL) && day >= ILL
                || day == FORGETFUL && cage.equals(DemoRoom.NURSERY);
    }

    private void check(String cage, int day, LocalTime time) {
        How how = DemoRoom.how(random);
        if (day == ILL && cage.equals(DemoRoom.HEN_FLIGHT)) {
            report(
                    cage,
                    day,
                    time,
                    how,
                    List.of(Sign.PUFFED_UP, Sign.NOT_EATING),
                    ill + " sits alone and hardly moves.");
        } else if (day == LAST && cage.equals("B4")) {
            report(cage, day, time, how, List.of(Sign.DISH_EMPTY), "The seed dish held husks only. I filled it.");
        } else {
            story.by(SITTER, day)
                    .at(time)
                    .tells(new VisitDeed.Check(cage, Answer.WELL, how, Optional.of(DayPart.MORNING), Optional.empty()));
        }
    }

    private void report(String cage, int day, LocalTime time, How how, List<Sign> signs, String note) {
        reports.add(story.by(SITTER, day)
                .at(time)
                .noting(note)
                .tells(VisitDeed.Check.different(cage, how, Optional.of(DayPart.MORNING), signs)));
        outcome(day, time, new VisitDeed.TaskDone(task(day, cage, "morning"), Optional.of(how)));
    }

    private void events(int day) {
        if (day == FIRST || day == LAST) {
            counted(day);
        }
        if ((FIRST - day) % FRIEND_EVERY == 0) {
            friendLooks(day);
        }
        if (day == FORGETFUL) {
            wrongCage();
        }
        if (day == ILL) {
            henIsIll();
        }
        if (day == LAST) {
            nests.keeperComes(day);
            henIsBetter(day);
        }
    }

    private void friendLooks(int day) {
        for (String cage : List.of("B1", "B6")) {
            friend(day, LocalTime.of(12, 10))
                    .tells(new VisitDeed.Check(cage, Answer.WELL, How.SCAN, Optional.empty(), Optional.empty()));
        }
    }

    private void counted(int day) {
        for (String cage : List.of(DemoRoom.COCK_FLIGHT, DemoRoom.HEN_FLIGHT, DemoRoom.YOUNG)) {
            story.by(SITTER, day).at(LocalTime.of(8, 40)).tells(new RoomDeed.Counted(cage, Optional.empty()));
        }
    }

    private void wrongCage() {
        DemoStory.Telling mistaken = noted(LocalTime.of(8, 55), "B4");
        story.by(SITTER, FORGETFUL)
                .at(LocalTime.of(9, 2))
                .tellsLater(() -> new CardDeed.StruckOut(mistaken.entry(), "Wrong cage, it was B6."));
        noted(LocalTime.of(9, 3), "B6");
    }

    private DemoStory.Telling noted(LocalTime time, String cage) {
        return story.by(SITTER, FORGETFUL)
                .at(time)
                .noting("A feather hangs at the box. The hen looked out and went in again.")
                .tells(new VisitDeed.Noted(Optional.of(cage), Optional.empty()));
    }

    private void henIsIll() {
        called(
                SITTER,
                LocalTime.of(8, 20),
                DemoRoom.HEN_FLIGHT,
                OWNER,
                "Aldo comes at noon and puts her into " + DemoRoom.HOSPITAL + ". Do not catch her.");
        friend(ILL, LocalTime.of(12, 20))
                .tells(new BirdDeed.BirdMoved(
                        ill, DemoRoom.HOSPITAL, Optional.of(DemoRoom.HEN_FLIGHT), Optional.of("puffed up, sits low")));
        friend(ILL, LocalTime.of(12, 25))
                .tells(new BirdDeed.BirdLookedOver(
                        ill,
                        Condition.ILL,
                        Optional.of(new BigDecimal("34.5")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("sharp"),
                        Optional.of("soiled"),
                        Optional.empty()));
        called(KEEPER, LocalTime.of(12, 35), DemoRoom.HOSPITAL, "the vet", "Bring her in at two.");
        friend(ILL, LocalTime.of(13, 30))
                .tells(new BirdDeed.BirdOut(ill, Whither.VET, Optional.empty(), Optional.empty()));
        friend(ILL, LocalTime.of(15, 10))
                .tells(new BirdDeed.BirdBack(ill, Optional.of("Treated by the vet; to be seen again in a week.")));
    }

    private void called(String who, LocalTime time, String cage, String whom, String agreed) {
        story.by(who, ILL)
                .at(time)
                .tells(new VisitDeed.Phoned(
                        Optional.of(cage),
                        whom,
                        CallMatter.ILL.word(),
                        Optional.of(agreed),
                        Optional.empty(),
                        Optional.empty()));
    }

    private void henIsBetter(int day) {
        friend(day, LocalTime.of(12, 30))
                .tells(new BirdDeed.BirdLookedOver(
                        ill,
                        Condition.WATCH,
                        Optional.of(new BigDecimal("35.5")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("clean"),
                        Optional.empty()));
    }

    private DemoStory.Teller friend(int day, LocalTime time) {
        return story.by(KEEPER, day).at(time);
    }

    private void evening(int day) {
        LocalTime time = LocalTime.of(18, 30).plusMinutes(random.nextInt(40));
        feed(day, time);
        DemoRoom.rows(DayPart.EVENING, day == FORGETFUL ? 1 : 2)
                .forEach(row -> story.by(SITTER, day).at(time.plusMinutes(3)).tells(row));
    }

    /** What is left of soft food comes out in the evening; the flights get their greens. */
    private void feed(int day, LocalTime time) {
        for (String cage : FED_IN_THE_EVENING) {
            String task = task(day, cage, "evening-food");
            if (day == HURRIED && DemoNests.FED_SOFT.contains(cage)) {
                outcome(day, time, new VisitDeed.TaskNotDone(task, Optional.of("the light was off when I came")));
            } else {
                outcome(day, time, new VisitDeed.TaskDone(task, Optional.of(How.HAND)));
            }
        }
        if (day == FIRST) {
            String task = task(day, DemoRoom.YOUNG, "morning");
            outcome(day, time, new VisitDeed.TaskNotDone(task, Optional.of("the seed bin was empty, filled at noon")));
        }
    }

    private void outcome(int day, LocalTime time, VisitDeed deed) {
        story.by(SITTER, day).at(time).tells(deed);
    }

    private String task(int day, String cage, String kind) {
        return story.ago(day) + "/" + cage + "/" + kind;
    }

    /** The owner reads what was different, and the hen goes back among the others when she is well. */
    private void ownerIsBack() {
        story.by(OWNER, DemoRoom.BACK).tells(new AwayDeed.AwayEnded());
        reports.forEach(
                report -> story.by(OWNER, DemoRoom.BACK).tellsLater(() -> new AwayDeed.EntrySeen(report.entry())));
        story.by(OWNER, DemoRoom.BACK - 5)
                .tells(new BirdDeed.BirdLookedOver(
                        ill,
                        Condition.FIT,
                        Optional.of(new BigDecimal("38.5")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("clean"),
                        Optional.empty()));
        story.by(OWNER, DemoRoom.BACK - 5)
                .tells(new BirdDeed.BirdMoved(
                        ill, DemoRoom.HEN_FLIGHT, Optional.of(DemoRoom.HOSPITAL), Optional.of("well again")));
    }
}
