package org.cagewall.kiosk.cards;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.FaceChoice;
import org.cagewall.cards.Order;
import org.cagewall.deed.CardDeed;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Reading;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.paper.Raster;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Stop;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Lays cards out on paper as the person says, has them printed, and records them as printed only once the printer has
 * taken them, or somebody says that those in a file are printed. Used on the event thread.
 */
final class PrintPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Notices notices;
    private final Words words;
    private final CardsJob job;
    private final Consumer<String> onDone;
    private final BiConsumer<String, List<CardToPrint>> onSaved;
    private final Shown<PrintState> shown;
    private Stop stop = new Stop();

    /**
     * A presenter of a page that this view shows.
     *
     * @param onDone told, in words, where the cards are once they are there and recorded
     * @param onSaved told, in words, in which file these cards are; nothing was recorded of them
     */
    PrintPresenter(
            Desk desk,
            Pen pen,
            Notices notices,
            Words words,
            CardsJob job,
            Consumer<String> onDone,
            BiConsumer<String, List<CardToPrint>> onSaved,
            Consumer<PrintState> view) {
        this.desk = desk;
        this.pen = pen;
        this.notices = notices;
        this.words = words;
        this.job = job;
        this.onDone = onDone;
        this.onSaved = onSaved;
        KioskSettings last = KioskSettings.read(desk.folder().kioskProperties());
        FaceChoice faces = FaceChoice.named(last.face()).orElse(FaceChoice.BY_USE);
        this.shown = new Shown<>(PrintState.of(last.sheet(), faces, last.printer()), view);
    }

    /** Begins with the cards of these cages, on whole sheets, one of each. */
    void begin(List<String> cages) {
        shown.change(state -> {
            PrintState cleared = state.isIdle() ? state.working(PrintState.Work.NONE) : state;
            return cleared.ofCages(cages).copied(1).using(Set.of()).previewing(PrintState.Preview.FIRST);
        });
        desk.work(book -> job.means(), this::take);
    }

    private void take(Reading<CardsJob.Means> answer) {
        answer.then(
                means -> {
                    List<PrintState.SheetChoice> sheets =
                            means.sheets().stream().map(this::choice).toList();
                    shown.change(state -> state.with(sheets, means.printers()));
                    look();
                    lookAtPaper();
                },
                this::refused,
                this::failed);
    }

    private PrintState.SheetChoice choice(CardsJob.Named named) {
        return new PrintState.SheetChoice(
                named.name(),
                named.found().sheet().map(Sheet::title).orElse(named.name()),
                named.found().sheet(),
                named.found().reason().map(words::sentence));
    }

    void sheet(String name) {
        shown.change(state -> state.onSheet(name));
        keepChoice();
        look();
        lookAtPaper();
    }

    void face(FaceChoice choice) {
        shown.change(state -> state.with(choice));
        keepChoice();
        look();
    }

    void copies(int times) {
        shown.change(state -> state.copied(times));
        look();
    }

    void printer(String name) {
        shown.change(state -> state.toPrinter(name));
        keepChoice();
        lookAtPaper();
    }

    /** A place that is used already is left out; touched again it is free. */
    void place(int index) {
        Set<Integer> used = new TreeSet<>(shown.now().used());
        if (!used.remove(index)) {
            used.add(index);
        }
        shown.change(state -> state.using(used));
        look();
    }

    /** Looks at the next sheet, or with -1 at the one before. */
    void turn(int by) {
        shown.change(state -> state.turned(by));
        look();
    }

    void allFree() {
        shown.change(state -> state.using(Set.of()));
        look();
    }

    /** The next time this tablet offers what was chosen last. */
    private void keepChoice() {
        PrintState now = shown.now();
        desk.work(
                book -> {
                    KioskSettings.keepForCards(
                            desk.folder().kioskProperties(),
                            now.sheet(),
                            now.faces().word(),
                            now.printer());
                    return now;
                },
                kept -> {});
    }

    private void look() {
        List<CardToPrint> cards = cards();
        Optional<Order> order = shown.now().order();
        if (order.isEmpty() || cards.isEmpty()) {
            shown.change(state -> state.previewing(PrintState.Preview.FIRST));
            return;
        }
        int at = shown.now().at();
        desk.study(
                book -> job.preview(cards, order.get(), at, desk.today()),
                answer -> answer.then(page -> preview(page, order.get(), at), this::refused, this::failed));
    }

    private void preview(Raster page, Order order, int at) {
        PrintState now = shown.now();
        if (now.order().equals(Optional.of(order)) && now.at() == at) {
            shown.change(state -> state.previewing(new PrintState.Preview(at, Optional.of(page))));
        }
    }

    private void lookAtPaper() {
        PrintState now = shown.now();
        Optional<Sheet> sheet = now.theSheet();
        if (sheet.isEmpty() || now.printer().isEmpty()) {
            shown.change(state -> state.doubting(Optional.empty()));
            return;
        }
        desk.work(
                book -> job.doubt(now.printer(), sheet.get().paper()),
                answer -> answer.then(
                        doubt -> shown.change(state -> state.printer().equals(now.printer())
                                        && state.sheet().equals(now.sheet())
                                ? state.doubting(doubt.map(words::say))
                                : state),
                        this::refused,
                        this::failed));
    }

    void save() {
        order().ifPresent(order -> {
            List<CardToPrint> cards = cards();
            shown.change(state -> state.working(new PrintState.Work(PrintState.Work.Kind.SAVING, 0)));
            desk.work(
                    book -> job.save(cards, order, desk.today()),
                    answer -> follow(answer, where -> saved(cards, where)));
        });
    }

    void print() {
        order().ifPresent(order -> {
            List<CardToPrint> cards = cards();
            String printer = shown.now().printer();
            Stop mine = begun();
            desk.<Integer, CardsJob.Result>work(
                    (book, page) -> job.print(cards, order, printer, desk.today(), mine, page::accept),
                    this::at,
                    answer -> follow(answer, where -> printed(cards, where)));
        });
    }

    /** Prints the trial page of the sheet, or saves it where there is no printer; nothing is recorded of it. */
    void trial() {
        PrintState now = shown.now();
        if (!now.isIdle()) {
            return;
        }
        now.theSheet().ifPresent(sheet -> {
            boolean prints = now.printers().areAny();
            Stop mine = begun();
            desk.<Integer, CardsJob.Result>work(
                    (book, page) -> prints
                            ? job.printTrial(sheet, now.printer(), desk.today(), mine, page::accept)
                            : job.saveTrial(sheet, desk.today()),
                    this::at,
                    answer -> follow(
                            answer,
                            where -> shown.change(state -> state.telling(words.say(
                                    prints ? "cardscreen.trial-printed" : "cardscreen.trial-saved",
                                    where,
                                    desk.folder().path().toString())))));
        });
    }

    private Stop begun() {
        stop = new Stop();
        shown.change(state -> state.working(new PrintState.Work(PrintState.Work.Kind.PRINTING, 1)));
        return stop;
    }

    private void at(int page) {
        shown.change(state -> state.work().kind() == PrintState.Work.Kind.PRINTING
                ? state.working(new PrintState.Work(PrintState.Work.Kind.PRINTING, page))
                : state);
    }

    void stop() {
        stop.ask();
        shown.change(state -> state.isIdle()
                ? state
                : state.working(new PrintState.Work(
                        PrintState.Work.Kind.STOPPING, state.work().page())));
    }

    private Optional<Order> order() {
        return shown.now().isReady() ? shown.now().order() : Optional.empty();
    }

    private void follow(Reading<CardsJob.Result> answer, Consumer<String> where) {
        answer.then(
                result -> {
                    result.problem().ifPresent(why -> shown.change(state -> state.failed(words.say(why))));
                    result.where().ifPresent(where);
                    if (result.problem().isEmpty() && result.where().isEmpty()) {
                        shown.change(state -> state.telling(words.say("cardscreen.stopped")));
                    }
                },
                this::refused,
                this::failed);
    }

    private void refused(Message why) {
        shown.change(state -> state.failed(words.sentence(why)));
    }

    private void failed(String code) {
        shown.change(state -> state.working(PrintState.Work.NONE));
        notices.failed(code);
    }

    private void saved(List<CardToPrint> cards, String where) {
        String said =
                words.say("cardscreen.saved-where", where, desk.folder().path().toString());
        shown.change(state -> state.telling(said));
        onSaved.accept(said, cards);
    }

    private void printed(List<CardToPrint> cards, String where) {
        String said = words.say("cardscreen.printed-where", where);
        shown.change(state -> state.telling(said));
        record(cards, Message.of("cardscreen.printed", cards.size(), where), after -> onDone.accept(said));
    }

    /** Cards that the room has overtaken since they were drawn are on paper, but they are old already. */
    void record(List<CardToPrint> cards, Message done, Consumer<Room> then) {
        Room room = desk.room();
        List<CardDeed.CardPrinted> deeds = cards.stream()
                .filter(card -> room.cage(card.face().cage())
                        .filter(Cage::inUse)
                        .filter(cage -> CardFaces.of(room, cage).equals(card.face()))
                        .isPresent())
                .map(card -> new CardDeed.CardPrinted(card.face().cage(), Optional.empty()))
                .toList();
        if (!deeds.isEmpty()) {
            pen.record(deeds, desk.today(), Optional.empty(), done, then);
        }
    }

    private List<CardToPrint> cards() {
        Room room = desk.room();
        List<String> cages = shown.now().cages();
        return room.walk()
                .filter(cage -> cages.contains(cage.name()))
                .map(cage -> CardToPrint.of(room, cage))
                .toList();
    }
}
