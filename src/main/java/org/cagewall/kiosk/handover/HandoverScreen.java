package org.cagewall.kiosk.handover;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Screen;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.text.Words;

/** Days away, before and after. Used on the event thread. */
public final class HandoverScreen implements Screen {

    private final Words words;
    private final Heading heading = new Heading("", "");
    private final Segment<HandoverState.Tab> tabs;
    private final Pane view = new Pane(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
    private final HandoverPresenter presenter;
    private Optional<PlanPage> planPage = Optional.empty();
    private Optional<ReviewPage> reviewPage = Optional.empty();

    public HandoverScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Notices notices, Words words) {
        this.words = words;
        this.tabs = new Segment<>(
                "tab",
                List.of(
                        new Choice<>("going-away", words.say("handover.going-away"), HandoverState.Tab.GOING_AWAY),
                        new Choice<>(
                                "what-happened", words.say("handover.what-happened"), HandoverState.Tab.WHAT_HAPPENED)),
                this::choose);
        if (isRoomy()) {
            heading.beside(tabs);
        }
        presenter = new HandoverPresenter(desk, pen, navigator, asking, notices, words, this::render);
    }

    /** Whether the two sides have room beside the title at this text size. */
    private static boolean isRoomy() {
        return Measure.px(100) <= 130;
    }

    private void choose(HandoverState.Tab tab) {
        presenter.choose(tab);
    }

    @Override
    public Heading heading() {
        return heading;
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        presenter.shown();
    }

    @Override
    public void hidden() {
        presenter.hidden();
    }

    private void render(HandoverState state) {
        heading.say(state.title(), state.subtitle());
        tabs.choose(state.tab());
        if (state.page() instanceof HandoverState.Editing editing && planPage.isPresent()) {
            planPage.get().show(editing);
            return;
        }
        if (state.page() instanceof HandoverState.Happened happened && reviewPage.isPresent()) {
            reviewPage.get().show(happened);
            return;
        }
        planPage = Optional.empty();
        reviewPage = Optional.empty();
        show(page(state));
    }

    private void show(JComponent page) {
        view.removeAll();
        if (isRoomy()) {
            view.add(page, "wmin 0");
        } else {
            Pane both = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[][grow,fill]"));
            both.add(tabs, "growx 0");
            both.add(page, "wmin 0");
            view.add(both, "wmin 0");
        }
        view.revalidate();
        view.repaint();
    }

    private JComponent page(HandoverState state) {
        if (state.page() instanceof HandoverState.Editing editing) {
            PlanPage page = new PlanPage(words, editing, () -> presenter);
            planPage = Optional.of(page);
            return page;
        }
        if (state.page() instanceof HandoverState.Happened happened) {
            ReviewPage page = new ReviewPage(words, happened, () -> presenter);
            reviewPage = Optional.of(page);
            return page;
        }
        AwayPages pages = new AwayPages(words, () -> presenter);
        return state.page() instanceof HandoverState.Planned planned
                ? pages.planned(planned)
                : pages.nothing((HandoverState.Nothing) state.page());
    }
}
