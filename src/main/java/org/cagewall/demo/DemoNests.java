package org.cagewall.demo;

import java.util.List;
import java.util.Optional;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.ChickDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.EggDeed;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.PartingDeed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.Feet;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.WhyRemoved;

/** Tells how the pairs of the invented birdroom came to where they stand, a stage each. Bound to one thread. */
final class DemoNests {

    /** Cages whose nests the sitter may look into. */
    static final List<String> LOOKED_INTO = List.of("A1", "A3", "A6", "C1", "C2");

    /** Cages that get soft food. */
    static final List<String> FED_SOFT = List.of("A1", "A4", "B3", "B4");

    /** The cage whose card was brought up to date by hand. */
    static final String PENCILLED = "A4";

    /** Hung two days before the owner leaves, so that the first eggs come when the owner is back. */
    private static final int LAST_BOXES_ON = DemoRoom.LEFT + 2;

    private static final String OWNER = DemoRoom.OWNER;
    private static final String KEEPER = DemoRoom.KEEPER;

    private final DemoStory story;
    private final DemoBirds birds;

    DemoNests(DemoStory story, DemoBirds birds) {
        this.story = story;
        this.birds = birds;
    }

    void tell() {
        boxTurned();
        boxOff();
        cockOut();
        secondRoundUnderWay();
        secondRoundAboutToBegin();
        roundsOverlap();
        chicksInTheBox();
        boxOnForLong();
        fullClutches();
        fostered();
        henAlone();
        twoEggsFound();
        boxOnWaiting();
        justPairedUp();
        stillToCome();
        lastDays();
    }

    /** What the owner's friend does in the nests on his last visit of the days away. */
    void keeperComes(int daysAgo) {
        new Nest(KEEPER, "B1").look(daysAgo, 3, Crops.FULL);
        new Nest(KEEPER, "B6").shows(daysAgo, EggFinding.FULL, "4", "5");
    }

    /** The owner's last rounds of the nests. */
    private void lastDays() {
        Nest first = owners("A1");
        Nest young = owners("B6");
        Nest parting = owners("B1");
        young.look(5, 5, Crops.FULL);
        young.ring(5, "3");
        parting.leaves(5, "2");
        owners("C4").lays(5);
        owners(PENCILLED).shows(5, EggFinding.FULL, "1", "2");
        first.shows(3, EggFinding.FULL, "3", "4");
        first.shows(3, EggFinding.CLEAR, "5");
        young.look(3, 5, Crops.PART);
        young.ring(3, "4");
        parting.leaves(3, "3");
        parting.leaves(2, "4");
        young.look(1, 5, Crops.FULL);
        story.by(OWNER, 1).tells(new NestDeed.BoxTurned("B1"));
        owners("C1").lays(4, 2);
        owners("A3").lays(1);
    }

    private void boxTurned() {
        pairUp("B1", 70);
        boxOn("B1", 68);
        Nest nest = owners("B1");
        nest.lays(58, 56, 54, 52, 50);
        nest.shows(50, EggFinding.CLEAR, "1");
        nest.shows(46, EggFinding.FULL, "2", "3", "4");
        nest.shows(40, EggFinding.CLEAR, "5");
        nest.hatches(38, "2");
        nest.hatches(36, "3");
        nest.hatches(34, "4");
        nest.loses(30, WhyRemoved.CLEAR, "1", "5");
        nest.rings(30, "2", "3");
        nest.rings(27, "4");
        story.by(OWNER, 7)
                .noting("One round is enough for so young a hen.")
                .tells(new PartingDeed.PartingBegun("B1", PartedFor.ROUNDS));
    }

    private void boxOff() {
        pairUp("B2", 112, "light green", "skyblue");
        boxOn("B2", 110);
        Nest nest = owners("B2");
        nest.lays(102, 100, 98, 96);
        nest.shows(92, EggFinding.CLEAR, "1");
        nest.shows(92, EggFinding.FULL, "2", "3");
        nest.hatches(82, "2");
        nest.hatches(80, "3");
        nest.loses(76, WhyRemoved.CLEAR, "1");
        nest.loses(74, WhyRemoved.DEAD_IN_SHELL, "4");
        nest.rings(73, "2", "3");
        nest.leaves(50, "2");
        nest.leaves(47, "3");
        nest.weans(40, "2", DemoRoom.NURSERY, Sex.COCK, "light green");
        nest.weans(38, "3", DemoRoom.NURSERY, Sex.HEN, "skyblue");
        endRound("B2", 38, "Two young moved to E2.");
        story.by(OWNER, 12)
                .noting("Two good young. She did not lay again.")
                .tells(new PartingDeed.PartingBegun("B2", PartedFor.ROUNDS));
        story.by(OWNER, 10).tells(new NestDeed.BoxTurned("B2"));
        story.by(OWNER, 8).tells(new NestDeed.BoxOff("B2"));
        story.by(OWNER, 8).tells(new NestDeed.BoxCleaned("B2"));
    }

    private void cockOut() {
        Mates mates = pairUp("B3", 118, "cobalt", "skyblue");
        boxOn("B3", 116);
        Nest nest = owners("B3");
        nest.lays(108, 106, 104, 102, 100);
        nest.shows(98, EggFinding.FULL, "1", "2", "3", "5");
        nest.shows(98, EggFinding.CLEAR, "4");
        nest.hatches(88, "1", "2");
        nest.hatches(86, "3");
        nest.dies(84, "3", "smallest of the nest, found cold");
        nest.loses(78, WhyRemoved.CLEAR, "4");
        nest.loses(78, WhyRemoved.DEAD_IN_SHELL, "5");
        nest.rings(80, "1", "2");
        nest.leaves(55, "1", "2");
        nest.weans(46, "1", DemoRoom.YOUNG, Sex.COCK, "cobalt");
        nest.weans(46, "2", DemoRoom.YOUNG, Sex.HEN, "skyblue");
        endRound("B3", 46, "Two young moved to D3, a third died in the nest.");
        story.by(OWNER, 15).tells(new PartingDeed.PartingBegun("B3", PartedFor.HEN_WORN));
        story.by(OWNER, 14).tells(new NestDeed.BoxTurned("B3"));
        story.by(OWNER, 12).tells(new NestDeed.BoxOff("B3"));
        moveOut(mates.cock(), DemoRoom.COCKS, 9, "she is to rest");
    }

    private void secondRoundUnderWay() {
        pairUp(PENCILLED, 61);
        boxOn(PENCILLED, 59);
        Nest nest = owners(PENCILLED);
        nest.lays(50, 48, 46, 44);
        nest.shows(40, EggFinding.CLEAR, "1", "2", "3", "4");
        story.by(OWNER, 35).tells(new CardDeed.CardPrinted(PENCILLED, Optional.empty()));
        nest.loses(28, WhyRemoved.CLEAR, "1", "2", "3", "4");
        endRound(PENCILLED, 28, "All four clear. Taken out; they may try again.");
        nest.lays(12, 10, 8);
        story.by(OWNER, 8).tells(new CardDeed.CardPencilled(PENCILLED));
    }

    private void secondRoundAboutToBegin() {
        pairUp("C1", 58);
        boxOn("C1", 56);
        Nest nest = owners("C1");
        nest.lays(47, 45, 43, 41, 39);
        nest.loses(30, WhyRemoved.OTHER, "1", "2", "3", "4", "5");
        endRound("C1", 30, "The hen left the nest; eggs cold.");
    }

    /** Chicks of the first round are out, eggs of the second lie in the box. */
    private void roundsOverlap() {
        pairUp("C4", 80);
        boxOn("C4", 78);
        Nest nest = owners("C4");
        nest.lays(68, 66, 64, 62);
        nest.shows(60, EggFinding.CLEAR, "1");
        nest.shows(60, EggFinding.FULL, "2");
        nest.shows(55, EggFinding.FULL, "3", "4");
        nest.hatches(48, "2");
        nest.hatches(46, "3");
        nest.hatches(44, "4");
        nest.loses(43, WhyRemoved.CLEAR, "1");
        nest.rings(40, "2", "3");
        nest.rings(36, "4");
        nest.leaves(15, "2");
        nest.leaves(13, "3");
        nest.leaves(11, "4");
        story.by(OWNER, 10).tells(new NestDeed.RoundBegun("C4"));
        nest.lays(10, 8);
    }

    private void chicksInTheBox() {
        pairUp("B6", 45);
        boxOn("B6", 43);
        Nest nest = owners("B6");
        nest.lays(34, 32, 30, 28, 26);
        nest.shows(26, EggFinding.FULL, "1", "2", "3");
        nest.hatches(14, "1", "2");
        nest.hatches(12, "3");
        nest.hatches(10, "4");
        nest.hatches(8, "5");
        nest.rings(7, "1", "2");
    }

    private void boxOnForLong() {
        pairUp("B5", 33);
        boxOn("B5", LAST_BOXES_ON);
    }

    private void fullClutches() {
        pairUp("A1", 30);
        boxOn("A1", LAST_BOXES_ON);
        Nest first = owners("A1");
        first.lays(17, 15, 13, 11, 9);
        first.shows(9, EggFinding.FULL, "1", "2");
        pairUp("A6", 29);
        boxOn("A6", LAST_BOXES_ON);
        Nest second = owners("A6");
        second.lays(17, 15, 13, 11, 9, 7);
        second.shows(9, EggFinding.FULL, "1");
        second.shows(9, EggFinding.CLEAR, "2");
        pairUp("C2", 31);
        boxOn("C2", LAST_BOXES_ON);
        Nest third = owners("C2");
        third.lays(18, 16, 14, 12);
        third.shows(10, EggFinding.CLEAR, "1", "2", "3");
        story.by(OWNER, 10)
                .noting("Found under the perch, not cracked. Put into the box.")
                .beingSure()
                .tells(new NestDeed.EggLaid("C2", Optional.empty(), Optional.of(EggPlace.FLOOR)));
    }

    /** An egg of a full nest goes to a hen that sits on clear ones. */
    private void fostered() {
        story.by(OWNER, 7)
                .noting("Six are many for her; C2 sits on clear eggs.")
                .tells(new EggDeed.EggMoved("A6", "6", Optional.empty(), "C2", Optional.empty()));
    }

    private void henAlone() {
        Mates mates = pairUp("B4", 27);
        boxOn("B4", LAST_BOXES_ON);
        Nest nest = owners("B4");
        nest.lays(15, 13, 11, 9);
        nest.shows(7, EggFinding.UNSURE, "1", "2");
        moveOut(mates.cock(), DemoRoom.COCKS, 8, "he drove her off the nest");
    }

    private void twoEggsFound() {
        pairUp("C3", 18);
        boxOn("C3", 18);
        story.by(OWNER, 10).guessingTheDay().tells(new NestDeed.EggLaid("C3", Optional.empty(), Optional.empty()));
        owners("C3").lays(8);
    }

    private void boxOnWaiting() {
        pairUp("A2", 15);
        boxOn("A2", 12);
        pairUp("A3", 16);
        boxOn("A3", 14);
    }

    private void justPairedUp() {
        pairUp("A5", 9);
    }

    private void stillToCome() {
        String cock = birds.grown(Sex.COCK, DemoRoom.COCK_FLIGHT, DemoRoom.SET_UP);
        String hen = birds.grown(Sex.HEN, DemoRoom.HEN_FLIGHT, DemoRoom.SET_UP);
        story.by(OWNER, 9).tells(new NestDeed.PairPlanned("C5", cock, hen, Optional.empty()));
        story.by(OWNER, 9).tells(new RoomDeed.CageCleaned("C6"));
    }

    private Mates pairUp(String cage, int daysAgo) {
        return pairUp(
                cage,
                daysAgo,
                new Mates(
                        birds.grown(Sex.COCK, DemoRoom.COCK_FLIGHT, DemoRoom.SET_UP),
                        birds.grown(Sex.HEN, DemoRoom.HEN_FLIGHT, DemoRoom.SET_UP)));
    }

    private Mates pairUp(String cage, int daysAgo, String cocksColour, String hensColour) {
        return pairUp(
                cage,
                daysAgo,
                new Mates(
                        birds.grown(Sex.COCK, cocksColour, DemoRoom.COCK_FLIGHT, DemoRoom.SET_UP),
                        birds.grown(Sex.HEN, hensColour, DemoRoom.HEN_FLIGHT, DemoRoom.SET_UP)));
    }

    private Mates pairUp(String cage, int daysAgo, Mates mates) {
        story.by(OWNER, daysAgo)
                .beingSure()
                .tells(new NestDeed.PairedUp(cage, mates.cock(), mates.hen(), Optional.empty()));
        return mates;
    }

    private void boxOn(String cage, int daysAgo) {
        story.by(OWNER, daysAgo).tells(new NestDeed.BoxOn(cage));
    }

    private void endRound(String cage, int daysAgo, String note) {
        story.by(OWNER, daysAgo).noting(note).tells(new NestDeed.RoundEnded(cage));
    }

    private void moveOut(String bird, String to, int daysAgo, String reason) {
        story.by(OWNER, daysAgo).tells(new BirdDeed.BirdMoved(bird, to, Optional.empty(), Optional.of(reason)));
    }

    private Nest owners(String cage) {
        return new Nest(OWNER, cage);
    }

    /** What one person tells of one nest, egg by egg. */
    private final class Nest {

        private final String person;
        private final String cage;

        Nest(String person, String cage) {
            this.person = person;
            this.cage = cage;
        }

        void lays(int... daysAgo) {
            for (int day : daysAgo) {
                tell(day, new NestDeed.EggLaid(cage, Optional.empty(), Optional.empty()));
            }
        }

        void shows(int daysAgo, EggFinding finding, String... marks) {
            for (String mark : marks) {
                tell(daysAgo, new EggDeed.EggCandled(cage, mark, Optional.empty(), finding));
            }
        }

        void loses(int daysAgo, WhyRemoved why, String... marks) {
            for (String mark : marks) {
                tell(daysAgo, new EggDeed.EggRemoved(cage, mark, Optional.empty(), Optional.of(why)));
            }
        }

        void hatches(int daysAgo, String... marks) {
            for (String mark : marks) {
                tell(daysAgo, new EggDeed.ChickHatched(cage, Optional.of(mark), Optional.empty()));
            }
        }

        void rings(int daysAgo, String... marks) {
            for (String mark : marks) {
                ring(daysAgo, mark);
                tell(daysAgo - 1, new ChickDeed.RingChecked(cage, mark, Optional.empty()));
            }
        }

        void ring(int daysAgo, String mark) {
            story.by(person, daysAgo)
                    .tellsLater(
                            () -> new ChickDeed.ChickRinged(cage, mark, Optional.empty(), birds.chicksRing(daysAgo)));
        }

        void leaves(int daysAgo, String... marks) {
            for (String mark : marks) {
                tell(daysAgo, new ChickDeed.ChickLeftBox(cage, mark, Optional.empty()));
            }
        }

        void weans(int daysAgo, String mark, String to, Sex sex, String colour) {
            tell(
                    daysAgo,
                    new ChickDeed.ChickWeaned(cage, mark, Optional.empty(), to, Optional.of(sex), Optional.of(colour)));
        }

        void dies(int daysAgo, String mark, String likely) {
            tell(daysAgo, new ChickDeed.ChickDied(cage, mark, Optional.empty(), Optional.of(likely)));
        }

        void look(int daysAgo, int chicks, Crops crops) {
            tell(
                    daysAgo,
                    new NestDeed.NestLookedAt(
                            cage,
                            Optional.of(chicks),
                            Optional.of(crops),
                            Optional.of(Feet.CLEAN),
                            Optional.of(false),
                            Optional.of(false)));
        }

        private void tell(int daysAgo, Deed deed) {
            story.by(person, daysAgo).tells(deed);
        }
    }

    /** A cock and a hen by their rings. */
    private record Mates(String cock, String hen) {}
}
