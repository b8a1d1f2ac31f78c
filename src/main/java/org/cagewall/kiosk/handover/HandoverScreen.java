package org.cagewall.kiosk.handover;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.paper.Printers;
import org.cagewall.text.Words;

/** Days away, before and after. Used on the event thread. */
public final class HandoverScreen extends HeadedScreen {

    private final Words words;
    private final Segment<HandoverState.Tab> tabs;
    private final HandoverPresenter presenter;
    private Optional<PlanPage> planPage = Optional.empty();
    private Optional<ReviewPage> reviewPage = Optional.empty();
    private Optional<GlancePage> glancePage = Optional.empty();
    private Optional<ReadyPage> readyPage = Optional.empty();

    public HandoverScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Notices notices, Words words) {
        this(desk, pen, navigator, asking, notices, words, Printers.ofThisMachine());
    }

    HandoverScreen(
            Desk desk, Pen pen, Navigator navigator, Asking asking, Notices notices, Words words, Printers printers) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.tabs = new Segment<>(
                "tab",
                List.of(
                        new Choice<>("going-away", words.say("handover.going-away"), HandoverState.Tab.GOING_AWAY),
                        new Choice<>(
                                "what-happened", words.say("handover.what-happened"), HandoverState.Tab.WHAT_HAPPENED)),
                this::choose);
        if (Sizes.isRoomy()) {
            heading.beside(tabs);
        }
        presenter = new HandoverPresenter(desk, pen, navigator, asking, notices, words, printers, this::render);
    }

    private void choose(HandoverState.Tab tab) {
        presenter.choose(tab);
    }

    @Override
    public void shown() {
        super.shown();
        presenter.arrived();
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(HandoverState state) {
        heading.say(state.title(), state.subtitle());
        tabs.choose(state.tab());
        if (state.page() instanceof HandoverState.Editing editing && planPage.isPresent()) {
            planPage.get().show(editing);
            return;
        }
        if (state.page() instanceof HandoverState.Happened happened && isShown(happened)) {
            reviewPage.ifPresent(page -> page.show(happened));
            glancePage.ifPresent(page -> page.show(happened));
            return;
        }
        if (state.page() instanceof HandoverState.Planned planned && readyPage.isPresent()) {
            readyPage.get().show(planned);
            return;
        }
        planPage = Optional.empty();
        reviewPage = Optional.empty();
        glancePage = Optional.empty();
        readyPage = Optional.empty();
        show(page(state));
    }

    private boolean isShown(HandoverState.Happened happened) {
        return happened.view() instanceof HandoverState.AtAGlance ? glancePage.isPresent() : reviewPage.isPresent();
    }

    /** In the largest letters a plan that is being written has the whole place. */
    private void show(JComponent page) {
        view.removeAll();
        if (Sizes.isRoomy() || Sizes.isLargest() && planPage.isPresent()) {
            view.add(page, "wmin 0");
        } else {
            Pane both = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[][grow,fill]"));
            both.add(tabs, "growx 0");
            both.add(page, "wmin 0");
            view.add(both, "wmin 0");
        }
        rebuilt();
    }

    private JComponent page(HandoverState state) {
        if (state.page() instanceof HandoverState.Editing editing) {
            PlanPage page = new PlanPage(words, editing, () -> presenter);
            planPage = Optional.of(page);
            return page;
        }
        if (state.page() instanceof HandoverState.OneMoment) {
            return new EmptyState(words.say("handover.one-moment"), words.say("handover.one-moment-text"), List.of());
        }
        if (state.page() instanceof HandoverState.Happened happened
                && happened.view() instanceof HandoverState.AtAGlance) {
            GlancePage page = new GlancePage(words, happened, presenter::review);
            glancePage = Optional.of(page);
            return page;
        }
        if (state.page() instanceof HandoverState.Happened happened) {
            ReviewPage page = new ReviewPage(words, happened, presenter::review);
            reviewPage = Optional.of(page);
            return page;
        }
        if (state.page() instanceof HandoverState.Planned planned) {
            ReadyPage page = new ReadyPage(words, planned, () -> presenter);
            readyPage = Optional.of(page);
            return page;
        }
        if (state.page() instanceof HandoverState.Rehearsing rehearsing) {
            return new RehearsalPage(words, rehearsing, () -> presenter);
        }
        if (state.page() instanceof HandoverState.Packing packing) {
            return new PackPage(words, packing, () -> presenter);
        }
        return new AwayPages(words, () -> presenter).nothing((HandoverState.Nothing) state.page());
    }
}
