package org.cagewall.kiosk.scan;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.paper.LiveView;
import org.cagewall.kiosk.shell.Screen;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** The large view of the camera, what it does, and what else can be scanned. Used on the event thread. */
public final class ScanScreen implements Screen {

    private final Words words;
    private final Runnable paste;
    private final Heading heading;
    private final Pane view = new Pane(new MigLayout(
            "insets 0, fill, gap 24 0",
            Sizes.isRoomy() ? "[grow,fill][360!,fill]" : "[grow 40,fill,sizegroup half][grow 60,fill,sizegroup half]",
            "[0:0,grow,fill]"));
    private final LiveView live = new LiveView("live");
    private final Stack side = new Stack(16);
    private final TouchScroll scroll;
    private final ScanPresenter presenter;

    /** @param paste reads the picture that is on the clipboard, if there is one */
    public ScanScreen(Desk desk, Lookout lookout, Small small, Words words, Runnable paste) {
        this.words = words;
        this.paste = paste;
        this.heading = new Heading(words.say("scanscreen.title"), words.say("scanscreen.subtitle"));
        this.scroll = new TouchScroll(words, "side", side);
        presenter = new ScanPresenter(desk, lookout, small, words, this::render, live::show);
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
        presenter.open();
    }

    @Override
    public void hidden() {
        presenter.close();
    }

    private void render(ScanState state) {
        live.say(state.line());
        if (!state.picture()) {
            live.clear();
        }
        place(state);
        side.removeAll();
        side.add(line(state));
        if (state.mayLook()) {
            side.add(TouchButton.of(ButtonKind.MAIN, "look", words.say("scanscreen.look"), () -> presenter.look()));
        }
        if (state.cameras().size() > 1) {
            side.add(new WrapLabel(words.say("scanscreen.which"), TextStyle.TAG, Tone.SOFT));
            side.add(cameras(state));
        }
        side.add(TouchButton.of(ButtonKind.PLAIN, "paste", words.say("scanscreen.paste"), paste));
        if (!Sizes.isLargest()) {
            side.add(small(state));
        }
        side.add(new WrapLabel(
                words.say(Sizes.isLargest() ? "scanscreen.drop" : "scanscreen.also"), TextStyle.SECOND, Tone.SOFT));
        view.revalidate();
        view.repaint();
    }

    /** In the largest letters what is wrong, and the touch that mends it, take the place of the picture that is none. */
    private void place(ScanState state) {
        boolean alone = Sizes.isLargest() && state.mayLook();
        if (view.getComponentCount() != (alone ? 1 : 2)) {
            view.removeAll();
            if (!alone) {
                view.add(live, "wmin 0, hmin 0");
            }
            view.add(scroll, alone ? "span, wmin 0, hmin 0" : "wmin 0, hmin 0");
        }
    }

    private TouchButton small(ScanState state) {
        return state.small()
                ? TouchButton.of(
                        ButtonKind.PLAIN,
                        "small-off",
                        words.say("scanscreen.small-off"),
                        () -> presenter.putSmallAway())
                : TouchButton.of(
                        ButtonKind.PLAIN, "small-on", words.say("scanscreen.small-on"), () -> presenter.keepSmall());
    }

    private Card line(ScanState state) {
        Card card = new Card();
        if (state.mayLook()) {
            card.strong();
        }
        card.add(new WrapLabel(state.line(), TextStyle.LEAD, Tone.INK), "wmin 0");
        return card;
    }

    private Chips<String> cameras(ScanState state) {
        List<Choice<String>> choices = new ArrayList<>();
        for (ScanState.Camera camera : state.cameras()) {
            choices.add(new Choice<>(camera.id(), camera.name(), camera.id()));
        }
        return Chips.oneOf("camera", choices, presenter::choose).choose(List.of(state.chosen()));
    }
}
