package org.cagewall.demo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.DateOrYear;
import org.cagewall.room.bird.Sex;

/** Rings the birds of the invented birdroom and brings them into it. Seeded; bound to one thread. */
final class DemoBirds {

    /** The breeder's own code on closed rings. */
    static final String OWN_CODE = "HB";

    private static final List<String> COLOURS = List.of(
            "light green",
            "dark green",
            "olive",
            "skyblue",
            "cobalt",
            "mauve",
            "grey",
            "grey green",
            "opaline light green",
            "opaline skyblue",
            "cinnamon grey",
            "cinnamon cobalt",
            "spangle skyblue",
            "spangle grey green",
            "dominant pied green",
            "lutino",
            "albino");

    private final DemoStory story;
    private final Random random;
    private final Map<Integer, Integer> ringsUsed = new TreeMap<>();

    DemoBirds(DemoStory story, Random random) {
        this.story = story;
        this.random = random;
    }

    /** A grown bird, hatched two or three years back. */
    String grown(Sex sex, String cage, int addedDaysAgo) {
        return grown(sex, anyColour(), cage, addedDaysAgo);
    }

    /** A grown bird of that colour. */
    String grown(Sex sex, String colour, String cage, int addedDaysAgo) {
        int year = story.ago(addedDaysAgo).getYear() - 1 - random.nextInt(2);
        String ring = ring(year);
        add(addedDaysAgo, ring, sex, Integer.toString(year), colour, Optional.of(cage), Optional.empty());
        return ring;
    }

    /** A bird bought elsewhere, which wears its breeder's ring. */
    void bought(Sex sex, String breedersCode, int number, String cage, String origin, int addedDaysAgo) {
        int year = story.ago(addedDaysAgo).getYear() - 1;
        String ring = written(breedersCode, year, number);
        add(addedDaysAgo, ring, sex, Integer.toString(year), anyColour(), Optional.empty(), Optional.of(origin));
        story.by(DemoRoom.OWNER, addedDaysAgo)
                .tells(new BirdDeed.BirdMoved(ring, cage, Optional.empty(), Optional.empty()));
    }

    private String anyColour() {
        return COLOURS.get(random.nextInt(COLOURS.size()));
    }

    private void add(
            int daysAgo,
            String ring,
            Sex sex,
            String hatched,
            String colour,
            Optional<String> cage,
            Optional<String> origin) {
        story.by(DemoRoom.OWNER, daysAgo)
                .tells(new BirdDeed.BirdAdded(
                        ring,
                        sex,
                        Optional.empty(),
                        DateOrYear.parse(hatched),
                        Optional.of(colour),
                        Optional.empty(),
                        Optional.empty(),
                        cage,
                        origin,
                        Optional.empty()));
    }

    /** The next closed ring of the year for a chick that is ringed that day: to be asked in the order of the days. */
    String chicksRing(int daysAgo) {
        int year = story.ago(daysAgo).getYear();
        return written(OWN_CODE, year, ringsUsed.merge(year, 1, Integer::sum));
    }

    private String ring(int year) {
        int number = ringsUsed.merge(year, 3 + random.nextInt(4), Integer::sum);
        return written(OWN_CODE, year, number);
    }

    private static String written(String code, int year, int number) {
        return String.format("%s %02d-%03d", code, year % 100, number);
    }
}
