package org.cagewall.kiosk.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.DateStrip;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.text.Words;

/** A plan in the making: the days at the left, the people and cages at the right. Used on the event thread. */
final class PlanPage extends Pane {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST_DAYS_AHEAD = 730;
    private static final int LONGEST_DAYS_BACK = 31;

    private final transient Words words;
    private final transient Supplier<HandoverPresenter> presenter;
    private final TouchButton first;
    private final TouchButton last;
    private final DateStrip days;

    PlanPage(Words words, HandoverState.Editing editing, Supplier<HandoverPresenter> presenter) {
        super(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[grow,fill][]"));
        this.words = words;
        this.presenter = presenter;
        this.first = day("first-day", HandoverState.Side.FIRST_DAY);
        this.last = day("last-day", HandoverState.Side.LAST_DAY);
        HandoverState.Draft draft = editing.draft();
        this.days = new DateStrip(
                words,
                "days",
                editing.today(),
                editing.today().minusDays(LONGEST_DAYS_BACK),
                editing.today().plusDays(LONGEST_DAYS_AHEAD),
                draft.from(),
                day -> presenter.get().day(day));
        if (Sizes.px(100) > 100) {
            Stack all = new Stack(20);
            all.add(when());
            all.add(who(editing));
            add(new TouchScroll(words, "plan", all), "grow, wmin 0");
        } else {
            Pane halves = new Pane(new MigLayout("insets 0, fill, gap 24 0", "[520!,fill][grow,fill]", "[grow,fill]"));
            halves.add(when(), "wmin 0, growy 0, aligny top");
            halves.add(new TouchScroll(words, "plan", who(editing)), "wmin 0");
            add(halves, "grow, wmin 0");
        }
        add(buttons(), "growx");
        show(editing);
    }

    private TouchButton day(String name, HandoverState.Side side) {
        return TouchButton.of(ButtonKind.PLAIN, name, "", () -> presenter.get().side(side))
                .type(TextStyle.BUTTON)
                .tall(52);
    }

    private Card when() {
        Card card = new Card(new MigLayout("insets 12 16 12 16, fillx, wrap 1, gap 0 8", "[grow,fill]"));
        Pane both = new Pane(new MigLayout("insets 0, fillx, gap 12", "[grow,fill,sizegroup][grow,fill,sizegroup]"));
        both.add(first, "wmin 0");
        both.add(last, "wmin 0");
        card.add(both, "growx");
        card.add(days, "growx");
        return card;
    }

    private Stack who(HandoverState.Editing editing) {
        HandoverState.Draft draft = editing.draft();
        Stack stack = new Stack(16);
        stack.add(Labelled.of(
                words.say("handover.sitter"),
                Chips.oneOf("sitter", names(editing.people()), name -> presenter
                                .get()
                                .sitter(name))
                        .choose(draft.sitter().stream().toList())));
        List<Choice<Optional<String>>> others = new ArrayList<>();
        others.add(new Choice<>("nobody", words.say("handover.none"), Optional.empty()));
        editing.people().forEach(name -> others.add(new Choice<>(name, name, Optional.of(name))));
        stack.add(Labelled.of(
                words.say("handover.second"),
                Chips.oneOf("second", others, name -> presenter.get().second(name))
                        .choose(List.of(draft.second()))));
        stack.add(Field.line("vet", words.say("handover.vet"), draft.vet())
                .onChange(text -> presenter.get().vet(text)));
        stack.add(Labelled.of(
                words.say("handover.alone"),
                Chips.someOf("alone", names(editing.cages()), chosen -> presenter
                                .get()
                                .leaveAlone(List.copyOf(chosen)))
                        .choose(draft.leaveAlone())));
        stack.add(Labelled.of(
                words.say("handover.feeder"),
                Chips.oneOf("feeder", others, name -> presenter.get().feeder(name))
                        .choose(List.of(draft.feeder()))));
        return stack;
    }

    private static List<Choice<String>> names(List<String> names) {
        return names.stream().map(name -> new Choice<>(name, name, name)).toList();
    }

    private Pane buttons() {
        Pane buttons = new Pane(new MigLayout("insets 0, fillx, gap 16", "[grow,fill,sizegroup][grow,fill,sizegroup]"));
        buttons.add(TouchButton.of(ButtonKind.MAIN, "save", words.say("handover.save"), () -> presenter
                        .get()
                        .save())
                .type(TextStyle.LEAD)
                .tall(64));
        buttons.add(TouchButton.of(ButtonKind.OUTLINED, "back", words.say("handover.go-back"), () -> presenter
                        .get()
                        .backToThePlan())
                .type(TextStyle.LEAD)
                .tall(64));
        return buttons;
    }

    /** Shows the days as they are now; the chips and the field show themselves. */
    void show(HandoverState.Editing editing) {
        HandoverState.Draft draft = editing.draft();
        boolean picksFirst = editing.side() == HandoverState.Side.FIRST_DAY;
        first.setText(words.say("handover.first-day", words.shortDay(draft.from())));
        last.setText(words.say("handover.last-day", words.shortDay(draft.to())));
        first.kind(picksFirst ? ButtonKind.OUTLINED : ButtonKind.QUIET);
        last.kind(picksFirst ? ButtonKind.QUIET : ButtonKind.OUTLINED);
        days.choose(picksFirst ? draft.from() : draft.to());
    }
}
