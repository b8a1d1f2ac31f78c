package org.cagewall.tasks;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import org.cagewall.almanac.Almanac;
import org.cagewall.room.Cage;
import org.cagewall.room.CockSleeps;
import org.cagewall.room.Keeps;
import org.cagewall.room.Room;
import org.cagewall.room.Species;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Nest;
import org.cagewall.text.Message;

/**
 * What somebody who looks into a cage should see: how many birds, the chicks that are out of the box with them, and how
 * the nest box hangs. Pure; any thread.
 */
public final class Sight {

    /**
     * Up to this age, in days, a bird is called young: the young plumage is lost at three to four months (general
     * accounts).
     */
    private static final int YOUNG_DAYS = 120;

    /** For so many days after it left the box a chick may still go back into it: common practice, no source. */
    private static final int GOES_BACK_DAYS = 7;

    private final Room room;
    private final Cage cage;
    private final LocalDate date;
    private final Nest nest;

    private Sight(Room room, Cage cage, LocalDate date) {
        this.room = room;
        this.cage = cage;
        this.date = date;
        this.nest = room.nest(cage);
    }

    /** A few words, such as "1 or 2 birds, box shut". */
    public static Message of(Room room, Cage cage, LocalDate date) {
        return new Sight(room, cage, date).words();
    }

    /**
     * How many birds a count finds.
     *
     * @param least where all that may be in the nest box are in it
     * @param most where all are outside
     */
    public record Heads(int least, int most) {

        public boolean fits(int counted) {
            return counted >= least && counted <= most;
        }
    }

    /** The count of what is in the cage and can be seen without opening the nest box. */
    public static Heads heads(Room room, Cage cage, LocalDate date) {
        Sight sight = new Sight(room, cage, date);
        if (cage.box().isOn()) {
            int all = sight.beside();
            return new Heads(all - sight.maybeInside(), all);
        }
        int all = sight.headsOutside();
        return new Heads(all, all);
    }

    private Message words() {
        if (cage.box().isOn()) {
            return NestName.at(room, cage).say("tasks.see-box-shut", besideTheBox());
        }
        if (cage.box().isTurned()) {
            return Message.of("tasks.see-box-turned", counted());
        }
        return counted();
    }

    /** Hens, cocks of a species that sleep in the nest, birds of unknown sex, and chicks that are old enough to leave it, unless they left it a week ago, may be in the box. */
    private Message besideTheBox() {
        int all = beside();
        int maybeInside = maybeInside();
        int outside = all - maybeInside;
        if (maybeInside == 0) {
            return counted();
        }
        if (all == 1) {
            return Message.of("tasks.see-one-or-none", all);
        }
        return Message.of(maybeInside == 1 ? "tasks.see-or" : "tasks.see-to", outside, all);
    }

    /** All birds, and the chicks that are old enough to be out. */
    private int beside() {
        return room.headsIn(cage) + chicksOldEnough();
    }

    private int maybeInside() {
        return (int) room.birdsIn(cage).stream()
                        .filter(bird -> bird.sex() != Sex.COCK || mayBeInside(bird))
                        .count()
                + cage.flock()
                + chicksOldEnough()
                - chicksOutForGood();
    }

    private int chicksOldEnough() {
        return nest.chicks().size() - chicksTooYoungToLeave();
    }

    private int chicksOut() {
        return nest.chicks().size() - nest.chicksInBox().size();
    }

    private int headsOutside() {
        return room.headsIn(cage) + chicksOut();
    }

    private boolean mayBeInside(Bird cock) {
        return Species.of(room.speciesOf(cock))
                .filter(species -> species.cockSleeps() == CockSleeps.INSIDE)
                .isPresent();
    }

    private int chicksTooYoungToLeave() {
        return (int) nest.chicksInBox().stream()
                .filter(chick -> Almanac.mayLeaveBoxFrom(room, chick)
                        .filter(day -> day.isAfter(date))
                        .isPresent())
                .count();
    }

    private int chicksOutForGood() {
        return (int) nest.chicks().stream()
                .flatMap(chick -> chick.chick().flatMap(Chick::outOfBox).stream())
                .filter(day -> !day.plusDays(GOES_BACK_DAYS).isAfter(date))
                .count();
    }

    private Message counted() {
        int heads = headsOutside();
        List<Bird> birds = room.birdsIn(cage);
        int young =
                (int) birds.stream().filter(this::isYoung).count() + (holdsYoung() ? cage.flock() : 0) + chicksOut();
        if (young > 0) {
            return Message.of(young == heads ? "tasks.see-young" : "tasks.see-some-young", heads);
        }
        if (heads > 0 && heads == birds.size() + ofOneKind(Keeps.HENS) && are(birds, Sex.HEN)) {
            return Message.of("tasks.see-hens", heads);
        }
        if (heads > 0 && heads == birds.size() + ofOneKind(Keeps.COCKS) && are(birds, Sex.COCK)) {
            return Message.of("tasks.see-cocks", heads);
        }
        return Message.of("tasks.see-birds", heads);
    }

    private int ofOneKind(Keeps kind) {
        return cage.keeps().filter(kept -> kept == kind).isPresent() ? cage.flock() : 0;
    }

    private static boolean are(List<Bird> birds, Sex sex) {
        return birds.stream().allMatch(bird -> bird.sex() == sex);
    }

    private boolean holdsYoung() {
        return cage.use() == Use.NURSERY
                || cage.keeps().filter(kept -> kept == Keeps.YOUNG).isPresent();
    }

    private boolean isYoung(Bird bird) {
        return bird.hatched().map(this::isYoung).orElseGet(this::holdsYoung);
    }

    private boolean isYoung(String hatched) {
        try {
            return LocalDate.parse(hatched).plusDays(YOUNG_DAYS).isAfter(date);
        } catch (DateTimeParseException yearOnly) {
            return holdsYoung() && hatched.equals(String.valueOf(date.getYear()));
        }
    }
}
