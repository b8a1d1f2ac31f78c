package org.cagewall.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cagewall.almanac.RingLedger;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Place;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.card.PrintedCard;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Pair;
import org.cagewall.tasks.Lapsed;
import org.cagewall.text.Words;

/** What is known of one cage, as sentences and as JSON. Immutable; any thread. */
record ShownCage(Room room, Cage cage, List<LogEntry> entries, Words words, ShownNest nest) {

    static ShownCage of(Room room, Cage cage, List<LogEntry> entries, Words words) {
        return new ShownCage(room, cage, entries, words, ShownNest.of(room, cage, words));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading());
        pair().ifPresent(pair -> lines.add(words.say(
                "command.show.pair", pair.label(), room.ring(pair.cock()), room.ring(pair.hen()), pair.since())));
        lines.add(birds());
        box().forEach(lines::add);
        lines.addAll(nest.lines());
        lines.add(card());
        cage.lastVisit().ifPresent(visit -> lines.add(visit(visit)));
        List<Lapsed> lapsed = lapsed();
        if (!lapsed.isEmpty()) {
            lines.add(words.say("command.show.lapsed"));
            lapsed.forEach(each -> lines.add(words.say(
                    "command.show.lapse",
                    each.since(),
                    each.words(),
                    each.window().latest())));
        }
        if (!entries.isEmpty()) {
            lines.add(words.say("command.show.entries"));
            entries.forEach(entry -> lines.add(entry(entry)));
        }
        return lines;
    }

    Json json() {
        return Json.object()
                .with("cage", cage.name())
                .with("use", cage.use())
                .with("keeps", cage.keeps())
                .with("wall", place(at -> room.wall(at.wall()).orElseThrow().name()))
                .with("row", place(Place::row))
                .with("column", place(Place::column))
                .with("retired", cage.retired())
                .with("joinedTo", cage.joinedTo().map(room::cageName))
                .with("pair", pair().map(this::pairJson))
                .with("birds", room.birdsIn(cage).stream().map(this::birdJson).toList())
                .with("unnamed", cage.flock())
                .with("count", room.headsIn(cage))
                .with("box", boxJson())
                .with("state", nest.state())
                .with("sittingFrom", nest.sittingFrom())
                .with("eggs", nest.eggs())
                .with("chicks", nest.chicks())
                .with("dummies", cage.dummies())
                .with("next", nest.next())
                .with("parting", nest.parting())
                .with("card", cardJson())
                .with("lastCheck", cage.lastVisit().map(this::visitJson))
                .with("unread", room.unreadAt(cage).map(this::visitJson))
                .with("lapsed", lapsed().stream().map(this::lapsedJson).toList())
                .with("entries", entries.stream().map(this::entryJson).toList());
    }

    private Optional<Pair> pair() {
        return room.pairIn(cage);
    }

    private String heading() {
        return place(at -> words.say(
                        "command.show.heading",
                        cage.name(),
                        cage.use(),
                        room.wall(at.wall()).orElseThrow().name(),
                        at.row(),
                        at.column()))
                .filter(it -> cage.inUse())
                .orElseGet(() -> words.say(
                        cage.inUse() ? "command.show.heading-only" : "command.show.heading-out",
                        cage.name(),
                        cage.use()));
    }

    private String birds() {
        List<String> named = room.birdsIn(cage).stream()
                .map(bird -> words.say("command.show.bird", bird.ring(), bird.sex()))
                .toList();
        return words.say(named.isEmpty() ? "command.show.count" : "command.show.birds", room.headsIn(cage), named);
    }

    private List<String> box() {
        return Stream.of(
                        cage.box()
                                .on()
                                .filter(it -> cage.box().isOn())
                                .map(day -> words.say("command.show.box-on", day)),
                        cage.box()
                                .turned()
                                .filter(it -> cage.box().isTurned())
                                .map(day -> words.say("command.show.box-turned", day)))
                .flatMap(Optional::stream)
                .toList();
    }

    private String card() {
        if (cage.card().isEmpty()) {
            return words.say("command.show.no-card");
        }
        LocalDate day = cage.card().get().day();
        List<String> changes =
                CardFaces.changes(room, cage).stream().map(words::say).toList();
        return changes.isEmpty()
                ? words.say("command.show.card", day)
                : words.say("command.show.card-old", day, changes);
    }

    private String visit(Visit visit) {
        String when = visit.time()
                .map(time -> words.say("command.show.day-at", visit.day(), time))
                .orElse(words.date(visit.day()));
        String said = words.say("command.show.check", when, visit.person(), visit.how(), visit.answer());
        String signs = visit.signs().isEmpty() ? said : words.say("command.show.signs", said, Sign.told(visit.signs()));
        return visit.note()
                .map(note -> words.say("command.show.note", signs, note))
                .orElse(signs);
    }

    private String entry(LogEntry entry) {
        String said =
                words.say("command.show.entry", Long.toString(entry.number()), entry.day(), entry.by(), entry.what());
        String noted = entry.note()
                .map(note -> words.say("command.show.note", said, note))
                .orElse(said);
        return entry.strike()
                .map(strike -> words.say("command.show.struck", noted, strike.by(), Reason.told(strike.why())))
                .orElse(noted);
    }

    private <T> Optional<T> place(Function<Place, T> part) {
        return cage.place().map(part);
    }

    private Json pairJson(Pair pair) {
        return Json.object()
                .with("label", pair.label())
                .with("cock", room.ring(pair.cock()))
                .with("hen", room.ring(pair.hen()))
                .with("since", pair.since())
                .with("rounds", pair.rounds().size())
                .with("together", room.together(pair));
    }

    private Json birdJson(Bird bird) {
        Optional<LocalDate> since = bird.stays().stream()
                .reduce((earlier, later) -> later)
                .map(Stay::since)
                .filter(day -> !day.equals(LocalDate.MIN));
        return Json.object()
                .with("bird", bird.ring())
                .with("ringYear", RingLedger.year(room, bird).map(RingLedger.Year::year))
                .with("name", bird.called())
                .with("sex", bird.sex())
                .with("colour", bird.colour())
                .with("hatched", bird.hatched())
                .with("since", since);
    }

    private Json boxJson() {
        return Json.object()
                .with("on", cage.box().on())
                .with("turned", cage.box().turned())
                .with("off", cage.box().off())
                .with("cleaned", cage.box().cleaned())
                .with("hanging", cage.box().isOn() || cage.box().isTurned());
    }

    private Json cardJson() {
        return Json.object()
                .with("code", CardFaces.code(room, cage).text())
                .with("printed", cage.card().map(PrintedCard::day))
                .with("outOfDate", CardFaces.isOutOfDate(room, cage))
                .with(
                        "changes",
                        CardFaces.changes(room, cage).stream().map(words::say).toList());
    }

    private Json visitJson(Visit visit) {
        return Json.object()
                .with("entry", visit.entry())
                .with("on", visit.day())
                .with("at", visit.time())
                .with("by", visit.person())
                .with("answer", visit.answer())
                .with("how", visit.how())
                .with("when", visit.part())
                .with("signs", visit.signs())
                .with("note", visit.note());
    }

    private List<Lapsed> lapsed() {
        return Lapsed.of(room, cage, room.day());
    }

    private Json lapsedJson(Lapsed lapsed) {
        return Json.object()
                .with("kind", lapsed.kind())
                .with("since", lapsed.since())
                .with("words", words.say(lapsed.words()))
                .with("window", Json.of(lapsed.window()));
    }

    private Json entryJson(LogEntry entry) {
        return Json.object()
                .with("entry", entry.number())
                .with("on", entry.day())
                .with("at", entry.at())
                .with("by", entry.by())
                .with("deed", entry.deed())
                .with("words", words.say(entry.what()))
                .with("note", entry.note())
                .with("struck", entry.isStruck())
                .with("why", entry.strike().map(LogEntry.Strike::why));
    }
}
