package org.cagewall.kiosk.cards;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.CardsPdf;
import org.cagewall.deed.CardDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.paper.Printers;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardFace;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Knows which cards are old and what has changed on them, and which are to be printed. Used on the event thread.
 */
public final class CardsPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<CardsState> shown;
    private final Refresher watch;
    private final PrintPresenter printing;

    public CardsPresenter(
            Desk desk,
            Pen pen,
            Notices notices,
            Words words,
            Printers printers,
            Consumer<CardsState> view,
            Consumer<PrintState> printView) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        CardsJob job = new CardsJob(
                words, desk.folder().path(), CardsPdf.sheets(desk.folder().labels()), printers);
        this.printing = new PrintPresenter(desk, pen, notices, words, job, this::printed, this::saved, printView);
        this.watch = new Refresher(desk, this::refresh, pen, this::refresh);
        this.shown = new Shown<>(first(), view);
    }

    Refresher watch() {
        return watch;
    }

    PrintPresenter printing() {
        return printing;
    }

    /** Goes on to the paper with the chosen cards. */
    void layOut() {
        CardsState now = shown.now();
        if (now.may() == CardsState.May.PRINT && !now.chosen().isEmpty()) {
            shown.change(state -> state.at(CardsState.Step.PRINTING));
            printing.begin(desk.room()
                    .walk()
                    .map(Cage::name)
                    .filter(now.chosen()::contains)
                    .toList());
        }
    }

    /** Goes on to the paper with the card of this cage alone. */
    void layOutOnly(String cage) {
        shown.change(state -> state.lookingAt(cage).choosing(Set.of(cage)));
        layOut();
    }

    void backToChoosing() {
        shown.change(state -> state.at(CardsState.Step.CHOOSING));
    }

    private void printed(String where) {
        chooseChanged();
        shown.change(state -> state.telling(where));
    }

    /** A file does not hang on a cage: its cards stay due until somebody says that they do. */
    private void saved(String where, List<CardToPrint> cards) {
        shown.change(state -> state.asking(where, cards));
    }

    /** The cards of the last file are printed and hang. */
    void hung() {
        List<CardToPrint> cards = shown.now().saved();
        shown.change(CardsState::answered);
        printing.record(cards, Message.of("cardscreen.hung", cards.size()), after -> chooseChanged());
    }

    void notYetHung() {
        shown.change(CardsState::answered);
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
        shown.change(state -> state.choosing(state.changed()));
    }

    void chooseAll() {
        shown.change(state -> state.choosing(
                state.cages().stream().map(CardsState.CageCard::cage).collect(Collectors.toSet())));
    }

    void chooseNone() {
        shown.change(state -> state.choosing(Set.of()));
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

    private CardsState first() {
        List<CardsState.CageCard> cages = cages(desk.room());
        CardsState nothing = new CardsState(
                subtitle(cages),
                may(),
                CardsState.Step.CHOOSING,
                cages,
                Set.of(),
                cages.stream().findFirst().map(CardsState.CageCard::cage),
                Optional.empty(),
                List.of());
        return nothing.choosing(nothing.changed());
    }

    private void refresh() {
        List<CardsState.CageCard> cages = cages(desk.room());
        Set<String> names = cages.stream().map(CardsState.CageCard::cage).collect(Collectors.toSet());
        CardsState.May may = may();
        shown.change(state -> new CardsState(
                subtitle(cages),
                may,
                may == CardsState.May.PRINT ? state.step() : CardsState.Step.CHOOSING,
                cages,
                state.chosen().stream().filter(names::contains).collect(Collectors.toSet()),
                state.looked()
                        .filter(names::contains)
                        .or(() -> cages.stream().findFirst().map(CardsState.CageCard::cage)),
                state.news(),
                state.saved()));
    }

    private CardsState.May may() {
        return pen.holder().filter(person -> person.role() != Role.SITTER).isPresent()
                ? CardsState.May.PRINT
                : CardsState.May.READ;
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
