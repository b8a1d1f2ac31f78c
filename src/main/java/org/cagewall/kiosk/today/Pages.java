package org.cagewall.kiosk.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.CountPad;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Questions;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Dishes;
import org.cagewall.room.Reason;
import org.cagewall.room.care.Sign;
import org.cagewall.tasks.Report;
import org.cagewall.tasks.Urgency;
import org.cagewall.text.Words;

/** The pages that take the place of the list for a moment. Used on the event thread. */
final class Pages {

    private static final List<Reason> REASONS = List.of(
            Reason.COULD_NOT_OPEN,
            Reason.NO_TIME,
            Reason.NO_FOOD,
            Reason.NOT_SURE,
            Reason.BIRD_IN_THE_WAY,
            Reason.NOT_NEEDED,
            Reason.SOMETHING_ELSE);

    /** As hot as a thermometer of a room shows, in C. */
    private static final int HOTTEST = 60;

    private final Words words;
    private final Supplier<TodayPresenter> presenter;

    Pages(Words words, Supplier<TodayPresenter> presenter) {
        this.words = words;
        this.presenter = presenter;
    }

    JComponent which(TodayState.Which page) {
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        SideBySide cages = new SideBySide();
        for (String cage : page.cages()) {
            cages.add(TouchButton.of(ButtonKind.OUTLINED, "which." + cage, cage, () -> presenter
                            .get()
                            .which(page.task(), cage))
                    .type(TextStyle.ACTION)
                    .tall(88));
        }
        stack.add(cages);
        return framed(stack, back(), Optional.empty(), Optional.empty());
    }

    JComponent different(TodayState.Different page) {
        List<Choice<Sign>> choices = new ArrayList<>();
        for (Sign sign : Report.choices()) {
            choices.add(new Choice<>(sign.id(), words.say(sign.words()), sign));
        }
        Optional<TodayDraft> draft = presenter.get().draftOf(page);
        Field note = Field.line(
                "note",
                words.say("today.own-words"),
                draft.map(TodayDraft::note).orElse(""));
        Chips<Sign> chips = Chips.someOf(
                        "signs", choices, chosen -> presenter.get().keep(page, chosen, note.value()))
                .choose(draft.map(TodayDraft::signs).orElse(List.of()));
        note.onChange(said -> presenter.get().keep(page, chips.chosen(), said));
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        stack.add(chips);
        stack.add(note);
        Runnable then = () -> presenter.get().tell(page, chips.chosen(), note.value());
        return page.thenAsked()
                ? framed(stack, back(), Optional.of(toQuestions(then)), Optional.empty())
                : framed(stack, back(), Optional.empty(), Optional.of(record(then)));
    }

    JComponent asked(TodayState.Asked page) {
        Questions questions = new Questions(
                words,
                page.questions(),
                presenter.get().draftOf(page).map(TodayDraft::replies).orElse(Map.of()),
                replies -> presenter.get().keep(page, replies));
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        stack.add(new WrapLabel(words.say("shell.questions-how"), TextStyle.LINE, Tone.INK));
        stack.add(questions);
        return framed(stack, back(), Optional.empty(), Optional.of(record(() -> presenter
                .get()
                .answer(page, questions.replies()))));
    }

    JComponent notDone(TodayState.NotDone page) {
        Chips<Reason> chips = Chips.oneOf("why", Choice.of(REASONS, words, "today.why."), chosen -> {});
        Chips<Dishes> dishes = Chips.oneOf("dishes", dishes(), chosen -> {});
        Field note = Field.line("note", words.say("today.own-words"), "");
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        stack.add(chips);
        page.ofDishes().ifPresent(question -> {
            stack.add(new WrapLabel(question, TextStyle.ACTION, Tone.INK));
            stack.add(dishes);
        });
        stack.add(note);
        return framed(stack, back(), Optional.empty(), Optional.of(record(() -> presenter
                .get()
                .tellWhy(page, chips.one(), dishes.one(), note.value()))));
    }

    private List<Choice<Dishes>> dishes() {
        return Stream.of(Dishes.values())
                .map(each -> new Choice<>(each.word(), words.say("today.dishes." + each.word()), each))
                .toList();
    }

    JComponent recorded(TodayState.Recorded page) {
        boolean now = page.urgency() == Urgency.PHONE_NOW;
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        TouchButton phoned = TouchButton.of(
                        now ? ButtonKind.MAIN : ButtonKind.OUTLINED,
                        "phoned",
                        words.say(now ? "today.phoned" : "today.phone-page"),
                        () -> presenter.get().phoned(page.about()))
                .type(TextStyle.LEAD)
                .tall(tall());
        TouchButton goOn = TouchButton.of(
                        now ? ButtonKind.OUTLINED : ButtonKind.MAIN, "go-on", words.say("today.go-on"), () -> presenter
                                .get()
                                .backToTheList())
                .type(TextStyle.LEAD)
                .tall(tall());
        SideBySide calls = new SideBySide();
        calls.add(phoned);
        if (now) {
            page.phones().forEach(phone -> stack.add(number(phone)));
            stack.add(calls);
        }
        stack.add(new WrapLabel(page.text(), TextStyle.LEAD, Tone.INK));
        page.steps().forEach(step -> stack.add(new WrapLabel(step, TextStyle.LINE, Tone.INK)));
        if (!now) {
            stack.add(calls);
        }
        Optional<TouchButton> after = page.after().map(asked -> TouchButton.of(
                        ButtonKind.OUTLINED, "say-more", words.say("today.say-more"), () -> presenter
                                .get()
                                .askAfter(asked))
                .type(TextStyle.LEAD)
                .tall(tall()));
        return framed(stack, goOn, after, Optional.empty());
    }

    JComponent degrees(TodayState.Degrees page) {
        Stack stack = new Stack(12);
        stack.add(title(page.title()));
        stack.add(new WrapLabel(page.text(), TextStyle.LINE, Tone.INK));
        CountPad pad = CountPad.flat(words, "degrees", HOTTEST, degrees -> {});
        Chips<String> below = Chips.someOf(
                "frost",
                List.of(new Choice<>("below-zero", words.say("today.below-zero"), "below-zero")),
                chosen -> {});
        stack.add(pad);
        stack.add(below);
        return framed(stack, back(), Optional.empty(), Optional.of(record(() -> presenter
                .get()
                .tellDegrees(degrees(pad, below)))));
    }

    private static OptionalInt degrees(CountPad pad, Chips<String> below) {
        int sign = below.chosen().isEmpty() ? 1 : -1;
        return pad.value().isPresent() ? OptionalInt.of(sign * pad.value().getAsInt()) : OptionalInt.empty();
    }

    private static Card number(TodayState.Phone phone) {
        Card card = new Card(new MigLayout("insets 12 20 12 20, fillx, gap 16", "[grow,fill][]"));
        card.add(new WrapLabel(phone.name(), TextStyle.LEAD, Tone.INK), "wmin 0, growx");
        card.add(new WrapLabel(phone.number(), TextStyle.BIG, Tone.INK).lines(1));
        return card;
    }

    JComponent safety(TodayState.Safety page) {
        Stack stack = new Stack(12);
        stack.add(title(words.say("today.safety-title")));
        for (TodayState.Caution caution : page.cautions()) {
            Card card = new Card();
            card.add(new WrapLabel(caution.title(), TextStyle.LEAD, Tone.INK), "wmin 0, growx");
            card.add(new WrapLabel(caution.text(), TextStyle.LINE, Tone.INK), "wmin 0, growx");
            stack.add(card);
        }
        Pane pane = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[grow,fill][]"));
        pane.add(new TouchScroll(words, "cautions", stack), "grow");
        pane.add(
                TouchButton.of(ButtonKind.MAIN, "back", words.say("today.go-on"), () -> presenter
                                .get()
                                .backToTheList())
                        .tall(64),
                "growx");
        return pane;
    }

    private static int tall() {
        return Sizes.isLargest() ? 52 : 72;
    }

    private static WrapLabel title(String text) {
        return new WrapLabel(text, TextStyle.TITLE, Tone.INK);
    }

    private TouchButton toQuestions(Runnable then) {
        return TouchButton.of(ButtonKind.MAIN, "to-questions", words.say("today.to-questions"), then)
                .type(TextStyle.LEAD)
                .tall(tall());
    }

    private TouchButton record(Runnable then) {
        return TouchButton.of(ButtonKind.MAIN, "record", words.say("today.record"), then)
                .type(TextStyle.LEAD)
                .tall(tall());
    }

    private TouchButton back() {
        return TouchButton.of(ButtonKind.OUTLINED, "back", words.say("today.go-back"), () -> presenter
                        .get()
                        .backToTheList())
                .type(TextStyle.LEAD)
                .tall(tall());
    }

    /**
     * The answers stay in sight below whatever has to be scrolled: on the left the way back, in the middle the way on, on
     * the right what records. Who touches one of them twice never touches the next page's.
     */
    private JComponent framed(Stack content, TouchButton back, Optional<TouchButton> on, Optional<TouchButton> record) {
        String insets = Sizes.isLargest() ? "insets 12" : "insets 24 28 24 28";
        Card card =
                new Card(new MigLayout(insets + ", fill, wrap 1, gap 0 16", "[grow,fill]", "[grow,fill][]")).leading();
        card.add(new TouchScroll(words, "page", content), "grow");
        Pane buttons = new Pane(new MigLayout(
                "insets 0, fillx, gap 16", "[grow,fill,sizegroup][grow,fill,sizegroup][grow,fill,sizegroup]"));
        buttons.add(back, "cell 0 0, wmin 0");
        buttons.add(on.<JComponent>map(button -> button).orElseGet(Pages::nothing), "cell 1 0, wmin 0");
        buttons.add(record.<JComponent>map(button -> button).orElseGet(Pages::nothing), "cell 2 0, wmin 0");
        card.add(buttons, "growx");
        return card;
    }

    private static JComponent nothing() {
        return new Pane(new MigLayout("insets 0"));
    }
}
