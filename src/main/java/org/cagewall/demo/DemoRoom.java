package org.cagewall.demo;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Line;
import org.cagewall.deed.NewValue;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.room.Keeps;
import org.cagewall.room.Quiet;
import org.cagewall.room.Role;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Way;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.How;
import org.cagewall.room.care.Permission;

/**
 * An invented birdroom to look around in: 24 cages on two walls, two flights and a quarantine cage, and pairs at every
 * stage that can be recorded. Its owner is at home, was away for a few days when few nests were under way, and leaves for
 * a fortnight in some weeks. Its phone numbers ring nowhere: Ofcom keeps 01632 960000 to 960999 for
 * drama. Pure and seeded; any thread.
 */
public final class DemoRoom {

    static final String OWNER = "Ines";
    static final String KEEPER = "Club friend Aldo";
    static final String SITTER = "Tomas";

    static final String NORTH = "North wall";
    static final String EAST = "East wall";

    static final List<String> BREEDING = cages("ABC", 6);

    static final String COCKS = "D1";
    static final String HENS = "D2";
    static final String YOUNG = "D3";
    static final String HOSPITAL = "E1";
    static final String NURSERY = "E2";
    static final String SHOW = "E3";
    static final String COCK_FLIGHT = "Flight 1";
    static final String HEN_FLIGHT = "Flight 2";
    static final String QUARANTINE = "Quarantine";

    /** All cages, in the order in which they are walked. */
    static final List<String> CAGES = allCages();

    /** How many days back the room was set up. */
    static final int SET_UP = 130;

    /** How many days back the owner left for some days, and was back. */
    static final int LEFT = 23;

    static final int BACK = 18;

    /** How many days back the cards were printed. */
    private static final int PRINTED = 7;

    /** How many days back the birds in quarantine were bought. */
    static final int BOUGHT = 12;

    private static final int SCANNED_OF_TEN = 7;

    private static final long SEED = 26_041;

    private final DemoStory story;
    private final DemoBirds birds;
    private final Random random;
    private String illHen = "";

    private DemoRoom(LocalDate today) {
        story = new DemoStory(today);
        random = new Random(SEED);
        birds = new DemoBirds(story, random);
    }

    /** The lines of the room's record as it would stand on that day: to be recorded into an empty room, all at once. */
    public static List<Line> lines(LocalDate today) {
        DemoRoom room = new DemoRoom(today);
        room.setUp();
        room.fillFlights();
        DemoNests nests = new DemoNests(room.story, room.birds);
        nests.tell();
        room.fillStock();
        room.printCards();
        new DemoAbsence(room.story, room.random, nests, room.illHen).tell();
        new DemoHome(room.story, room.random).tell();
        return room.story.lines();
    }

    private void setUp() {
        DemoStory.Teller owner = story.by(OWNER, SET_UP);
        owner.tells(new RoomDeed.PersonAdded(OWNER, Role.OWNER, Optional.of("01632 960142")));
        owner.tells(new RoomDeed.PersonAdded(KEEPER, Role.KEEPER, Optional.of("01632 960177")));
        owner.tells(new RoomDeed.PersonAdded(SITTER, Role.SITTER, Optional.of("01632 960163")));
        owner.tells(RoomDeed.RoomSet.described(
                Optional.of("Birdroom at the lane"),
                Optional.of(NewValue.to(new Quiet(LocalTime.of(21, 30), LocalTime.of(6, 30)))),
                Optional.of(NewValue.to(
                        "Shut the outer door before you open the inner one. No sprays, no perfume, no smoke."))));
        owner.tells(new RoomDeed.WallAdded(NORTH, 3, 6));
        owner.tells(new RoomDeed.WallAdded(EAST, 3, 4));
        for (int i = 0; i < BREEDING.size(); i++) {
            addCage(BREEDING.get(i), NORTH, 1 + i / 6, 1 + i % 6, Use.BREEDING, Optional.empty());
        }
        addCage(COCKS, EAST, 1, 1, Use.STOCK, Optional.of(Keeps.COCKS));
        addCage(HENS, EAST, 1, 2, Use.STOCK, Optional.of(Keeps.HENS));
        addCage(YOUNG, EAST, 1, 3, Use.STOCK, Optional.of(Keeps.YOUNG));
        addCage(COCK_FLIGHT, EAST, 1, 4, Use.FLIGHT, Optional.of(Keeps.COCKS));
        addCage(HOSPITAL, EAST, 2, 1, Use.HOSPITAL, Optional.empty());
        addCage(NURSERY, EAST, 2, 2, Use.NURSERY, Optional.of(Keeps.YOUNG));
        addCage(SHOW, EAST, 2, 3, Use.SHOW, Optional.empty());
        addCage(HEN_FLIGHT, EAST, 2, 4, Use.FLIGHT, Optional.of(Keeps.HENS));
        addCage(QUARANTINE, EAST, 3, 1, Use.QUARANTINE, Optional.empty());
        CAGES.forEach(this::setRoutine);
        Stream.of(story.ago(SET_UP).getYear(), story.ago(0).getYear())
                .distinct()
                .forEach(year -> owner.tells(new CardDeed.RingsBought(
                        year, "4.2 mm", 1, 100, Optional.of("HB %02d-###".formatted(year % 100)), Optional.empty())));
    }

    private void addCage(String cage, String wall, int row, int column, Use use, Optional<Keeps> keeps) {
        story.by(OWNER, SET_UP).tells(new RoomDeed.CageAdded(cage, wall, row, column, use, keeps));
    }

    private void setRoutine(String cage) {
        List<FeedLine> feed = new ArrayList<>();
        if (cage.startsWith("Flight")) {
            feed.add(new FeedLine("seed mix", "3 scoops", DayPart.MORNING));
            feed.add(new FeedLine("greens", "1 handful", DayPart.EVENING));
        } else {
            feed.add(new FeedLine("seed mix", "1 scoop", DayPart.MORNING));
        }
        List<Permission> allowed = new ArrayList<>();
        if (DemoNests.FED_SOFT.contains(cage) || cage.equals(NURSERY)) {
            feed.add(new FeedLine("soft food", "1 spoon", DayPart.MORNING));
            allowed.add(Permission.SOFT_FOOD);
        }
        if (DemoNests.LOOKED_INTO.contains(cage)) {
            allowed.add(Permission.LOOK_IN);
        }
        if (!BREEDING.contains(cage)) {
            allowed.add(Permission.COUNT);
        }
        story.by(OWNER, SET_UP).tells(new RoomDeed.RoutineSet(cage, feed, Optional.of(allowed)));
    }

    private void fillFlights() {
        for (int i = 0; i < 4; i++) {
            birds.grown(Sex.COCK, COCK_FLIGHT, SET_UP);
        }
        illHen = birds.grown(Sex.HEN, HEN_FLIGHT, SET_UP);
        for (int i = 1; i < 4; i++) {
            birds.grown(Sex.HEN, HEN_FLIGHT, SET_UP);
        }
        story.by(OWNER, SET_UP).tells(new BirdDeed.BirdsAdded(3, COCK_FLIGHT));
        story.by(OWNER, SET_UP).tells(new BirdDeed.BirdsAdded(3, HEN_FLIGHT));
        String old = birds.grown(Sex.HEN, HEN_FLIGHT, SET_UP);
        story.by(OWNER, 61)
                .tells(new BirdDeed.BirdLeft(
                        Optional.of(old),
                        Optional.empty(),
                        Optional.empty(),
                        Way.DIED,
                        Optional.empty(),
                        Optional.of("old age, found in the morning")));
    }

    private void fillStock() {
        for (int i = 0; i < 2; i++) {
            birds.grown(Sex.COCK, COCKS, SET_UP);
        }
        for (int i = 0; i < 3; i++) {
            birds.grown(Sex.HEN, HENS, SET_UP);
        }
        birds.grown(Sex.COCK, SHOW, SET_UP);
        birds.grown(Sex.HEN, SHOW, SET_UP);
        birds.bought(Sex.COCK, "LV", 63, QUARANTINE, "bought from a breeder across the valley", BOUGHT);
        birds.bought(Sex.UNKNOWN, "LV", 71, QUARANTINE, "bought from a breeder across the valley", BOUGHT);
    }

    private void printCards() {
        for (String cage : CAGES) {
            boolean bare = List.of("C5", "C6", HOSPITAL).contains(cage);
            if (!bare && !cage.equals(DemoNests.PENCILLED)) {
                story.by(OWNER, PRINTED).tells(new CardDeed.CardPrinted(cage, Optional.empty()));
            }
        }
    }

    /** The rows of both walls one after another, of the east wall those down to the last that holds birds. */
    static List<VisitDeed.RowChecked> rows(DayPart part, int lastOfEast) {
        List<VisitDeed.RowChecked> rows = new ArrayList<>();
        for (int row = 1; row <= 3; row++) {
            rows.add(new VisitDeed.RowChecked(NORTH, row, Optional.of(part)));
        }
        for (int row = 1; row <= lastOfEast; row++) {
            rows.add(new VisitDeed.RowChecked(EAST, row, Optional.of(part)));
        }
        return rows;
    }

    /** Most checks are made with the card. */
    static How how(Random random) {
        return random.nextInt(10) < SCANNED_OF_TEN ? How.SCAN : How.HAND;
    }

    static RoomDeed.RoomRead climate(double high, double low, int humidity) {
        return new RoomDeed.RoomRead(
                Optional.of(BigDecimal.valueOf(high)),
                Optional.of(BigDecimal.valueOf(low)),
                Optional.of(humidity),
                Optional.of(BigDecimal.valueOf(13.5)));
    }

    private static List<String> cages(String rows, int columns) {
        List<String> names = new ArrayList<>();
        for (char row : rows.toCharArray()) {
            for (int column = 1; column <= columns; column++) {
                names.add("" + row + column);
            }
        }
        return List.copyOf(names);
    }

    private static List<String> allCages() {
        List<String> all = new ArrayList<>(BREEDING);
        all.addAll(List.of(COCKS, HENS, YOUNG, COCK_FLIGHT, HOSPITAL, NURSERY, SHOW, HEN_FLIGHT, QUARANTINE));
        return List.copyOf(all);
    }
}
