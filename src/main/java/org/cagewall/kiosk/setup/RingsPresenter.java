package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.almanac.RingColour;
import org.cagewall.almanac.RingLedger;
import org.cagewall.almanac.RingYears;
import org.cagewall.deed.CardDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.room.RingLoss;
import org.cagewall.room.RingStock;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Keeps the rings: those bought, and those written off. Used on the event thread. */
final class RingsPresenter {

    private static final String USUAL_ORDER = "50";

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<RingsState> shown;
    private final Watch watch;

    RingsPresenter(Desk desk, Pen pen, Words words, Consumer<RingsState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Watch(desk, this::refresh);
        this.shown = new Shown<>(state(Optional.empty()), view);
    }

    Watch watch() {
        return watch;
    }

    void add(RingsState.Order order) {
        Optional<String> wrongSize = Names.wrong(order.size(), "setup.write-ring-size");
        Optional<String> wrongForm = Names.wrong(order.form(), "setup.write-ring-form");
        if (wrongSize.isPresent()) {
            wrong("size", wrongSize.get());
        } else if (wrongForm.isPresent() || !RingStock.isForm(order.form().strip())) {
            wrong("form", wrongForm.orElse("setup.write-ring-form"));
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
                            Optional.of(order.form().strip())),
                    Message.of("setup.done.rings", number(order.last()) - number(order.first()) + 1));
        }
    }

    private static boolean isNumber(String written) {
        return written.strip().matches("\\d{1,5}");
    }

    private static int number(String written) {
        return Integer.parseInt(written.strip());
    }

    void writeOff(String ring, RingLoss why) {
        Optional<String> wrong = Names.wrong(ring, "setup.write-ring");
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
        int year = RingYears.ringYear(desk.today(), settings.ringsIssued());
        String next = ledger.next(desk.today(), settings.ringsIssued())
                .map(ring -> words.say("setup.next-ring", ring))
                .orElseGet(() -> words.say("setup.no-ring-left", Integer.toString(year)));
        return new RingsState(ledger.lines().stream().map(this::stock).toList(), next, order(room, year), problem);
    }

    private RingsState.Stock stock(RingLedger.Line line) {
        RingStock stock = line.stock();
        String year = Integer.toString(stock.year());
        return new RingsState.Stock(
                year + "-" + stock.first(),
                Integer.toString(line.left().size()),
                line.colour()
                        .map(colour -> words.say("setup.stock", year, colour(stock.year(), colour), stock.size()))
                        .orElseGet(() -> words.say("setup.stock-plain", year, stock.size())),
                words.say(
                        "setup.stock-line",
                        stock.ring(stock.first()),
                        stock.ring(stock.last()),
                        line.worn(),
                        line.writtenOff()));
    }

    /** Another body's colour beside the world body's, since the owner's society may belong to either. */
    private String colour(int year, RingColour worlds) {
        List<RingColour> elsewhere = RingYears.elsewhere(year);
        return words.say("setup.stock-colours", worlds, elsewhere.size(), elsewhere);
    }

    /** The next order is like the last one, a year on where there are rings of this year already. */
    private static RingsState.Order order(Room room, int year) {
        Optional<RingStock> before =
                room.rings().stream().max((one, other) -> Integer.compare(one.year(), other.year()));
        int of = before.map(stock -> stock.year() >= year ? stock.year() + 1 : year)
                .orElse(year);
        String form = before.map(stock -> stock.form().replace(twoDigits(stock.year()), twoDigits(of)))
                .orElse(RingStock.usualForm(of));
        return new RingsState.Order(of, before.map(RingStock::size).orElse(""), form, "1", USUAL_ORDER);
    }

    private static String twoDigits(int year) {
        return "%02d".formatted(year % 100);
    }
}
