package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cagewall.room.Bird;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Egg;
import org.cagewall.room.EggPlace;
import org.cagewall.room.LogEntry;
import org.cagewall.room.Pair;
import org.cagewall.room.Room;
import org.cagewall.room.Round;
import org.cagewall.room.Sex;
import org.cagewall.text.Words;

/** Puts a cage into the words of its page. Pure; any thread. */
final class CageWords {

    private static final String DOT = " \u00b7 ";

    private final Room room;
    private final LocalDate today;
    private final Words words;

    CageWords(Room room, LocalDate today, Words words) {
        this.room = room;
        this.today = today;
        this.words = words;
    }

    String subtitle(Cage cage, Optional<String> scanned) {
        List<String> parts = new ArrayList<>();
        room.pairIn(cage)
                .ifPresentOrElse(
                        pair -> {
                            parts.add(words.say("cage.pair", pair.label()));
                            parts.add(words.say("cage.since", words.shortDay(pair.since())));
                        },
                        () -> parts.add(words.say("cage.use", cage.use(), room.headsIn(cage))));
        scanned.ifPresent(parts::add);
        return String.join(DOT, parts);
    }

    Optional<CageState.Nest> nest(Cage cage) {
        return room.pairIn(cage).map(pair -> {
            List<CageState.EggFace> eggs = pair.openRound().map(Round::eggs).orElse(List.of()).stream()
                    .map(this::egg)
                    .toList();
            return new CageState.Nest(words.say("cage.in-the-box"), round(pair), eggs, box(cage, pair));
        });
    }

    private String round(Pair pair) {
        return pair.openRound()
                .map(round ->
                        words.say("cage.round", round.number(), round.eggs().size()))
                .orElse(words.say("cage.no-round"));
    }

    private String box(Cage cage, Pair pair) {
        if (room.henOut(pair).isPresent()) {
            return words.say("cage.hen-out", room.henOut(pair).get());
        }
        if (room.cockOut(pair).isPresent()) {
            return words.say("cage.cock-out", room.cockOut(pair).get());
        }
        if (cage.box().isTurned()) {
            return words.say("cage.box-turned", cage.box().turned().orElseThrow());
        }
        if (cage.box().isOn()) {
            return words.say("cage.box-on", cage.box().on().orElseThrow());
        }
        return words.say("cage.box-none");
    }

    private CageState.EggFace egg(Egg egg) {
        String laid = words.shortDay(egg.laid());
        String line = egg.place() == EggPlace.BOX ? laid : words.say("cage.egg-place", laid, egg.place());
        return new CageState.EggFace(
                egg.mark(), line, words.say("cage.egg", egg.mark(), words.date(egg.laid())), egg.entry());
    }

    List<CageState.BirdFace> birds(Cage cage) {
        return room.birdsIn(cage).stream()
                .sorted((one, other) -> one.sex().compareTo(other.sex()))
                .map(this::bird)
                .toList();
    }

    Optional<String> flock(Cage cage) {
        return cage.flock() > 0 ? Optional.of(words.say("cage.flock", cage.flock())) : Optional.empty();
    }

    private CageState.BirdFace bird(Bird bird) {
        List<String> parts = new ArrayList<>();
        bird.colour().ifPresent(parts::add);
        bird.look()
                .map(look -> words.say("cage.looked", look.condition(), words.shortDay(look.day())))
                .or(bird::called)
                .or(() -> bird.hatched().map(hatched -> words.say("cage.hatched", hatched.substring(0, 4))))
                .ifPresent(parts::add);
        String sex = words.say("cage.sex."
                + (bird.sex() == Sex.UNKNOWN ? "bird" : bird.sex().name().toLowerCase(Locale.ROOT)));
        return new CageState.BirdFace(bird.id(), sex, bird.ring(), String.join(DOT, parts));
    }

    List<CageState.EntryFace> entries(List<LogEntry> log) {
        return log.stream().map(this::entry).toList();
    }

    private CageState.EntryFace entry(LogEntry entry) {
        String day = entry.day().equals(today)
                ? words.say("cage.today")
                : entry.day().equals(today.minusDays(1)) ? words.say("cage.yesterday") : words.shortDay(entry.day());
        String when = entry.at().map(time -> day + " " + words.time(time)).orElse(day);
        String how = entry.how().map(each -> ", " + words.say("cage.how", each)).orElse("");
        String note = entry.note().map(text -> DOT + firstLine(text)).orElse("");
        return new CageState.EntryFace(
                entry.number(),
                entry.touch(),
                when,
                words.say(entry.what()) + note + DOT + entry.by() + how,
                entry.isStruck());
    }

    private static String firstLine(String text) {
        return text.lines().findFirst().orElse("");
    }

    Optional<String> card(Cage cage) {
        if (!CardFaces.isOutOfDate(room, cage)) {
            return Optional.empty();
        }
        return Optional.of(words.say(
                "cage.card-changed",
                CardFaces.changes(room, cage).stream().map(words::say).collect(Collectors.joining("; "))));
    }
}
