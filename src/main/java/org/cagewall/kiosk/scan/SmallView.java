package org.cagewall.kiosk.scan;

import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.paper.LiveView;
import org.cagewall.kiosk.shell.Aside;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/**
 * The small view of the camera that stays on beside the wall, the day's list and the pages of the cages. Used on the event
 * thread.
 */
public final class SmallView implements Aside {

    private final Words words;
    private final LiveView live = new LiveView("live-small");
    private final Pane view =
            new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[0:0,grow,fill]", "[][][grow,top][]"));
    private final ScanPresenter presenter;

    public SmallView(Desk desk, Lookout lookout, Small small, Words words) {
        this.words = words;
        this.presenter = new ScanPresenter(desk, lookout, small, words, this::render, live::show);
    }

    @Override
    public JComponent view() {
        return view;
    }

    @Override
    public void shown() {
        presenter.accompany();
    }

    @Override
    public void hidden() {
        presenter.close();
    }

    /** What puts it away stays at its place below, so that no finger that meant the touch above it can meet it. */
    private void render(ScanState state) {
        live.say(state.line());
        if (!state.picture()) {
            live.clear();
        }
        view.removeAll();
        view.add(live, "cell 0 0, h 174!");
        view.add(new WrapLabel(state.line(), TextStyle.SECOND, Tone.INK), "cell 0 1, wmin 0");
        if (state.mayLook()) {
            view.add(
                    TouchButton.of(
                            ButtonKind.OUTLINED, "look-small", words.say("scanscreen.look"), () -> presenter.look()),
                    "cell 0 2, wmin 0");
        }
        view.add(
                TouchButton.of(
                        ButtonKind.QUIET,
                        "small-away",
                        words.say("scanscreen.small-away"),
                        () -> presenter.putSmallAway()),
                "cell 0 3, wmin 0");
        view.revalidate();
        view.repaint();
    }
}
