package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.Container;
import java.awt.Graphics;
import java.awt.Rectangle;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLayeredPane;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.kit.PersonPill;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * All that is inside the one frame, in layers: the screen with its heading and the bar, the line of what was done, a
 * sheet, and the page after a failure. It needs no window, so it can be painted
 * in tests. Used on the event thread.
 */
public final class Layers extends JLayeredPane implements Navigator, Overlays, Notices, Leaving {

    private static final long serialVersionUID = 1L;
    private static final Integer SCREEN = DEFAULT_LAYER;
    private static final Integer NOTICE = PALETTE_LAYER;
    private static final Integer SHEET = MODAL_LAYER;
    private static final Integer FAILURE = POPUP_LAYER;

    private final transient Words words;
    private final Floor floor = new Floor();
    private final NavBar<Destination> nav = new NavBar<>(this::go);
    private final TouchButton person;
    private transient Runnable onPerson = () -> {};
    private transient Runnable onLeave = () -> {};
    private transient Screens screens = Screens.none();
    private transient Journey journey = new Journey(new Destination.Wall());
    private transient Optional<Screen> screen = Optional.empty();
    private transient Optional<Aside> aside = Optional.empty();
    private transient Optional<Aside> shownAside = Optional.empty();
    private transient Runnable onTouch = () -> {};
    private transient Optional<NoticeBar> notice = Optional.empty();
    private transient Optional<OverlaySheet> sheet = Optional.empty();
    private transient Optional<OverlaySheet> laidAside = Optional.empty();
    private transient Optional<FailurePage> failure = Optional.empty();
    private transient Optional<Component> focusBefore = Optional.empty();

    public Layers(Words words) {
        this.words = words;
        setName("stage");
        setOpaque(true);
        person = PersonPill.of("", words.say("shell.nobody"), () -> onPerson.run());
        person.setVisible(false);
        floor.add(person);
        floor.add(nav);
        setLayer(floor, SCREEN);
        add(floor);
    }

    /** Begins here, with these screens. */
    public void open(Screens all, Destination first) {
        screens = all;
        journey = new Journey(first);
        show(first);
    }

    /** The places in the bar at the bottom: they differ for owner and sitter. */
    public void places(List<NavBar.Entry<Destination>> entries) {
        nav.entries(entries);
        nav.at(journey.here().section());
    }

    /** Who is recording, and what happens when that is touched. */
    public void person(String who, Runnable onTouch) {
        onPerson = onTouch;
        PersonPill.say(person, who, words.say("shell.person", who));
        person.setVisible(true);
        floor.revalidate();
        floor.repaint();
    }

    /**
     * Keeps this beside the screens that leave room for it, or nothing; the screen that is on is made anew. In the
     * largest letters there is room for one thing at a time only.
     */
    public void aside(Optional<Aside> part) {
        aside = part;
        if (screen.isPresent()) {
            show(journey.again());
        }
    }

    /** How much width a screen has that leaves room for what stays beside it. */
    public Breadth breadth() {
        return aside.isPresent() && !Sizes.isLargest() ? Breadth.BESIDE : Breadth.WHOLE;
    }

    /** Whether nothing lies over the screen. */
    public boolean isClear() {
        return sheet.isEmpty() && failure.isEmpty();
    }

    /** Whether nothing lies over the screen, and nothing on it is half filled in. */
    public boolean isAtRest() {
        return isClear() && screen.filter(Screen::isBegun).isEmpty();
    }

    /** What is done whenever a finger comes down. */
    public void onTouch(Runnable then) {
        onTouch = then;
    }

    public Destination here() {
        return journey.here();
    }

    @Override
    public void go(Destination destination) {
        journey.go(destination);
        show(destination);
    }

    @Override
    public void goByCard(Destination destination, Runnable then) {
        Optional<OverlaySheet> form = sheet.filter(OverlaySheet::isBegun).or(() -> laidAside);
        if (form.isEmpty() && screen.filter(Screen::isBegun).isEmpty()) {
            go(destination);
            then.run();
            return;
        }
        laidAside = form;
        ask(Question.of(
                Message.of("shell.half-filled"),
                Message.of("shell.half-filled-text"),
                AnswerButton.plain("open-card", Message.of("shell.half-filled-open"), () -> {
                    laidAside = Optional.empty();
                    go(destination);
                    then.run();
                }),
                AnswerButton.main("stay", Message.of("shell.half-filled-stay"), this::takeUp)));
    }

    private void takeUp() {
        Optional<OverlaySheet> form = laidAside;
        laidAside = Optional.empty();
        form.ifPresent(this::openSheet);
    }

    private void back() {
        show(journey.back());
    }

    /** What Escape does: put away what is on top, or go back. */
    public void escape() {
        if (failure.isPresent()) {
            dismissFailure();
        } else if (sheet.isPresent()) {
            OverlaySheet open = sheet.get();
            open.answerSafely();
            if (sheet.filter(open::equals).isPresent()) {
                close();
            }
        } else {
            back();
        }
    }

    @Override
    public void ask(Question question) {
        openSheet(new OverlaySheet(
                words,
                words.say(question.title()),
                Optional.of(words.sentence(question.text())),
                Optional.empty(),
                question.answers(),
                this::answered));
    }

    @Override
    public void tell(Message title, Message text) {
        ask(Question.of(title, text, AnswerButton.main("ok", Message.of("shell.understood"), () -> {})));
    }

    @Override
    public void sheet(Message title, JComponent content, List<AnswerButton> answers) {
        openSheet(new OverlaySheet(
                words, words.say(title), Optional.empty(), Optional.of(content), answers, this::answered));
    }

    @Override
    public boolean shows(JComponent content) {
        return sheet.filter(open -> SwingUtilities.isDescendingFrom(content, open))
                .isPresent();
    }

    @Override
    public void close() {
        sheet.ifPresent(open -> {
            takeOut(open);
            sheet = Optional.empty();
            focusBefore.ifPresent(this::giveFocus);
        });
    }

    /** What is done when someone wants to leave and says so again. */
    public void onLeave(Runnable then) {
        onLeave = then;
    }

    @Override
    public void askToLeave() {
        ask(Question.of(
                Message.of("shell.leave"),
                Message.of("shell.leave-text"),
                AnswerButton.plain("leave", Message.of("shell.leave-yes"), () -> onLeave.run()),
                AnswerButton.main("stay", Message.of("shell.leave-no"), () -> {})));
    }

    @Override
    public void done(Message what) {
        showNotice(new NoticeBar(words.say(what), Optional.empty()));
    }

    @Override
    public void done(Message what, Runnable undo) {
        TouchButton button = NoticeBar.undo(words.say("shell.undo"), () -> {
            putNoticeAway();
            undo.run();
        });
        showNotice(new NoticeBar(words.say(what), Optional.of(button)));
    }

    @Override
    public void failed(String code) {
        failure.ifPresent(this::takeOut);
        FailurePage page = new FailurePage(words, code, this::dismissFailure);
        failure = Optional.of(page);
        put(page, FAILURE);
        takeFocusByKeys();
    }

    /** A finger came down on this part: unless it is the one that takes back, the line of what was done has been read. */
    public void touched(Component where) {
        onTouch.run();
        notice.filter(bar -> where == bar || !SwingUtilities.isDescendingFrom(where, bar))
                .ifPresent(bar -> putNoticeAway());
    }

    /** Gives the keys to the first part of what is on top: what had them is gone. */
    void takeFocus() {
        if (failure.isPresent()) {
            failure.get().takeFocus();
        } else if (sheet.isPresent()) {
            sheet.get().takeFocus();
        } else {
            Container root = getFocusCycleRootAncestor();
            Optional.ofNullable(root.getFocusTraversalPolicy().getFirstComponent(root))
                    .ifPresent(Component::requestFocusInWindow);
        }
    }

    /** Whether this part is one that keys move on from: it lies in what is on top, and is no layer itself. */
    boolean keepsFocus(Component part) {
        Component top = failure.<Component>map(page -> page).or(() -> sheet).orElse(this);
        return part != null && part != top && SwingUtilities.isDescendingFrom(part, top);
    }

    /** While the room is worked by touch no button has the keys. */
    private void takeFocusByKeys() {
        if (FocusRing.isShown(this)) {
            takeFocus();
        } else {
            requestFocusInWindow();
        }
    }

    private void giveFocus(Component part) {
        if (part instanceof JTextComponent || FocusRing.isShown(this)) {
            part.requestFocusInWindow();
        } else {
            requestFocusInWindow();
        }
    }

    @Override
    public void doLayout() {
        floor.setBounds(0, 0, getWidth(), getHeight());
        notice.ifPresent(this::place);
        sheet.ifPresent(open -> open.setBounds(0, 0, getWidth(), getHeight()));
        failure.ifPresent(page -> page.setBounds(0, 0, getWidth(), getHeight()));
    }

    /**
     * Over the title; where that is too narrow, over the whole heading, whose own parts can be touched through it, and
     * in the largest letters over who is recording as well.
     */
    private void place(NoticeBar bar) {
        Rectangle place = floor.headingPlace();
        int taken = floor.takenBeside();
        int title = place.width - (taken > 0 ? taken + Sizes.px(16) : 0);
        int least = bar.leastWidth();
        int all = place.width < least ? getWidth() - 2 * Sizes.margin() : place.width;
        bar.setBounds(place.x, place.y, title < least ? all : title, place.height);
        bar.letThrough(title, place.width);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Tone.GROUND.color());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }

    /** A card that is scanned leads away from whatever is open: that nothing of it was kept is said. */
    private void show(Destination destination) {
        Optional<OverlaySheet> left = sheet.filter(OverlaySheet::isBegun);
        laidAside = Optional.empty();
        close();
        putNoticeAway();
        screen.ifPresent(Screen::hidden);
        screen = screens.make(destination);
        floor.show(
                screen.map(Screen::heading).orElseGet(() -> new Heading("", "")),
                screen.map(Screen::view).orElseGet(this::nothingThere),
                asideNow().map(Aside::view));
        nav.at(destination.section());
        screen.ifPresent(Screen::shown);
        changeAside();
        left.ifPresent(open -> done(Message.of("shell.left")));
    }

    private Optional<Aside> asideNow() {
        return aside.filter(part -> breadth() == Breadth.BESIDE
                && screen.filter(Screen::leavesRoomAside).isPresent());
    }

    private void changeAside() {
        Optional<Aside> next = asideNow();
        if (!next.equals(shownAside)) {
            shownAside.ifPresent(Aside::hidden);
            shownAside = next;
            next.ifPresent(Aside::shown);
        }
    }

    private JComponent nothingThere() {
        return new EmptyState(words.say("shell.not-here"), words.say("shell.not-here-text"), List.of());
    }

    private void answered(AnswerButton answer) {
        close();
        answer.then().run();
    }

    private void openSheet(OverlaySheet next) {
        Component owner =
                java.awt.KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
        if (sheet.isEmpty()) {
            focusBefore = Optional.ofNullable(owner);
        }
        sheet.ifPresent(this::takeOut);
        putNoticeAway();
        sheet = Optional.of(next);
        put(next, SHEET);
        takeFocusByKeys();
    }

    private void showNotice(NoticeBar bar) {
        putNoticeAway();
        notice = Optional.of(bar);
        put(bar, NOTICE);
    }

    private void putNoticeAway() {
        notice.ifPresent(this::takeOut);
        notice = Optional.empty();
    }

    private void dismissFailure() {
        failure.ifPresent(this::takeOut);
        failure = Optional.empty();
    }

    private void put(JComponent part, Integer layer) {
        setLayer(part, layer);
        add(part);
        doLayout();
        validate();
        repaint();
    }

    private void takeOut(JComponent part) {
        remove(part);
        revalidate();
        repaint();
    }

    /** The screen itself, its heading and the bar. */
    private static final class Floor extends JPanel {

        private static final long serialVersionUID = 1L;

        /** A picture is as large in any letters. */
        private static final int ASIDE = 232;

        private static final int ASIDE_GAP = 24;

        private transient Optional<Heading> heading = Optional.empty();
        private transient Optional<JComponent> view = Optional.empty();
        private transient Optional<JComponent> aside = Optional.empty();

        Floor() {
            super(null);
            setOpaque(false);
        }

        void show(Heading nextHeading, JComponent nextView, Optional<JComponent> nextAside) {
            heading.ifPresent(this::remove);
            view.ifPresent(this::remove);
            aside.ifPresent(this::remove);
            heading = Optional.of(nextHeading);
            view = Optional.of(nextView);
            add(nextHeading, 0);
            add(nextView, 1);
            aside = nextAside;
            nextAside.ifPresent(part -> add(part, 2));
            revalidate();
            repaint();
        }

        int takenBeside() {
            return heading.map(Heading::takenBeside).orElse(0);
        }

        /** Where the heading is, left of who is recording. */
        Rectangle headingPlace() {
            int margin = Sizes.margin();
            int end = getWidth() - margin - (pill() > 0 ? pill() + Sizes.px(16) : 0);
            return new Rectangle(margin, Sizes.px(14), end - margin, Sizes.px(64));
        }

        @Override
        public void doLayout() {
            int margin = Sizes.margin();
            int right = getWidth() - margin;
            Component nav = part("nav");
            int bar = nav.getPreferredSize().height;
            int top = Sizes.px(92);
            part("person").setBounds(right - pill(), Sizes.px(18), pill(), Sizes.px(56));
            nav.setBounds(0, getHeight() - bar, getWidth(), bar);
            heading.ifPresent(each -> each.setBounds(headingPlace()));
            int high = getHeight() - bar - Sizes.px(16) - top;
            int beside = aside.isPresent() ? ASIDE + ASIDE_GAP : 0;
            view.ifPresent(each -> each.setBounds(margin, top, right - margin - beside, high));
            aside.ifPresent(each -> each.setBounds(right - ASIDE, top, ASIDE, high));
        }

        private int pill() {
            Component person = part("person");
            return person.isVisible() ? Math.max(Sizes.px(216), person.getPreferredSize().width) : 0;
        }

        private Component part(String name) {
            for (Component each : ((Container) this).getComponents()) {
                if (name.equals(each.getName())) {
                    return each;
                }
            }
            throw new IllegalStateException(name);
        }
    }
}
