package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.RingBody;
import org.cagewall.room.RingsOf;
import org.cagewall.room.bird.RingLoss;
import org.cagewall.text.Words;

/** The rings there are on the left; on the right those that are added, and one that is written off. Event thread. */
final class RingsPart extends Part {

    private static final int OLDEST_YEAR = 1990;
    private static final int LAST_YEAR = 2199;

    private final Words words;
    private final Stack list = new Stack();
    private final Stack side = new Stack(16);
    private final RingsPresenter presenter;
    private Optional<RingsState> before = Optional.empty();

    RingsPart(Desk desk, Pen pen, Words words) {
        super(new MigLayout(
                "insets 0, fill, gap 24 12, hidemode 3",
                "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]",
                "[0:0,grow,fill][]"));
        this.words = words;
        view.add(new TouchScroll(words, "rings", list), "grow, wmin 0, hmin 0");
        view.add(new TouchScroll(words, "order", side), "grow, wmin 0, hmin 0, wrap");
        view.add(problem, "span 2, growx, wmin 0");
        presenter = new RingsPresenter(desk, pen, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void render(RingsState state) {
        boolean others = before.filter(old -> old.stocks().equals(state.stocks())
                        && old.next().equals(state.next())
                        && old.of() == state.of()
                        && old.body().equals(state.body()))
                .isEmpty();
        if (others) {
            fillList(state);
            fillSide(state);
        }
        problem.say(state.problem());
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    private void fillList(RingsState state) {
        list.removeAll();
        WrapLabel next = new WrapLabel(state.next(), TextStyle.LEAD, Tone.INK);
        next.setName("next-ring");
        list.add(next);
        for (RingsState.Stock stock : state.stocks()) {
            ListRow row = new ListRow(
                    "stock." + stock.name(), RowFace.of(stock.left(), stock.first(), stock.second()), () -> {});
            list.add(row);
        }
        if (state.stocks().isEmpty()) {
            list.add(new WrapLabel(words.say("setup.no-rings"), TextStyle.LINE, Tone.SOFT));
        }
    }

    private void fillSide(RingsState state) {
        side.removeAll();
        problem.forgetFields();
        RingsState.Order order = state.order();
        Stepper year = new Stepper(
                words, "year", words.say("setup.ring-year"), OLDEST_YEAR, LAST_YEAR, order.year(), number -> {});
        Field first = problem.about("first", Field.line("first", words.say("setup.ring-first"), order.first()));
        Field last = problem.about("last", Field.line("last", words.say("setup.ring-last"), order.last()));
        Field size = problem.about("size", Field.line("size", words.say("setup.ring-size"), order.size()));
        Field form = problem.about("form", Field.line("form", words.say("setup.ring-form"), order.form()));
        Field colour = problem.about("colour", Field.line("colour", words.say("setup.ring-colour"), order.colour()));
        Pane numbers = new Pane(new MigLayout(
                "insets 0, fillx, gap 16 0", "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]", "[top]"));
        numbers.add(first, "wmin 0");
        numbers.add(last, "wmin 0");
        side.add(card(
                new WrapLabel(words.say("setup.rings-new"), TextStyle.LEAD, Tone.INK),
                year,
                size,
                form,
                new WrapLabel(words.say("setup.ring-form-text"), TextStyle.SECOND, Tone.SOFT),
                colour,
                numbers,
                TouchButton.of(
                                ButtonKind.MAIN,
                                "add-rings",
                                words.say("setup.add-rings"),
                                () -> presenter.add(new RingsState.Order(
                                        year.value(),
                                        size.value(),
                                        form.value(),
                                        colour.value(),
                                        first.value(),
                                        last.value())))
                        .type(TextStyle.LEAD)
                        .tall(72)));
        side.add(card(
                new WrapLabel(words.say("setup.ring-body"), TextStyle.LEAD, Tone.INK),
                Chips.oneOf("ring-body", Choice.of(RingBody.values(), words, "word.ringbody."), body -> {
                            if (!state.body().equals(Optional.of(body))) {
                                presenter.body(body);
                            }
                        })
                        .choose(state.body().stream().toList()),
                new WrapLabel(words.say("setup.ring-body-text"), TextStyle.SECOND, Tone.SOFT),
                new WrapLabel(words.say("setup.rings-of"), TextStyle.LEAD, Tone.INK),
                Chips.oneOf("rings-of", Choice.of(RingsOf.values(), words, "word.ringsof."), of -> {
                            if (of != state.of()) {
                                presenter.of(of);
                            }
                        })
                        .choose(List.of(state.of()))));
        Field ring = problem.about("off", Field.line("off", words.say("setup.ring-off"), ""));
        Chips<RingLoss> why = Chips.oneOf("why", Choice.of(RingLoss.values(), words, "word.ringloss."), any -> {})
                .choose(List.of(RingLoss.SPOILT));
        side.add(card(
                new WrapLabel(words.say("setup.ring-off-title"), TextStyle.LEAD, Tone.INK),
                ring,
                why,
                TouchButton.of(
                                ButtonKind.PLAIN,
                                "write-off",
                                words.say("setup.write-off"),
                                () -> presenter.writeOff(ring.value(), why.one().orElse(RingLoss.SPOILT)))
                        .tall(64)));
    }
}
