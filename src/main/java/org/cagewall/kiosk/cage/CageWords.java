package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.room.Species;
import org.cagewall.room.WhoSits;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Lapsed;
import org.cagewall.tasks.Reckoned;
import org.cagewall.tasks.Sight;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;
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

    String subtitle(Cage cage, Optional<Outlook> nest, Optional<String> scanned) {
        List<String> parts = new ArrayList<>();
        room.pairIn(cage)
                .ifPresentOrElse(
                        pair -> {
                            parts.add(words.say("cage.pair", pair.label()));
                            parts.add(sitting(nest)
                                    .orElseGet(() -> words.say("cage.since", words.shortDay(pair.since()))));
                        },
                        () -> parts.add(words.say("cage.use", cage.use(), room.headsIn(cage))));
        scanned.ifPresent(parts::add);
        return String.join(DOT, parts);
    }

    private Optional<String> sitting(Optional<Outlook> nest) {
        return nest.filter(it -> !it.eggsHere().isEmpty())
                .flatMap(Outlook::sittingFrom)
                .filter(sat -> !sat.foreseen() && !sat.day().isAfter(today))
                .map(sat -> words.say(sat.about() ? "cage.sitting-about" : "cage.sitting", words.shortDay(sat.day())))
                .map(since -> nest.flatMap(CageWords::whoSits)
                        .filter(who -> who != WhoSits.HEN)
                        .map(who -> words.say("cage.sits." + Message.word(who), since))
                        .orElse(since));
    }

    private static Optional<WhoSits> whoSits(Outlook nest) {
        return Species.of(nest.timetable().species()).map(Species::sits);
    }

    /** What a sitter reads who is not to look into the box: what there is to see from outside. */
    Optional<CageState.Nest> leftAlone(Cage cage) {
        return room.pairIn(cage)
                .map(pair -> new CageState.Nest(
                        words.say("cage.to-see"),
                        "",
                        List.of(),
                        List.of(
                                words.say("cage.see", Sight.of(Reckoned.of(room, today), cage, today)),
                                words.say("cage.leave-nest")),
                        Optional.empty()));
    }

    /** A line of the sitter's list as it stands on its cage's page. */
    CageState.Chore chore(Task task) {
        boolean reported = task.cage().flatMap(room::cage).stream()
                .flatMap(cage -> room.visitsOf(cage, today).stream())
                .anyMatch(Visit::isDifferent);
        boolean look = task.kind().isALook() && !reported;
        String answer = look && task.kind() == Kind.MORNING && !isJustLookedAt(task)
                ? "cage.fed-well"
                : look ? "cage.all-well" : "cage.chore-done";
        return new CageState.Chore(
                words.say(task.words()),
                task.see().map(see -> words.say("tasks.see-should", see)),
                task.how().stream().map(words::say).toList(),
                words.say(answer),
                look ? CageState.Chore.Answered.ALL_WELL : CageState.Chore.Answered.DONE);
    }

    private boolean isJustLookedAt(Task task) {
        return task.cage()
                .flatMap(room::cage)
                .filter(cage -> room.absenceOn(today)
                        .filter(absence -> absence.leaveAlone().contains(cage.id()))
                        .isEmpty())
                .isEmpty();
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

    /** The entries, newest first, and before the first that is no younger what lapsed on a day. */
    List<CageState.PastFace> past(List<LogEntry> log, List<Lapsed> lapsed) {
        List<CageState.PastFace> past = new ArrayList<>();
        List<Lapsed> left = new ArrayList<>(lapsed);
        for (LogEntry entry : log) {
            while (!left.isEmpty() && left.get(0).since().isAfter(entry.day())) {
                past.add(lapsed(left.remove(0)));
            }
            past.add(entry(entry));
        }
        left.forEach(each -> past.add(lapsed(each)));
        return past;
    }

    private CageState.LapsedFace lapsed(Lapsed lapsed) {
        return new CageState.LapsedFace(
                day(lapsed.since()),
                words.say(
                        "cage.lapsed",
                        lapsed.words(),
                        words.shortDay(lapsed.window().latest())));
    }

    private String day(LocalDate day) {
        return day.equals(today)
                ? words.say("cage.today")
                : day.equals(today.minusDays(1)) ? words.say("cage.yesterday") : words.shortDay(day);
    }

    private CageState.EntryFace entry(LogEntry entry) {
        String day = day(entry.day());
        String when = entry.at().map(time -> day + " " + words.time(time)).orElse(day);
        String how = entry.how().map(each -> ", " + words.say("cage.how", each)).orElse("");
        String note = entry.note().map(text -> DOT + firstLine(text)).orElse("");
        return new CageState.EntryFace(
                entry.number(),
                entry.touch(),
                when,
                words.say(entry.what()) + note + DOT + entry.by() + how,
                entry.isStruck(),
                entry.cages().size(),
                Optional.of(entry.line()));
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
