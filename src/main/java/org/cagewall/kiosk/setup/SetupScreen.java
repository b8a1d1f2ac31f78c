package org.cagewall.kiosk.setup;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.Turner;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Leaving;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.text.Words;

/** Setting the birdroom up, part by part; an empty room is led through its first steps. Used on the event thread. */
public final class SetupScreen extends HeadedScreen {

    private enum Presence {
        AWAY,
        ON_SCREEN
    }

    private final Desk desk;
    private final Pen pen;
    private final Asking asking;
    private final Leaving leaving;
    private final Notices notices;
    private final Words words;
    private final Pane tabs = new Pane(new MigLayout("insets 0, hidemode 3"));
    private final Segment<SetupState.Tab> segment;
    private final Turner turner;
    private final SetupPresenter presenter;
    private Optional<SetupState> before = Optional.empty();
    private Presence presence = Presence.AWAY;
    private Optional<Part> part = Optional.empty();
    private Optional<FirstSteps> steps = Optional.empty();

    public SetupScreen(
            Desk desk, Pen pen, Navigator navigator, Asking asking, Leaving leaving, Notices notices, Words words) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[0:0,grow,fill]"));
        this.desk = desk;
        this.pen = pen;
        this.asking = asking;
        this.leaving = leaving;
        this.notices = notices;
        this.words = words;
        segment = new Segment<>("tab", choices(), tab -> turnTo(tab));
        turner = new Turner("turn", words.say("setup.tab-before"), words.say("setup.tab-after"), by -> turn(by));
        tabs.add(Sizes.isRoomy() ? segment : turner);
        heading.beside(tabs);
        presenter = new SetupPresenter(desk, pen, navigator, words, this::render);
    }

    @Override
    public boolean isBegun() {
        return Field.isAnyWrittenIn(view);
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    @Override
    public void shown() {
        super.shown();
        part.ifPresent(it -> it.watch().start());
        presence = Presence.ON_SCREEN;
    }

    @Override
    public void hidden() {
        presence = Presence.AWAY;
        part.ifPresent(it -> it.watch().stop());
        super.hidden();
    }

    /** Larger letters leave room for the name of one part only. */
    private void turn(int by) {
        before.ifPresent(now -> turnTo(SetupState.Tab.values()[now.tab().ordinal() + by]));
    }

    private void turnTo(SetupState.Tab tab) {
        presenter.turnTo(tab);
    }

    private List<Choice<SetupState.Tab>> choices() {
        return Arrays.stream(SetupState.Tab.values())
                .map(tab -> new Choice<>(tab.key(), words.say("setup.tab." + tab.key()), tab))
                .toList();
    }

    private void render(SetupState state) {
        boolean open = state.stage() == SetupState.Stage.OPEN;
        heading.say(words.say(title(state.stage())), state.subtitle());
        segment.setVisible(open);
        segment.choose(state.tab());
        turner.setVisible(open);
        turner.show(words.say("setup.tab." + state.tab().key()), state.tab().ordinal(), SetupState.Tab.values().length);
        boolean turned = before.filter(old -> old.stage() == state.stage()
                        && old.tab() == state.tab()
                        && (state.stage() == SetupState.Stage.OPEN || old.wall().equals(state.wall())))
                .isEmpty();
        if (turned) {
            build(state);
        }
        steps.ifPresent(step -> step.show(state));
        before = Optional.of(state);
        rebuilt();
    }

    private static String title(SetupState.Stage stage) {
        return switch (stage) {
            case OPEN, CLOSED -> "setup.title";
            default -> "setup.title-first";
        };
    }

    private void build(SetupState state) {
        part.ifPresent(it -> it.watch().stop());
        part = Optional.empty();
        steps = Optional.empty();
        view.removeAll();
        switch (state.stage()) {
            case OPEN -> {
                Part next = made(state.tab());
                part = Optional.of(next);
                view.add(next.view, "grow, wmin 0, hmin 0");
                if (presence == Presence.ON_SCREEN) {
                    next.watch().start();
                }
            }
            case CLOSED -> view.add(closed(state), "grow");
            default -> {
                FirstSteps next = new FirstSteps(words, () -> presenter, state);
                steps = Optional.of(next);
                view.add(next, "grow, wmin 0, hmin 0");
            }
        }
    }

    private Part made(SetupState.Tab tab) {
        return switch (tab) {
            case WALLS -> new WallsPart(desk, pen, asking, words);
            case PEOPLE -> new PeoplePart(desk, pen, words);
            case FOOD -> new FoodPart(desk, pen, words);
            case ROOM -> new RoomPart(desk, pen, leaving, words);
            case RINGS -> new RingsPart(desk, pen, words);
            case DAYS -> new DaysPart(desk, pen, words);
            case BACKUP -> new BackupPart(desk, notices, words);
        };
    }

    private JComponent closed(SetupState state) {
        return new EmptyState(
                words.say("setup.closed"),
                words.say("setup.closed-text", state.owner()),
                List.of(TouchButton.of(
                        ButtonKind.MAIN, "to-wall", words.say("setup.to-wall"), () -> presenter.leave())));
    }
}
