package org.cagewall.kiosk.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Row;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Questions;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.room.Dishes;
import org.cagewall.room.Reason;
import org.cagewall.room.Sign;
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

    private final Words words;
    private final Supplier<TodayPresenter> presenter;

    Pages(Words words, Supplier<TodayPresenter> presenter) {
        this.words = words;
        this.presenter = presenter;
    }

    JComponent which(TodayState.Which page) {
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        Row cages = new Row();
        for (String cage : page.cages()) {
            cages.add(TouchButton.of(ButtonKind.OUTLINED, "which." + cage, cage, () -> presenter
                            .get()
                            .which(page.task(), cage))
                    .type(Type.ACTION)
                    .tall(88));
        }
        stack.add(cages);
        return framed(stack, List.of(back()));
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
        return framed(
                stack,
                List.of(record(page.then(), () -> presenter.get().tell(page, chips.chosen(), note.value())), back()));
    }

    JComponent asked(TodayState.Asked page) {
        Questions questions = new Questions(words, page.questions());
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        stack.add(new WrapLabel(words.say("shell.questions-how"), Type.LINE, Tone.INK));
        stack.add(questions);
        return framed(stack, List.of(record(() -> presenter.get().answer(page, questions.replies())), back()));
    }

    JComponent notDone(TodayState.NotDone page) {
        Chips<Reason> chips = Chips.oneOf("why", Choice.of(REASONS, words, "today.why."), chosen -> {});
        Chips<Dishes> dishes = Chips.oneOf("dishes", dishes(), chosen -> {});
        Field note = Field.line("note", words.say("today.own-words"), "");
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        stack.add(chips);
        page.ofDishes().ifPresent(question -> {
            stack.add(new WrapLabel(question, Type.ACTION, Tone.INK));
            stack.add(dishes);
        });
        stack.add(note);
        return framed(
                stack,
                List.of(record(() -> presenter.get().tellWhy(page, chips.one(), dishes.one(), note.value())), back()));
    }

    private List<Choice<Dishes>> dishes() {
        return Stream.of(Dishes.values())
                .map(each -> new Choice<>(each.word(), words.say("today.dishes." + each.word()), each))
                .toList();
    }

    JComponent recorded(TodayState.Recorded page) {
        boolean now = page.about()
                .filter(danger -> danger.urgency() == Urgency.PHONE_NOW)
                .isPresent();
        Stack stack = new Stack(16);
        stack.add(title(page.title()));
        if (now) {
            page.phones().forEach(phone -> stack.add(number(phone)));
        }
        stack.add(new WrapLabel(page.text(), Type.LEAD, Tone.INK));
        TouchButton phoned = TouchButton.of(
                        now ? ButtonKind.MAIN : ButtonKind.OUTLINED,
                        "phoned",
                        words.say(now ? "today.phoned" : "today.phone-page"),
                        () -> presenter.get().phoned(page.about()))
                .type(Type.LEAD)
                .tall(tall());
        TouchButton goOn = TouchButton.of(
                        now ? ButtonKind.OUTLINED : ButtonKind.MAIN,
                        "go-on",
                        words.say("today.go-on"),
                        TodayScreen.once(() -> presenter.get().backToTheList()))
                .type(Type.LEAD)
                .tall(tall());
        return framed(stack, now ? List.of(phoned, goOn) : List.of(goOn, phoned));
    }

    private static Card number(TodayState.Phone phone) {
        Card card = new Card(new MigLayout("insets 12 20 12 20, fillx, gap 16", "[grow,fill][]"));
        card.add(new WrapLabel(phone.name(), Type.LEAD, Tone.INK), "wmin 0, growx");
        card.add(new WrapLabel(phone.number(), Type.BIG, Tone.INK).lines(1));
        return card;
    }

    JComponent safety(TodayState.Safety page) {
        Stack stack = new Stack(12);
        stack.add(title(words.say("today.safety-title")));
        for (TodayState.Caution caution : page.cautions()) {
            Card card = new Card();
            card.add(new WrapLabel(caution.title(), Type.LEAD, Tone.INK), "wmin 0, growx");
            card.add(new WrapLabel(caution.text(), Type.LINE, Tone.INK), "wmin 0, growx");
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
        return Measure.isLargest() ? 52 : 72;
    }

    private static WrapLabel title(String text) {
        return new WrapLabel(text, Type.TITLE, Tone.INK);
    }

    private TouchButton record(Runnable then) {
        return record(words.say("today.record"), then);
    }

    private static TouchButton record(String text, Runnable then) {
        return TouchButton.of(ButtonKind.MAIN, "record", text, TodayScreen.once(then))
                .type(Type.LEAD)
                .tall(tall());
    }

    private TouchButton back() {
        return TouchButton.of(ButtonKind.OUTLINED, "back", words.say("today.go-back"), () -> presenter
                        .get()
                        .backToTheList())
                .type(Type.LEAD)
                .tall(tall());
    }

    /** The answers stay in sight below whatever has to be scrolled. */
    private JComponent framed(Stack content, List<TouchButton> answers) {
        String insets = Measure.isLargest() ? "insets 12" : "insets 24 28 24 28";
        Card card =
                new Card(new MigLayout(insets + ", fill, wrap 1, gap 0 16", "[grow,fill]", "[grow,fill][]")).leading();
        card.add(new TouchScroll(words, "page", content), "grow");
        Pane buttons = new Pane(new MigLayout("insets 0, fillx, gap 16", "[grow,fill,sizegroup][grow,fill,sizegroup]"));
        answers.forEach(buttons::add);
        card.add(buttons, "growx");
        return card;
    }
}
