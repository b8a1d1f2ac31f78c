package org.cagewall.kiosk.cards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.PrintedCard;
import org.cagewall.deed.CardDeed;
import org.cagewall.desk.Answer;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.paper.Printers;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFace;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Knows which cards are old, has the chosen ones drawn, and records them as printed only once they are in a file or with
 * the printer. Used on the event thread.
 */
public final class CardsPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Notices notices;
    private final Words words;
    private final CardsJob job;
    private final Shown<CardsState> shown;
    private final Watch watch;

    public CardsPresenter(
            Desk desk, Pen pen, Notices notices, Words words, Printers printers, Consumer<CardsState> view) {
        this.desk = desk;
        this.pen = pen;
        this.notices = notices;
        this.words = words;
        this.job = new CardsJob(
                words, desk.folder().path(), CardsPdf.sheets(desk.folder().labels()), printers);
        this.watch = new Watch(desk, this::refresh, pen, this::refresh);
        this.shown = new Shown<>(first(), view);
    }

    Watch watch() {
        return watch;
    }

    void lookForPrinters() {
        desk.work(book -> job.means(), this::take);
    }

    /** Takes the cage's card to those to be printed, or from them, and looks at it. */
    void touch(String cage) {
        Set<String> others = new LinkedHashSet<>(shown.now().chosen());
        if (!others.remove(cage)) {
            others.add(cage);
        }
        shown.change(state -> state.lookingAt(cage).choosing(others));
    }

    void chooseChanged() {
        shown.change(state -> state.choosing(changed(state.cages())));
    }

    void chooseAll() {
        shown.change(state -> state.choosing(
                state.cages().stream().map(CardsState.CageCard::cage).collect(Collectors.toSet())));
    }

    void chooseNone() {
        shown.change(state -> state.choosing(Set.of()));
    }

    void sheet(String name) {
        shown.change(state -> state.onSheet(name));
        keepChoice();
    }

    void printer(String name) {
        shown.change(state -> state.toPrinter(name));
        keepChoice();
    }

    /** The next time this tablet offers what was chosen last. */
    private void keepChoice() {
        String sheet = shown.now().sheet();
        String printer = shown.now().printer();
        desk.work(
                book -> {
                    KioskSettings.keepForCards(desk.folder().kioskProperties(), sheet, printer);
                    return sheet;
                },
                kept -> {});
    }

    void pencilled(String cage) {
        pen.record(
                List.of(new CardDeed.CardPencilled(cage)),
                desk.today(),
                Optional.empty(),
                Message.of("cardscreen.pencilled", cage),
                room -> shown.change(state -> state.choosing(without(state.chosen(), cage))));
    }

    private static Set<String> without(Set<String> chosen, String cage) {
        return chosen.stream().filter(each -> !each.equals(cage)).collect(Collectors.toSet());
    }

    void save() {
        String sheet = shown.now().sheet();
        make(cards -> job.save(cards, sheet, desk.today()), "cardscreen.saved");
    }

    void print() {
        String sheet = shown.now().sheet();
        String printer = shown.now().printer();
        make(cards -> job.print(cards, sheet, printer, desk.today()), "cardscreen.printed");
    }

    private void make(Function<List<PrintedCard>, CardsJob.Result> how, String done) {
        if (!shown.now().ready()) {
            return;
        }
        List<PrintedCard> cards = cardsToPrint();
        shown.change(state -> state.working(CardsState.Work.MAKING_PAGES));
        desk.work(book -> how.apply(cards), answer -> follow(answer, cards, done));
    }

    private void follow(Answer<CardsJob.Result> answer, List<PrintedCard> cards, String done) {
        if (answer instanceof Answer.Got<CardsJob.Result> got) {
            got.value().problem().ifPresent(why -> say(CardsState.Tone.PROBLEM, words.say(why)));
            got.value()
                    .where()
                    .ifPresent(where -> record(
                            cards,
                            Message.of(done, cards.size(), where),
                            words.say(
                                    done + "-where", where, desk.folder().path().toString())));
        } else if (answer instanceof Answer.Refused<CardsJob.Result> refused) {
            say(CardsState.Tone.PROBLEM, words.sentence(refused.reason()));
        } else if (answer instanceof Answer.Failed<CardsJob.Result> failed) {
            shown.change(state -> state.working(CardsState.Work.NONE));
            notices.failed(failed.code());
        }
    }

    /** Cards that the room has overtaken while they were drawn are on paper, but they are old already. */
    private void record(List<PrintedCard> cards, Message done, String where) {
        Room room = desk.room();
        List<CardDeed.CardPrinted> deeds = cards.stream()
                .filter(card -> room.cage(card.face().cage())
                        .filter(Cage::inUse)
                        .filter(cage -> CardFaces.of(room, cage).equals(card.face()))
                        .isPresent())
                .map(card -> new CardDeed.CardPrinted(card.face().cage(), Optional.empty()))
                .toList();
        say(CardsState.Tone.DONE, where);
        if (!deeds.isEmpty()) {
            pen.record(deeds, desk.today(), Optional.empty(), done, after -> {
                chooseChanged();
                say(CardsState.Tone.DONE, where);
            });
        }
    }

    private void say(CardsState.Tone tone, String sentence) {
        shown.change(state -> state.saying(new CardsState.Said(tone, sentence)));
    }

    private List<PrintedCard> cardsToPrint() {
        Room room = desk.room();
        Set<String> chosen = shown.now().chosen();
        return room.walk()
                .filter(cage -> chosen.contains(cage.name()))
                .map(cage -> PrintedCard.of(room, cage))
                .toList();
    }

    private void take(Answer<CardsJob.Means> answer) {
        if (answer instanceof Answer.Got<CardsJob.Means> got) {
            List<CardsState.SheetChoice> sheets =
                    got.value().sheets().stream().map(this::choice).toList();
            shown.change(state -> state.with(sheets, got.value().printers()));
        } else if (answer instanceof Answer.Refused<CardsJob.Means> refused) {
            say(CardsState.Tone.PROBLEM, words.sentence(refused.reason()));
        } else if (answer instanceof Answer.Failed<CardsJob.Means> failed) {
            notices.failed(failed.code());
        }
    }

    private CardsState.SheetChoice choice(CardsJob.Named named) {
        return new CardsState.SheetChoice(
                named.name(),
                named.found().sheet().map(sheet -> sheet.title()).orElse(named.name()),
                named.found().sheet().map(sheet -> sheet.cards()).orElse(0),
                named.found().reason().map(words::sentence));
    }

    private CardsState first() {
        KioskSettings last = KioskSettings.read(desk.folder().kioskProperties());
        List<CardsState.CageCard> cages = cages(desk.room());
        return new CardsState(
                subtitle(cages),
                may(),
                cages,
                changed(cages),
                cages.stream().findFirst().map(CardsState.CageCard::cage),
                List.of(),
                last.sheet(),
                new CardsState.PrintersFound(Optional.empty()),
                last.printer(),
                CardsState.Work.NONE,
                Optional.empty());
    }

    private void refresh() {
        List<CardsState.CageCard> cages = cages(desk.room());
        Set<String> names = cages.stream().map(CardsState.CageCard::cage).collect(Collectors.toSet());
        shown.change(state -> new CardsState(
                subtitle(cages),
                may(),
                cages,
                state.chosen().stream().filter(names::contains).collect(Collectors.toSet()),
                state.looked()
                        .filter(names::contains)
                        .or(() -> cages.stream().findFirst().map(CardsState.CageCard::cage)),
                state.sheets(),
                state.sheet(),
                state.printers(),
                state.printer(),
                state.work(),
                state.said()));
    }

    private CardsState.May may() {
        return pen.holder().filter(person -> person.role() != Role.SITTER).isPresent()
                ? CardsState.May.PRINT
                : CardsState.May.READ;
    }

    private static Set<String> changed(List<CardsState.CageCard> cages) {
        return cages.stream()
                .filter(each -> each.standing() != CardsState.Standing.UP_TO_DATE)
                .map(CardsState.CageCard::cage)
                .collect(Collectors.toSet());
    }

    private String subtitle(List<CardsState.CageCard> cages) {
        return words.say(
                "cardscreen.subtitle",
                cages.size(),
                count(cages, CardsState.Standing.CHANGED),
                count(cages, CardsState.Standing.NEVER_PRINTED));
    }

    private static long count(List<CardsState.CageCard> cages, CardsState.Standing standing) {
        return cages.stream().filter(each -> each.standing() == standing).count();
    }

    private List<CardsState.CageCard> cages(Room room) {
        List<CardsState.CageCard> cages =
                new ArrayList<>(room.walk().map(cage -> card(room, cage)).toList());
        cages.sort(Comparator.comparing(each -> switch (each.standing()) {
            case CHANGED -> 0;
            case NEVER_PRINTED -> 1;
            case UP_TO_DATE -> 2;
        }));
        return cages;
    }

    private CardsState.CageCard card(Room room, Cage cage) {
        CardFace now = CardFaces.of(room, cage);
        CardsState.Face face = face(now, CardFaces.code(room, cage).text());
        if (cage.card().isEmpty()) {
            return new CardsState.CageCard(
                    cage.name(),
                    CardsState.Standing.NEVER_PRINTED,
                    words.say("cardscreen.never"),
                    words.say(CardFace.useWord(now.use())),
                    List.of(),
                    face);
        }
        List<Message> changes = cage.card().get().face().differences(now);
        String day = words.date(cage.card().get().day());
        return changes.isEmpty()
                ? new CardsState.CageCard(
                        cage.name(),
                        CardsState.Standing.UP_TO_DATE,
                        words.say("cardscreen.up-to-date"),
                        words.say("cardscreen.since", day),
                        List.of(),
                        face)
                : new CardsState.CageCard(
                        cage.name(),
                        CardsState.Standing.CHANGED,
                        words.say("cardscreen.changed", day),
                        words.say("cardscreen.first-change", changes.get(0), changes.size() - 1),
                        changes.stream().map(words::say).toList(),
                        face);
    }

    private CardsState.Face face(CardFace face, String code) {
        List<String> lines = new ArrayList<>();
        face.cock().ifPresent(ring -> lines.add(words.say("cardscreen.cock", ring)));
        face.hen().ifPresent(ring -> lines.add(words.say("cardscreen.hen", ring)));
        lines.addAll(face.lines());
        String head = face.pair()
                .map(label -> words.say("cards.card.pair", label)
                        + face.round()
                                .map(round -> ", " + words.say("cardscreen.round", round))
                                .orElse(""))
                .orElseGet(() -> words.say(CardFace.useWord(face.use())));
        String since =
                face.since().map(day -> words.say("cards.card.since", day)).orElse("");
        return new CardsState.Face(face.cage(), head, since, lines, code);
    }
}
