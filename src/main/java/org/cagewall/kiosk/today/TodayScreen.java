package org.cagewall.kiosk.today;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Begun;
import org.cagewall.kiosk.shell.Breadth;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.room.care.DayPart;
import org.cagewall.tasks.Audience;
import org.cagewall.text.Words;

/** The day's list, and when to stop and phone beside it or, where it is narrow, above. Used on the event thread. */
public final class TodayScreen extends HeadedScreen {

    private final Words words;
    private final Breadth breadth;
    private final boolean isList;
    private final SideBySide choices = new SideBySide();
    private final TodayPresenter presenter;
    private Optional<TodayState> last = Optional.empty();

    public TodayScreen(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Words words,
            Breadth breadth,
            Halfway<TodayDraft> halfway,
            Destination.Today here) {
        this(desk, pen, navigator, asking, words, breadth, halfway, here, Optional.empty());
    }

    /** What is different at a cage, in the one flow in which that is told wherever one comes from. */
    public TodayScreen(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Words words,
            Breadth breadth,
            Halfway<TodayDraft> halfway,
            Destination.Different at) {
        this(desk, pen, navigator, asking, words, breadth, halfway, new Destination.Today(), Optional.of(at));
    }

    private TodayScreen(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Words words,
            Breadth breadth,
            Halfway<TodayDraft> halfway,
            Destination.Today here,
            Optional<Destination.Different> different) {
        super(new MigLayout(
                "insets 0, fill, gap 20", breadth.isRoomy() ? "[grow,fill][332!,fill]" : "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.breadth = breadth;
        this.isList = different.isEmpty();
        if (breadth.isRoomy()) {
            heading.beside(choices);
        }
        if (!Sizes.isLargest()) {
            heading.beside(TouchButton.of(
                    ButtonKind.PLAIN,
                    "scan",
                    words.say("scanscreen.button"),
                    () -> navigator.go(new Destination.Scan())));
        }
        presenter = new TodayPresenter(desk, pen, navigator, asking, words, halfway, here, different, this::render);
        presenter.takeUp();
    }

    @Override
    public boolean leavesRoomAside() {
        return true;
    }

    @Override
    public boolean isBegun() {
        return last.filter(state -> state.page() instanceof TodayState.Asked || Begun.in(view))
                .filter(state -> state.page().isForm())
                .isPresent();
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(TodayState state) {
        heading.say(state.title(), state.subtitle());
        if (isList && last.filter(before -> sameChoices(before, state)).isEmpty()) {
            buildChoices(state);
        }
        last = Optional.of(state);
        view.removeAll();
        if (breadth.isRoomy()) {
            view.add(page(state), "wmin 0");
            view.add(new StopPanel(words, state.stop(), danger -> presenter.alarm(danger), () -> presenter.safety()));
        } else {
            boolean choosing = isList && (state.page() instanceof TodayState.Lines || !Sizes.isLargest());
            view.add(choosing ? below(top(state), page(state)) : page(state), "wmin 0");
        }
        rebuilt();
    }

    /** What is touched above the list; in the largest letters the owner, who has more to choose, goes without cautions. */
    private SideBySide top(TodayState state) {
        SideBySide top = new SideBySide();
        top.add(choices);
        top.add(TouchButton.of(
                ButtonKind.URGENT, "stop", words.say("today.stop"), () -> presenter.phoned(Optional.empty())));
        if (!Sizes.isLargest() || state.mayChoose().size() < 2) {
            top.add(TouchButton.of(ButtonKind.PLAIN, "safety", words.say("today.safety"), () -> presenter.safety()));
        }
        return top;
    }

    private static Pane below(JComponent top, JComponent page) {
        Pane both = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[][grow,fill]"));
        both.add(top, "growx, wmin 0");
        both.add(page, "wmin 0");
        return both;
    }

    private static boolean sameChoices(TodayState one, TodayState other) {
        return one.audience() == other.audience()
                && one.part() == other.part()
                && one.mayChoose().equals(other.mayChoose());
    }

    private void buildChoices(TodayState state) {
        choices.removeAll();
        if (state.mayChoose().size() > 1) {
            List<Choice<Audience>> whose = new ArrayList<>();
            state.mayChoose()
                    .forEach(audience -> whose.add(new Choice<>(
                            audience.name().toLowerCase(java.util.Locale.ROOT),
                            words.say("today." + audience.name().toLowerCase(java.util.Locale.ROOT)),
                            audience)));
            choices.add(new Segment<>("whose", whose, audience -> presenter.choose(audience)).choose(state.audience()));
        }
        if (state.audience() == Audience.SITTER) {
            List<Choice<DayPart>> parts = List.of(
                    new Choice<>("morning", words.say("today.morning"), DayPart.MORNING),
                    new Choice<>("evening", words.say("today.evening"), DayPart.EVENING));
            choices.add(new Segment<>("part", parts, part -> presenter.choose(part)).choose(state.part()));
        }
        choices.revalidate();
    }

    private JComponent page(TodayState state) {
        TodayState.Page page = state.page();
        Pages pages = new Pages(words, () -> presenter);
        if (page instanceof TodayState.Lines lines) {
            return new ListPage(words, lines, () -> presenter);
        }
        if (page instanceof TodayState.Which which) {
            return pages.which(which);
        }
        if (page instanceof TodayState.Different different) {
            return pages.different(different);
        }
        if (page instanceof TodayState.Asked asked) {
            return pages.asked(asked);
        }
        if (page instanceof TodayState.NotDone notDone) {
            return pages.notDone(notDone);
        }
        if (page instanceof TodayState.Recorded recorded) {
            return pages.recorded(recorded);
        }
        if (page instanceof TodayState.Degrees degrees) {
            return pages.degrees(degrees);
        }
        return pages.safety((TodayState.Safety) page);
    }
}
