package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.almanac.RingLedger;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.RingBody;
import org.cagewall.room.RingsOf;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;
import org.cagewall.room.bird.RingLoss;
import org.cagewall.room.bird.RingStock;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Keeps the rings: those bought, and those written off. Used on the event thread. */
final class RingsPresenter {

    private static final int USUAL_ORDER = 50;

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<RingsState> shown;
    private final Refresher watch;

    RingsPresenter(Desk desk, Pen pen, Words words, Consumer<RingsState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(state(Optional.empty()), view);
    }

    Refresher watch() {
        return watch;
    }

    void add(RingsState.Order order) {
        Optional<String> wrongSize = NameChecks.wrong(order.size(), "setup.write-ring-size");
        Optional<String> wrongForm = NameChecks.wrong(order.form(), "setup.write-ring-form");
        if (wrongSize.isPresent()) {
            wrong("size", wrongSize.get());
        } else if (wrongForm.isPresent() || !RingStock.isForm(order.form().strip())) {
            wrong("form", wrongForm.orElse("setup.write-ring-form"));
        } else if (!order.colour().isBlank()
                && NameChecks.wrong(order.colour(), "setup.write-ring-colour").isPresent()) {
            wrong("colour", "setup.write-ring-colour");
        } else if (!isNumber(order.first())) {
            wrong("first", "setup.write-number");
        } else if (!isNumber(order.last())) {
            wrong("last", "setup.write-number");
        } else if (number(order.last()) < number(order.first())) {
            wrong("last", "setup.rings-order");
        } else {
            record(
                    new CardDeed.RingsBought(
                            order.year(),
                            order.size().strip(),
                            number(order.first()),
                            number(order.last()),
                            Optional.of(order.form().strip()),
                            Optional.of(order.colour().strip()).filter(colour -> !colour.isEmpty())),
                    Message.of("setup.done.rings", number(order.last()) - number(order.first()) + 1));
        }
    }

    /** Whose rings they are: their page of colours holds, if it is known. */
    void body(RingBody body) {
        set(new RoomDeed.RingsSet(Optional.empty(), Optional.of(body)));
    }

    /** Of which year rings are when they are issued. */
    void of(RingsOf of) {
        set(new RoomDeed.RingsSet(Optional.of(of), Optional.empty()));
    }

    private void set(RoomDeed.RingsSet deed) {
        pen.record(
                List.of(deed), desk.today(), Optional.empty(), Message.of("setup.done.rings-set"), room -> refresh());
    }

    private static boolean isNumber(String written) {
        return written.strip().matches("\\d{1,5}");
    }

    private static int number(String written) {
        return Integer.parseInt(written.strip());
    }

    void writeOff(String ring, RingLoss why) {
        Optional<String> wrong = NameChecks.wrong(ring, "setup.write-ring");
        if (wrong.isPresent()) {
            wrong("off", wrong.get());
        } else {
            record(
                    new CardDeed.RingSpoilt(ring.strip(), Optional.of(why)),
                    Message.of("setup.done.ring-off", ring.strip()));
        }
    }

    private void record(CardDeed deed, Message done) {
        pen.record(List.of(deed), desk.today(), Optional.empty(), done, room -> refresh());
    }

    private void wrong(String part, String key) {
        shown.change(state -> state.wrong(part, words.say(key)));
    }

    private void refresh() {
        shown.change(state -> state(Optional.empty()));
    }

    private RingsState state(Optional<Problem> problem) {
        Room room = desk.room();
        RingLedger ledger = RingLedger.of(room);
        Settings settings = room.settings();
        int year = settings.ringIssue().ringYear(desk.today());
        String next = ledger.next(desk.today(), settings.ringIssue(), settings.species())
                .map(ring -> words.say("setup.next-ring", ring))
                .orElseGet(() -> words.say("setup.no-ring-left", Integer.toString(year), settings.species()));
        return new RingsState(
                ledger.lines().stream().map(this::stock).toList(),
                next,
                order(room, year),
                settings.ringIssue().of(),
                settings.rings().body(),
                problem);
    }

    private RingsState.Stock stock(RingLedger.Line line) {
        RingStock stock = line.stock();
        String year = Integer.toString(stock.year());
        return new RingsState.Stock(
                year + "-" + stock.first(),
                Integer.toString(line.left().size()),
                line.colour()
                        .map(colour -> words.say("setup.stock", year, colour.word(), stock.size()))
                        .orElseGet(() -> words.say("setup.stock-plain", year, stock.size())),
                words.say(
                        "setup.stock-line",
                        stock.ring(stock.first()),
                        stock.ring(stock.last()),
                        line.worn(),
                        line.writtenOff()));
    }

    /** The next order is like the last one, a year on where there are rings of this year already. */
    private static RingsState.Order order(Room room, int year) {
        Optional<RingStock> before =
                room.rings().stream().max((one, other) -> Integer.compare(one.year(), other.year()));
        int of = before.map(stock -> stock.year() >= year ? stock.year() + 1 : year)
                .orElse(year);
        String form = before.map(stock -> stock.form().replace(twoDigits(stock.year()), twoDigits(of)))
                .orElse(RingStock.usualForm(of));
        String size = before.map(RingStock::size).orElse("");
        return new RingsState.Order(
                of,
                size,
                form,
                "",
                Integer.toString(firstFree(room, of, size)),
                Integer.toString(firstFree(room, of, size) + USUAL_ORDER - 1));
    }

    /** Each size of a year has numbers of its own: the first that comes after those there are. */
    private static int firstFree(Room room, int year, String size) {
        return room.rings().stream()
                        .filter(stock -> stock.year() == year && stock.size().equals(size))
                        .mapToInt(RingStock::last)
                        .max()
                        .orElse(0)
                + 1;
    }

    private static String twoDigits(int year) {
        return "%02d".formatted(year % 100);
    }
}
