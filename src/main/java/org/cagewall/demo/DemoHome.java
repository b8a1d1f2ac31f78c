package org.cagewall.demo;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cagewall.deed.AwayDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Sign;

/**
 * Tells of the owner's days at home in the invented birdroom: rows walked, the thermometer read, the next days away
 * planned, and the sitter come to practise. Seeded; bound to one thread.
 */
final class DemoHome {

    private static final String OWNER = DemoRoom.OWNER;

    /** How many days ahead the owner leaves, and for how many days. */
    static final int LEAVES_IN = 42;

    private static final int DAYS_AWAY = 14;

    private static final int PRACTISED = 1;

    private final DemoStory story;
    private final Random random;

    DemoHome(DemoStory story, Random random) {
        this.story = story;
        this.random = random;
    }

    void tell() {
        for (int day = DemoRoom.LEFT + 4; day > DemoRoom.LEFT; day--) {
            morning(day);
        }
        for (int day = DemoRoom.BACK; day >= 1; day--) {
            morning(day);
        }
        plan();
        sitterPractises();
        firstRowOfToday();
    }

    private void morning(int day) {
        LocalTime time = LocalTime.of(7, 55).plusMinutes(random.nextInt(15));
        story.by(OWNER, day).at(time).tells(DemoRoom.climate(21.5 + random.nextInt(5) * 0.5, 17.5, 50 + day % 5));
        DemoRoom.rows(DayPart.MORNING, day < DemoRoom.BOUGHT ? 3 : 2)
                .forEach(row -> story.by(OWNER, day).at(time.plusMinutes(5)).tells(row));
    }

    private void plan() {
        story.by(OWNER, 6)
                .tells(new AwayDeed.AwayPlanned(
                        story.ago(-LEAVES_IN),
                        story.ago(-LEAVES_IN - DAYS_AWAY + 1),
                        DemoRoom.SITTER,
                        Optional.of(DemoRoom.KEEPER),
                        Optional.of(DemoAbsence.VET),
                        Optional.empty(),
                        Optional.empty()));
    }

    private void sitterPractises() {
        LocalTime time = LocalTime.of(17, 40);
        for (String cage : List.of("A1", "A3", "A4")) {
            time = time.plusMinutes(2);
            sitters(time).tells(check(cage));
        }
        sitters(time.plusMinutes(2))
                .noting("The water dish lay on the floor. I dried the floor and filled the dish.")
                .tells(VisitDeed.Check.different(
                        "A2", How.SCAN, Optional.of(DayPart.EVENING), List.of(Sign.DISH_EMPTY)));
    }

    private DemoStory.Teller sitters(LocalTime time) {
        return story.by(DemoRoom.SITTER, PRACTISED).at(time);
    }

    private static VisitDeed.Check check(String cage) {
        return new VisitDeed.Check(cage, Answer.WELL, How.SCAN, Optional.of(DayPart.EVENING), Optional.empty());
    }

    private void firstRowOfToday() {
        LocalTime time = LocalTime.of(7, 20);
        for (String cage : DemoRoom.BREEDING.subList(0, 6)) {
            time = time.plusMinutes(1);
            story.by(OWNER, 0)
                    .at(time)
                    .tells(new VisitDeed.Check(
                            cage, Answer.WELL, DemoRoom.how(random), Optional.of(DayPart.MORNING), Optional.empty()));
        }
    }
}
