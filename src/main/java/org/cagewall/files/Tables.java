package org.cagewall.files;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cagewall.almanac.RingLedger;
import org.cagewall.room.Cage;
import org.cagewall.room.Place;
import org.cagewall.room.Room;
import org.cagewall.room.Wall;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Departure;
import org.cagewall.room.bird.LookedOver;
import org.cagewall.room.bird.Outing;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.card.PrintedCard;
import org.cagewall.room.care.Headcount;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickLoss;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.NestMove;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Weaning;
import org.cagewall.text.Message;

/**
 * The record as tables for a spreadsheet, each by the name of its file. Pure; any thread.
 *
 * @param room with every bird, pair and check there ever was
 * @param log every entry
 * @param words the reader's language
 */
record Tables(Room room, List<LogEntry> log, Function<Message, String> words) {

    Map<String, String> byFile() {
        Map<String, String> tables = new LinkedHashMap<>();
        tables.put("birds.csv", birds());
        tables.put("cages.csv", cages());
        tables.put("pairs.csv", pairs());
        tables.put("eggs.csv", eggs());
        tables.put("chicks.csv", chicks());
        tables.put("checks.csv", checks());
        tables.put("entries.csv", entries());
        return tables;
    }

    private String birds() {
        Csv csv = new Csv(List.of(
                "bird",
                "name",
                "sex",
                "species",
                "hatched",
                "colour",
                "father",
                "mother",
                "origin",
                "cage",
                "since",
                "traits",
                "condition",
                "weight",
                "looked-over",
                "treated",
                "out",
                "out-place",
                "out-since",
                "loose",
                "left",
                "how",
                "place",
                "likely",
                "ring-year"));
        for (Bird bird : room.birds()) {
            Optional<Stay> stay = bird.stays().stream().reduce((earlier, later) -> later);
            csv.row(
                    bird.ring(),
                    bird.called(),
                    bird.sex(),
                    bird.species().orElse(room.settings().species()),
                    bird.hatched(),
                    bird.colour(),
                    bird.father().map(room::ring),
                    bird.mother().map(room::ring),
                    bird.origin(),
                    bird.cage().map(room::cageName),
                    stay.filter(it -> bird.isPresent()).map(Stay::since).filter(day -> !day.equals(LocalDate.MIN)),
                    bird.traits(),
                    bird.look().map(LookedOver::condition),
                    bird.look().flatMap(LookedOver::weight),
                    bird.look().map(LookedOver::day),
                    bird.treated(),
                    bird.out().map(Outing::where),
                    bird.out().flatMap(Outing::place),
                    bird.out().map(Outing::since),
                    bird.loose(),
                    bird.left().map(Departure::day),
                    bird.left().map(Departure::how),
                    bird.left().flatMap(Departure::place),
                    bird.left().flatMap(Departure::likely),
                    RingLedger.year(room, bird).map(RingLedger.Year::year));
        }
        return csv.text();
    }

    private String cages() {
        Csv csv = new Csv(List.of(
                "cage",
                "number",
                "wall",
                "row",
                "column",
                "use",
                "keeps",
                "retired",
                "joined-to",
                "birds",
                "unnamed",
                "pair",
                "box-on",
                "box-turned",
                "box-off",
                "box-cleaned",
                "cleaned",
                "counted",
                "count",
                "card"));
        for (Cage cage : room.cages()) {
            csv.row(
                    cage.name(),
                    cage.number(),
                    cage.place().map(Place::wall).flatMap(room::wall).map(Wall::name),
                    cage.place().map(Place::row),
                    cage.place().map(Place::column),
                    cage.use(),
                    cage.keeps(),
                    cage.retired(),
                    cage.joinedTo().map(room::cageName),
                    room.headsIn(cage),
                    cage.flock(),
                    room.pairIn(cage).map(Pair::label),
                    cage.box().on(),
                    cage.box().turned(),
                    cage.box().off(),
                    cage.box().cleaned(),
                    cage.cleaned(),
                    cage.counted().map(Headcount::day),
                    cage.counted().map(Headcount::birds),
                    cage.card().map(PrintedCard::day));
        }
        return csv.text();
    }

    private String pairs() {
        Csv csv = new Csv(List.of("pair", "cage", "cock", "hen", "since", "cock-out", "hen-out", "rounds", "eggs"));
        for (Pair pair : room.pairs()) {
            csv.row(
                    pair.label(),
                    room.cageName(pair.cage()),
                    room.ring(pair.cock()),
                    room.ring(pair.hen()),
                    pair.since(),
                    room.cockOut(pair),
                    room.henOut(pair),
                    pair.rounds().size(),
                    pair.rounds().stream()
                            .mapToInt(round -> round.eggs().size())
                            .sum());
        }
        return csv.text();
    }

    private String eggs() {
        Csv csv = new Csv(List.of(
                "pair",
                "cage",
                "round",
                "mark",
                "laid",
                "about",
                "place",
                "entry",
                "state",
                "candled",
                "findings",
                "pipped",
                "hatched",
                "removed",
                "why",
                "letter",
                "moved",
                "nest"));
        laid().forEach(each -> {
            Egg egg = each.egg();
            csv.row(
                    each.pair().label(),
                    room.cageName(egg.cage()),
                    each.round().number(),
                    egg.mark(),
                    egg.laid(),
                    egg.about(),
                    egg.place(),
                    egg.entry(),
                    egg.state(),
                    egg.candlings().stream().map(Candling::day).toList(),
                    egg.candlings().stream().map(Candling::finding).toList(),
                    egg.pipped(),
                    egg.chick().map(Chick::hatched),
                    egg.removed().map(Removal::day),
                    egg.removed().map(Removal::why),
                    egg.letter(),
                    egg.moves().stream().map(NestMove::day).toList(),
                    room.cageName(egg.nest()));
        });
        return csv.text();
    }

    private String chicks() {
        Csv csv = new Csv(List.of(
                "pair",
                "round",
                "mark",
                "hatched",
                "about",
                "nest",
                "ring",
                "ringed",
                "ring-checked",
                "left-box",
                "weaned",
                "bird",
                "lost",
                "how",
                "likely",
                "traits"));
        laid().forEach(each -> each.egg()
                .chick()
                .ifPresent(chick -> csv.row(
                        each.pair().label(),
                        each.round().number(),
                        each.egg().mark(),
                        chick.hatched(),
                        chick.about(),
                        room.cageName(each.egg().nest()),
                        chick.ringWorn(),
                        chick.ring().map(ChickRing::day),
                        chick.ring().flatMap(ChickRing::checked),
                        chick.outOfBox(),
                        chick.weaned().map(Weaning::day),
                        chick.weaned().map(Weaning::bird).map(room::ring),
                        chick.lost().map(ChickLoss::day),
                        chick.lost().map(loss -> loss.dead() ? "died" : "missing"),
                        chick.lost().flatMap(ChickLoss::likely),
                        chick.traits())));
        return csv.text();
    }

    /** Every egg, by its pair and its round. */
    private Stream<Lying> laid() {
        return room.pairs().stream().flatMap(pair -> pair.rounds().stream()
                .flatMap(round -> round.eggs().stream().map(egg -> new Lying(pair, round, egg))));
    }

    private String checks() {
        Csv csv = new Csv(List.of("entry", "on", "at", "cage", "by", "answer", "how", "when", "signs", "note"));
        for (Visit visit : room.visits()) {
            csv.row(
                    visit.entry(),
                    visit.day(),
                    visit.time(),
                    room.cageName(visit.cage()),
                    visit.person(),
                    visit.answer(),
                    visit.how(),
                    visit.part(),
                    visit.signs(),
                    visit.note());
        }
        return csv.text();
    }

    private String entries() {
        Csv csv = new Csv(List.of(
                "entry", "recorded", "on", "at", "by", "deed", "cages", "words", "note", "struck-by", "struck-why"));
        List<LogEntry> inOrder =
                log.stream().sorted(Comparator.comparing(LogEntry::number)).toList();
        for (LogEntry entry : inOrder) {
            csv.row(
                    entry.number(),
                    entry.recorded(),
                    entry.day(),
                    entry.at(),
                    entry.by(),
                    entry.deed(),
                    entry.cages().stream().map(room::cageName).toList(),
                    words.apply(entry.what()),
                    entry.note(),
                    entry.strike().map(LogEntry.Strike::entry),
                    entry.strike().map(LogEntry.Strike::why));
        }
        return csv.text();
    }
}
