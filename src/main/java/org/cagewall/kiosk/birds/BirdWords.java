package org.cagewall.kiosk.birds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.almanac.RingLedger;
import org.cagewall.kiosk.kit.AgeWords;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.list.LogFace;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.room.Cage;
import org.cagewall.room.Place;
import org.cagewall.room.Room;
import org.cagewall.room.Wall;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.LookedOver;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Words;

/** Puts birds into the words of their page. Pure; any thread. */
final class BirdWords {

    private static final String DOT = " \u00b7 ";
    private static final int YEAR = 4;
    private static final int STAYS_TOLD = 5;

    private final Room room;
    private final LocalDate today;
    private final Words words;

    BirdWords(Room room, LocalDate today, Words words) {
        this.room = room;
        this.today = today;
        this.words = words;
    }

    BirdsState.Row row(Bird bird) {
        String cage = bird.cage().map(room::cageName).orElse("");
        String first = bird.ring() + bird.called().map(name -> DOT + name).orElse("");
        RowFace face = RowFace.of(cage, first, line(bird));
        return new BirdsState.Row(bird.ring(), tagged(face, bird));
    }

    private RowFace tagged(RowFace face, Bird bird) {
        if (bird.left().isPresent()) {
            return face.tagged(
                            TagKind.PLAIN,
                            words.say("birds.is", bird.left().get().how()))
                    .in(RowFace.State.DONE);
        }
        if (bird.loose()) {
            return face.tagged(TagKind.DIFFERENT, words.say("birds.is-loose")).in(RowFace.State.DIFFERENT);
        }
        return bird.out()
                .map(out -> face.tagged(TagKind.DUE, words.say("birds.is", out.words())))
                .orElse(face);
    }

    /** Sex, colour and age in one line. */
    String line(Bird bird) {
        return String.join(
                DOT,
                Stream.of(Optional.of(sex(bird)), bird.colour(), bird.hatched().map(this::age))
                        .flatMap(Optional::stream)
                        .toList());
    }

    private String sex(Bird bird) {
        return words.say("birds.sex." + bird.sex().name().toLowerCase(Locale.ROOT));
    }

    /** How old a bird is, as exactly as its hatching was told. */
    String age(String hatched) {
        return AgeWords.of(hatched, today, words);
    }

    List<BirdsState.Known> known(Bird bird) {
        List<BirdsState.Known> known = new ArrayList<>();
        add(known, "now", Optional.of(now(bird)));
        add(known, "name", bird.called());
        add(known, "ring-year", RingLedger.year(room, bird).map(this::ringYear));
        add(known, "split-ring", bird.splitRing());
        add(known, "hatched", bird.hatched().map(this::hatched));
        add(known, "father", bird.father().map(this::parent));
        add(known, "mother", bird.mother().map(this::parent));
        add(known, "paired", paired(bird));
        add(known, "looked", bird.look().map(this::look));
        add(known, "treated", bird.treated().map(words::date));
        add(known, "traits", traits(bird));
        add(known, "origin", bird.origin());
        add(known, "stays", stays(bird));
        return known;
    }

    private String ringYear(RingLedger.Year ring) {
        String year = Integer.toString(ring.year());
        return ring.colour()
                .map(colour -> words.say("birds.ring-year", year, colour.word()))
                .orElse(year);
    }

    private String look(LookedOver look) {
        return look.weight()
                .map(grams -> words.say(
                        "birds.looked-weighed",
                        look.condition(),
                        grams.stripTrailingZeros().toPlainString(),
                        look.day()))
                .orElseGet(() -> words.say("birds.looked", look.condition(), look.day()));
    }

    private void add(List<BirdsState.Known> known, String what, Optional<String> value) {
        value.ifPresent(it -> known.add(new BirdsState.Known(words.say("birds.known." + what), it)));
    }

    private String now(Bird bird) {
        if (bird.left().isPresent()) {
            return words.say(
                    "birds.left-on",
                    bird.left().get().how(),
                    bird.left().get().day(),
                    bird.left().get().place().map(place -> ", " + place).orElse(""));
        }
        String cage = bird.cage().map(room::cageName).orElseGet(() -> words.say("birds.no-cage"));
        if (bird.loose()) {
            return words.say("birds.loose-from", cage);
        }
        return bird.out()
                .map(out -> words.say("birds.out-since", out.words(), out.since(), cage))
                .orElse(cage);
    }

    private String hatched(String hatched) {
        String day = hatched.length() == YEAR ? hatched : words.date(LocalDate.parse(hatched));
        return words.say("birds.hatched-on", day, age(hatched));
    }

    private String parent(long id) {
        return room.bird(id).map(Bird::ring).orElseGet(() -> words.say("birds.parent-gone"));
    }

    private Optional<String> paired(Bird bird) {
        return room.pairs().stream()
                .filter(room::together)
                .filter(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())
                .findFirst()
                .map(pair -> words.say(
                        "birds.paired",
                        pair.label(),
                        room.ring(pair.cock() == bird.id() ? pair.hen() : pair.cock()),
                        pair.since()));
    }

    private Optional<String> traits(Bird bird) {
        return bird.traits().isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(
                        ", ",
                        bird.traits().stream()
                                .distinct()
                                .map(trait -> words.say(
                                        words.knows("word.trait." + trait)
                                                ? "word.trait." + trait
                                                : "birds.trait." + trait))
                                .toList()));
    }

    /** Where it has stood, the newest stay first; the first of all has no day. */
    private Optional<String> stays(Bird bird) {
        List<Stay> stays = bird.stays();
        if (stays.size() < 2) {
            return Optional.empty();
        }
        List<String> told = new ArrayList<>();
        for (int i = stays.size() - 1; i >= 0 && told.size() < STAYS_TOLD; i--) {
            String cage = room.cageName(stays.get(i).cage());
            told.add(
                    i == 0
                            ? words.say("birds.first-stay", cage)
                            : words.say(
                                    "birds.stay",
                                    cage,
                                    words.shortDay(stays.get(i).since())));
        }
        return Optional.of(String.join(", ", told));
    }

    LogFace entry(LogEntry entry) {
        String day = entry.day().equals(today)
                ? words.say("birds.today")
                : entry.day().equals(today.minusDays(1)) ? words.say("birds.yesterday") : words.shortDay(entry.day());
        String when = entry.at().map(time -> day + " " + words.time(time)).orElse(day);
        String note = entry.note()
                .flatMap(text -> text.lines().findFirst())
                .map(text -> DOT + text)
                .orElse("");
        return new LogFace(when, words.say(entry.what()) + note + DOT + entry.by(), entry.isStruck());
    }

    /** The walls with the cages that are in use, each with how many birds stand in it. */
    List<WallPlan> walls() {
        return room.walls().stream().map(this::plan).toList();
    }

    private WallPlan plan(Wall wall) {
        List<WallPlan.Spot> spots = new ArrayList<>();
        room.walk().forEach(cage -> cage.place()
                .filter(place -> place.wall() == wall.id())
                .ifPresent(place -> spots.add(spot(cage, place))));
        return new WallPlan(wall.name(), wall.rows(), wall.columns(), spots);
    }

    private WallPlan.Spot spot(Cage cage, Place place) {
        String heads = words.say("birds.heads", room.headsIn(cage));
        return new WallPlan.Spot(
                place.row(),
                place.column(),
                cage.name(),
                cage.name(),
                heads,
                words.say("birds.cage-said", cage.name(), heads, cage.use()),
                WallPlan.Look.CAGE);
    }
}
