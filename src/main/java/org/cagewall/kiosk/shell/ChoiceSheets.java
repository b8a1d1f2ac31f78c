package org.cagewall.kiosk.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.CountPad;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Cage;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Builds the sheets on which something is chosen or written. Used on the event thread. */
public final class ChoiceSheets implements Picking, CardTaker {

    private static final int LIST_HEIGHT = 430;

    private final Overlays overlays;
    private final Words words;
    private Optional<AwaitedCard> awaited = Optional.empty();

    /** A list of cages that is open, and what follows when the card of one is scanned. */
    private record AwaitedCard(JComponent list, Consumer<Cage> then) {}

    public ChoiceSheets(Overlays overlays, Words words) {
        this.overlays = overlays;
        this.words = words;
    }

    @Override
    public void ask(Question question) {
        overlays.ask(question);
    }

    @Override
    public void tell(Message title, Message text) {
        overlays.tell(title, text);
    }

    @Override
    public <T> void pick(Message title, List<Option<T>> options, Consumer<T> then) {
        if (options.isEmpty()) {
            overlays.tell(title, Message.of("shell.nothing-to-pick"));
            return;
        }
        overlays.sheet(title, list(options, then), List.of(leave()));
    }

    @Override
    public void cage(Message title, List<Option<Cage>> options, Consumer<Cage> then) {
        JComponent list = options.isEmpty()
                ? new WrapLabel(words.say("shell.no-cage-to-touch"), TextStyle.LINE, Tone.INK)
                : list(options, then);
        awaited = Optional.of(new AwaitedCard(list, then));
        overlays.sheet(title, list, List.of(leave()));
    }

    /** Whether somebody waits for the card of a cage. */
    public boolean awaitsCard() {
        return awaited.filter(each -> overlays.shows(each.list())).isPresent();
    }

    @Override
    public Optional<Consumer<Cage>> awaited() {
        Optional<AwaitedCard> now = awaited.filter(each -> overlays.shows(each.list()));
        awaited = Optional.empty();
        now.ifPresent(each -> overlays.close());
        return now.map(AwaitedCard::then);
    }

    private <T> Pane list(List<Option<T>> options, Consumer<T> then) {
        Stack rows = new Stack();
        for (Option<T> option : options) {
            rows.add(new ListRow("pick." + option.name(), option.face(), () -> {
                overlays.close();
                then.accept(option.value());
            }));
        }
        Pane list = new Pane(new MigLayout("insets 0, fill", "[grow,fill]", "[" + LIST_HEIGHT + "!,fill]"));
        list.add(new TouchScroll(words, "options", rows));
        return list;
    }

    @Override
    public void count(Message title, int most, IntConsumer then) {
        int[] chosen = {-1};
        CountPad pad = new CountPad(words, "count", most, number -> chosen[0] = number.orElse(-1));
        overlays.sheet(
                title,
                pad,
                List.of(
                        AnswerButton.main("keep", Message.of("shell.keep"), () -> {
                            if (chosen[0] >= 0) {
                                then.accept(chosen[0]);
                            }
                        }),
                        leave()));
    }

    @Override
    public void note(Message title, Consumer<String> then) {
        Field field = Field.note("note", words.say("shell.note"), "");
        overlays.sheet(
                title,
                field,
                List.of(
                        AnswerButton.main("keep", Message.of("shell.keep"), () -> {
                            if (!field.value().isBlank()) {
                                then.accept(field.value());
                            }
                        }),
                        leave()));
        field.focus();
    }

    private static AnswerButton leave() {
        return AnswerButton.leave("leave", Message.of("shell.leave-it-so"));
    }
}
