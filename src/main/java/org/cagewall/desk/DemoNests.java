package org.cagewall.desk;

import java.util.List;
import java.util.Optional;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.room.EggPlace;
import org.cagewall.room.Sex;

/** Tells how the pairs of the invented birdroom came to where they stand, a stage each. Bound to one thread. */
final class DemoNests {

    /** Cages whose nests the sitter may look into. */
    static final List<String> LOOKED_INTO = List.of("A1", "A3", "A6", "C1", "C2");

    /** Cages that get soft food. */
    static final List<String> FED_SOFT = List.of("A1", "A4", "B3", "B4");

    /** The cage whose card was brought up to date by hand. */
    static final String PENCILLED = "A4";

    private static final String OWNER = DemoRoom.OWNER;

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
        boxOnForLong();
        fullClutches();
        henAlone();
        twoEggsFound();
        boxOnWaiting();
        justPairedUp();
        stillToCome();
    }

    private void boxTurned() {
        Mates mates = pairUp("B1", 96);
        boxOn("B1", 94);
        lay("B1", 86, 84, 82, 80, 78);
        endRound("B1", 34, "Three young out and eating on their own.");
        birds.young(Sex.UNKNOWN, DemoRoom.NURSERY, mates.cock(), mates.hen(), 66, 34);
        birds.young(Sex.UNKNOWN, DemoRoom.NURSERY, mates.cock(), mates.hen(), 64, 34);
        birds.young(Sex.UNKNOWN, DemoRoom.NURSERY, mates.cock(), mates.hen(), 62, 34);
        story.by(OWNER, 7).tells(new NestDeed.BoxTurned("B1"));
    }

    private void boxOff() {
        Mates mates = pairUp("B2", 112);
        boxOn("B2", 110);
        lay("B2", 102, 100, 98, 96);
        endRound("B2", 44, "Two young moved to D3.");
        birds.young(Sex.COCK, DemoRoom.YOUNG, mates.cock(), mates.hen(), 82, 44);
        birds.young(Sex.HEN, DemoRoom.YOUNG, mates.cock(), mates.hen(), 80, 44);
        story.by(OWNER, 10).tells(new NestDeed.BoxTurned("B2"));
        story.by(OWNER, 8).tells(new NestDeed.BoxOff("B2"));
        story.by(OWNER, 8).tells(new NestDeed.BoxCleaned("B2"));
    }

    private void cockOut() {
        Mates mates = pairUp("B3", 118);
        boxOn("B3", 116);
        lay("B3", 108, 106, 104, 102, 100);
        endRound("B3", 47, "Two young moved to D3, a third died in the nest.");
        birds.young(Sex.COCK, DemoRoom.YOUNG, mates.cock(), mates.hen(), 88, 47);
        birds.young(Sex.HEN, DemoRoom.YOUNG, mates.cock(), mates.hen(), 86, 47);
        story.by(OWNER, 14).tells(new NestDeed.BoxTurned("B3"));
        story.by(OWNER, 12).tells(new NestDeed.BoxOff("B3"));
        moveOut(mates.cock(), DemoRoom.COCKS, 9, "season over");
    }

    private void secondRoundUnderWay() {
        pairUp(PENCILLED, 74);
        boxOn(PENCILLED, 72);
        lay(PENCILLED, 63, 61, 59, 57);
        story.by(OWNER, 40).tells(new CardDeed.CardPrinted(PENCILLED, Optional.empty()));
        endRound(PENCILLED, 38, "All four clear. Taken out; they may try again.");
        lay(PENCILLED, 12, 10, 8);
        story.by(OWNER, 8).tells(new CardDeed.CardPencilled(PENCILLED));
    }

    private void secondRoundAboutToBegin() {
        pairUp("C1", 58);
        boxOn("C1", 56);
        lay("C1", 47, 45, 43, 41, 39);
        endRound("C1", 20, "The hen left the nest; eggs cold.");
    }

    private void boxOnForLong() {
        pairUp("B5", 33);
        boxOn("B5", 30);
    }

    private void fullClutches() {
        pairUp("A1", 30);
        boxOn("A1", 28);
        lay("A1", 17, 15, 13, 11, 9);
        pairUp("A6", 29);
        boxOn("A6", 27);
        lay("A6", 17, 15, 13, 11, 9, 7);
        pairUp("C2", 31);
        boxOn("C2", 28);
        lay("C2", 18, 16, 14, 12);
        story.by(OWNER, 10)
                .noting("Found under the perch, not cracked. Put into the box.")
                .tells(new NestDeed.EggLaid("C2", Optional.empty(), Optional.of(EggPlace.FLOOR)));
    }

    private void henAlone() {
        Mates mates = pairUp("B4", 27);
        boxOn("B4", 25);
        lay("B4", 15, 13, 11, 9);
        moveOut(mates.cock(), DemoRoom.COCKS, 8, "he drove her off the nest");
    }

    private void twoEggsFound() {
        pairUp("C3", 22);
        boxOn("C3", 20);
        story.by(OWNER, 10).guessingTheDay().tells(new NestDeed.EggLaid("C3", Optional.empty(), Optional.empty()));
        lay("C3", 8);
    }

    private void boxOnWaiting() {
        pairUp("A2", 15);
        boxOn("A2", 12);
        pairUp("A3", 16);
        boxOn("A3", 14);
    }

    private void justPairedUp() {
        pairUp("A5", 9);
        pairUp("B6", 7);
    }

    private void stillToCome() {
        String cock = birds.grown(Sex.COCK, DemoRoom.COCK_FLIGHT, DemoRoom.SET_UP);
        String hen = birds.grown(Sex.HEN, DemoRoom.HEN_FLIGHT, DemoRoom.SET_UP);
        story.by(OWNER, 9).tells(new NestDeed.PairPlanned("C5", cock, hen, Optional.empty()));
        story.by(OWNER, 9).tells(new RoomDeed.CageCleaned("C4"));
        story.by(OWNER, 9).tells(new RoomDeed.CageCleaned("C6"));
    }

    private Mates pairUp(String cage, int daysAgo) {
        Mates mates = new Mates(
                birds.grown(Sex.COCK, DemoRoom.COCK_FLIGHT, DemoRoom.SET_UP),
                birds.grown(Sex.HEN, DemoRoom.HEN_FLIGHT, DemoRoom.SET_UP));
        story.by(OWNER, daysAgo).tells(new NestDeed.PairedUp(cage, mates.cock(), mates.hen(), Optional.empty()));
        return mates;
    }

    private void boxOn(String cage, int daysAgo) {
        story.by(OWNER, daysAgo).tells(new NestDeed.BoxOn(cage));
    }

    private void lay(String cage, int... daysAgo) {
        for (int day : daysAgo) {
            story.by(OWNER, day).tells(new NestDeed.EggLaid(cage, Optional.empty(), Optional.empty()));
        }
    }

    private void endRound(String cage, int daysAgo, String note) {
        story.by(OWNER, daysAgo).noting(note).tells(new NestDeed.RoundEnded(cage));
    }

    private void moveOut(String bird, String to, int daysAgo, String reason) {
        story.by(OWNER, daysAgo).tells(new BirdDeed.BirdMoved(bird, to, Optional.empty(), Optional.of(reason)));
    }

    /** A cock and a hen by their rings. */
    private record Mates(String cock, String hen) {}
}
