package org.cagewall.desk;

import java.math.BigDecimal;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.cagewall.deed.AwayDeed;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.room.Answer;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Condition;
import org.cagewall.room.DayPart;
import org.cagewall.room.How;
import org.cagewall.room.Sign;
import org.cagewall.room.Whither;

/**
 * Tells of the sitter's days in the invented birdroom: most of it done, by scan and by hand, some of it not, two things
 * out of the ordinary, a call and a mistake struck out. Seeded; bound to one thread.
 */
final class DemoFortnight {

    private static final String OWNER = DemoRoom.OWNER;
    private static final String KEEPER = DemoRoom.KEEPER;
    private static final String SITTER = DemoRoom.SITTER;

    private static final int DAYS = 14;

    /** The day on which whole rows were walked in place of single cages. */
    private static final int HURRIED = 3;

    /** The day on which one cage was not visited. */
    private static final int FORGETFUL = 2;

    /** The day on which the seed of one cage came late. */
    private static final int LATE = 5;

    private static final List<String> FED_IN_THE_EVENING = Stream.concat(
                    DemoNests.FED_SOFT.stream(), Stream.of(DemoRoom.NURSERY, DemoRoom.COCK_FLIGHT, DemoRoom.HEN_FLIGHT))
            .toList();

    /** How many in ten checks are made with the card. */
    private static final int SCANNED = 7;

    private final DemoStory story;
    private final Random random;
    private final DemoNests nests;
    private final String ill;

    DemoFortnight(DemoStory story, Random random, DemoNests nests) {
        this.story = story;
        this.random = random;
        this.nests = nests;
        this.ill = story.lines().stream()
                .map(line -> line.deed())
                .filter(BirdDeed.BirdAdded.class::isInstance)
                .map(BirdDeed.BirdAdded.class::cast)
                .filter(bird -> bird.cage().equals(Optional.of(DemoRoom.HEN_FLIGHT)))
                .map(BirdDeed.BirdAdded::bird)
                .findFirst()
                .orElseThrow();
    }

    void tell() {
        plan();
        for (int day = DemoRoom.LEFT; day >= 1; day--) {
            morning(day);
            events(day);
            nests.keeperComes(day);
            evening(day);
        }
        firstRowOfToday();
    }

    private void plan() {
        story.by(OWNER, DemoRoom.LEFT + 4)
                .tells(new AwayDeed.AwayPlanned(
                        story.ago(DemoRoom.LEFT),
                        story.ago(DemoRoom.LEFT - DAYS + 1),
                        SITTER,
                        Optional.of(KEEPER),
                        Optional.of("Bird vet at the mill, 01632 960190"),
                        Optional.of(List.of(DemoRoom.QUARANTINE)),
                        Optional.of(KEEPER)));
        story.by(OWNER, DemoRoom.LEFT + 1)
                .noting("Seed and soft food stand on the left. Quarantine is Aldo's: he comes every other day.")
                .tells(new VisitDeed.Noted(Optional.empty(), Optional.empty()));
    }

    private void morning(int day) {
        LocalTime time = LocalTime.of(7, 25).plusMinutes(random.nextInt(15));
        double high = day == HURRIED ? 31.0 : 22.5 + random.nextInt(6) * 0.5;
        story.by(SITTER, day).at(time).tells(DemoRoom.climate(high, 17.5 + random.nextInt(4) * 0.5, 50 + day));
        if (day == HURRIED) {
            walkRows(day, DayPart.MORNING, time);
        } else {
            for (String cage : DemoRoom.CAGES) {
                time = time.plusMinutes(1 + random.nextInt(2));
                if (!isPassedOver(cage, day)) {
                    check(cage, day, time);
                }
            }
        }
    }

    private static boolean isPassedOver(String cage, int day) {
        return cage.equals(DemoRoom.QUARANTINE) || day == FORGETFUL && cage.equals(DemoRoom.NURSERY);
    }

    private void check(String cage, int day, LocalTime time) {
        How how = random.nextInt(10) < SCANNED ? How.SCAN : How.HAND;
        if (day == 4 && cage.equals(DemoRoom.HEN_FLIGHT)) {
            report(
                    cage,
                    day,
                    time,
                    how,
                    List.of(Sign.PUFFED_UP, Sign.NOT_EATING),
                    ill + " sits alone and hardly moves.");
        } else if (day == 1 && cage.equals("A2")) {
            report(
                    cage,
                    day,
                    time,
                    how,
                    List.of(Sign.DISH_EMPTY),
                    "The water dish lay on the floor. I dried the floor and filled the dish.");
        } else {
            story.by(SITTER, day)
                    .at(time)
                    .tells(new VisitDeed.Check(cage, Answer.WELL, how, Optional.of(DayPart.MORNING), Optional.empty()));
        }
    }

    private void report(String cage, int day, LocalTime time, How how, List<Sign> signs, String note) {
        story.by(SITTER, day)
                .at(time)
                .noting(note)
                .tells(VisitDeed.Check.different(cage, how, Optional.of(DayPart.MORNING), signs));
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
        if (day == LATE) {
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

    private void evening(int day) {
        LocalTime time = LocalTime.of(18, 30).plusMinutes(random.nextInt(40));
        feed(day, time);
        walkRows(day, DayPart.EVENING, time);
    }

    private void walkRows(int day, DayPart part, LocalTime time) {
        for (int row = 1; row <= 3; row++) {
            story.by(SITTER, day).at(time.plusMinutes(row)).tells(row(DemoRoom.NORTH, row, part));
        }
        int last = day == FORGETFUL ? 1 : 2;
        for (int row = 1; row <= last; row++) {
            story.by(SITTER, day).at(time.plusMinutes(3 + row)).tells(row(DemoRoom.EAST, row, part));
        }
    }

    private static VisitDeed row(String wall, int row, DayPart part) {
        return new VisitDeed.RowChecked(wall, row, Optional.of(part));
    }

    private void events(int day) {
        if (day % 2 == 0) {
            quarantine(day);
        }
        switch (day) {
            case 4 -> {
                callAboutIllHen();
                wrongCage();
            }
            case 3 -> vetSeesHen();
            case 2 -> {
                layAt("C1", day);
                henBack();
            }
            case 1 -> layAt("A3", day);
            default -> counted(day);
        }
    }

    private void quarantine(int day) {
        story.by(KEEPER, day)
                .at(LocalTime.of(12, 10))
                .tells(new VisitDeed.Check(
                        DemoRoom.QUARANTINE, Answer.WELL, How.SCAN, Optional.empty(), Optional.empty()));
    }

    private void callAboutIllHen() {
        story.by(SITTER, 4)
                .at(LocalTime.of(8, 20))
                .tells(new VisitDeed.Phoned(
                        Optional.of(DemoRoom.HEN_FLIGHT),
                        OWNER,
                        CallMatter.ILL.word(),
                        Optional.of(
                                "Aldo comes at noon and puts her into " + DemoRoom.HOSPITAL + ". Do not catch her."),
                        Optional.empty(),
                        Optional.empty()));
        story.by(KEEPER, 4)
                .at(LocalTime.of(12, 20))
                .tells(new BirdDeed.BirdMoved(
                        ill, DemoRoom.HOSPITAL, Optional.of(DemoRoom.HEN_FLIGHT), Optional.of("puffed up, sits low")));
        story.by(KEEPER, 4)
                .at(LocalTime.of(12, 25))
                .tells(new BirdDeed.BirdLookedOver(
                        ill,
                        Condition.ILL,
                        Optional.of(new BigDecimal("34.5")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of("sharp"),
                        Optional.of("soiled"),
                        Optional.empty()));
        story.by(KEEPER, 4)
                .at(LocalTime.of(12, 35))
                .tells(new VisitDeed.Phoned(
                        Optional.of(DemoRoom.HOSPITAL),
                        "the vet",
                        CallMatter.ILL.word(),
                        Optional.of("Bring her in tomorrow at nine."),
                        Optional.empty(),
                        Optional.empty()));
    }

    private void wrongCage() {
        layAt("C2", 4);
        story.by(SITTER, 4)
                .at(LocalTime.of(9, 2))
                .tells(new CardDeed.StruckOut(story.lastEntry(), "Wrong cage, it was C1."));
        layAt("C1", 4);
    }

    private void vetSeesHen() {
        story.by(KEEPER, 3).at(LocalTime.of(8, 40)).tells(new BirdDeed.BirdOut(ill, Whither.VET, Optional.empty()));
        story.by(KEEPER, 3)
                .at(LocalTime.of(10, 30))
                .tells(new BirdDeed.BirdBack(ill, Optional.of("Treated by the vet; to be seen again in a week.")));
    }

    private void henBack() {
        story.by(KEEPER, 2)
                .at(LocalTime.of(12, 30))
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

    private void layAt(String cage, int day) {
        story.by(SITTER, day)
                .at(LocalTime.of(8, 50).plusMinutes(day))
                .tells(new NestDeed.EggLaid(cage, Optional.empty(), Optional.empty()));
    }

    private void counted(int day) {
        for (String cage : List.of(DemoRoom.COCK_FLIGHT, DemoRoom.HEN_FLIGHT, DemoRoom.YOUNG)) {
            story.by(SITTER, day).at(LocalTime.of(8, 40)).tells(new RoomDeed.Counted(cage, Optional.empty()));
        }
    }

    private void firstRowOfToday() {
        LocalTime time = LocalTime.of(7, 20);
        for (String cage : new ArrayList<>(DemoRoom.BREEDING).subList(0, 6)) {
            time = time.plusMinutes(1);
            check(cage, 0, time);
        }
    }
}
