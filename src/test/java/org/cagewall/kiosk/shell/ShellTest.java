package org.cagewall.kiosk.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.EventQueue;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.awt.event.WindowEvent;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.locks.LockSupport;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.cagewall.kiosk.Live;
import org.cagewall.kiosk.RequiresDisplay;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Heading;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** The one window, on a real display. */
@RequiresDisplay
class ShellTest {

    private final List<String> happened = new CopyOnWriteArrayList<>();
    private final StringBuffer heard = new StringBuffer();
    private final AtomicBoolean scanner = new AtomicBoolean();

    @Test
    void theKioskFillsTheScreenWithoutDecoration() {
        try (Live live = open(new WindowMode.FullScreen(Optional.empty()))) {
            Rectangle screen = SwingUtilities.getWindowAncestor(live.shell().stage())
                    .getGraphicsConfiguration()
                    .getBounds();
            live.waitUntil(
                    "it fills the screen", () -> live.shell().stage().getSize().equals(screen.getSize()));
            assertThat(((javax.swing.JFrame) SwingUtilities.getWindowAncestor(
                                    live.shell().stage()))
                            .isUndecorated())
                    .isTrue();
        }
    }

    @Test
    void closingTheWindowAsksFirst() {
        try (Live live = open(window())) {
            live.shell().onLeave(() -> happened.add("left"));
            closeWindow(live);
            live.press("answer.stay").gone("sheet");
            assertThat(happened).isEmpty();
            closeWindow(live);
            live.press("answer.leave").waitUntil("it is left", () -> happened.contains("left"));
        }
    }

    @Test
    void aRealFingerPressesScrollsAndIsForgivenASlip() {
        try (Live live = open(window())) {
            live.tap("row.1").waitUntil("the row was pressed", () -> happened.contains("row.1"));
            live.drag("row.2", 5, 3).waitUntil("a slip still presses", () -> happened.contains("row.2"));
            happened.clear();
            live.drag("row.3", 0, -60);
            live.waitUntil(
                    "the list has moved",
                    () -> !live.shell().stage().isValid()
                            || live.find("list.up", JComponent.class).isEnabled());
            assertThat(happened).isEmpty();
        }
    }

    @Test
    void whatIsTypedIsHeardBeforeAnyFieldAndEnterPressesNothing() {
        try (Live live = open(window())) {
            live.waitUntil("a button has the keyboard", () -> {
                live.shell().stage().requestFocusInWindow();
                return true;
            });
            scanner.set(true);
            live.type("C0A1B27K9Z\n");
            live.waitUntil("all was heard", () -> heard.toString().equals("C0A1B27K9Z\n"));
            assertThat(happened).isEmpty();
        }
    }

    @Test
    void escapePutsAwayTheSheetAndThenGoesBack() {
        try (Live live = open(window())) {
            live.press("nav.today").read("Today");
            live.waitUntil("a sheet is asked for", () -> {
                live.shell().stage().tell(Message.of("shell.leave"), Message.of("shell.leave-text"));
                return true;
            });
            live.key(KeyEvent.VK_ESCAPE).gone("sheet");
            live.key(KeyEvent.VK_ESCAPE)
                    .waitUntil(
                            "it is back at the wall",
                            () -> live.shell().stage().here().equals(new Destination.Wall()));
        }
    }

    @Test
    void theKeyboardGoesFromTopToBottomAndShowsWhereItIs() {
        try (Live live = open(window())) {
            assertThat(live.focusOrder()).startsWith("person", "row.0", "row.1").endsWith("nav.wall", "nav.today");
            live.tap("person");
            for (String part : List.of("person", "row.0", "row.1", "row.2")) {
                live.key(KeyEvent.VK_TAB).waitUntil(part + " has the keyboard", () -> live.find(part, JComponent.class)
                        .isFocusOwner());
            }
            live.picture("shell-focus-ring");
            live.key(KeyEvent.VK_ENTER).waitUntil("it was pressed", () -> happened.contains("row.2"));
        }
    }

    @Test
    void tabsThatAreAllHeardLateMoveTheFocusOneByOne() {
        try (Live live = open(window())) {
            live.tap("person");
            Executor soon = CompletableFuture.delayedExecutor(50, TimeUnit.MILLISECONDS);
            soon.execute(() -> EventQueue.invokeLater(() -> LockSupport.parkNanos(900_000_000)));
            live.type("\t\t\t\t", 120_000_000);
            live.waitUntil("the third row has the keyboard", () -> live.find("row.2", JComponent.class)
                    .isFocusOwner());
        }
    }

    @Test
    void aButtonKeepsNoFocusAfterATouchAndSpaceAndEnterPressNothing() {
        try (Live live = open(window())) {
            live.tap("row.1").waitUntil("the row was pressed", () -> happened.contains("row.1"));
            live.key(KeyEvent.VK_SPACE).key(KeyEvent.VK_ENTER);
            live.waitUntil(
                    "nothing but the stage has the keys",
                    () -> live.shell().stage().isFocusOwner());
            assertThat(happened).containsExactly("row.1");
        }
    }

    @Test
    void aTouchTakesTheNoticeAway() {
        try (Live live = open(window())) {
            live.waitUntil("something is said", () -> {
                live.shell().stage().done(Message.of("shell.taken-back"), () -> happened.add("undone"));
                return true;
            });
            live.see("notice").tap("row.0").gone("notice");
            assertThat(happened).containsExactly("row.0");
        }
    }

    private static void closeWindow(Live live) {
        live.waitUntil("the window is asked to close", () -> {
            java.awt.Window window =
                    SwingUtilities.getWindowAncestor(live.shell().stage());
            window.dispatchEvent(new WindowEvent(window, WindowEvent.WINDOW_CLOSING));
            return true;
        });
        live.see("sheet");
    }

    private static WindowMode window() {
        return new WindowMode.Window(1280, 800);
    }

    private Live open(WindowMode mode) {
        return Live.open(() -> {
            Light.DAY.start(TextSize.NORMAL);
            Shell shell = new Shell(Words.english(), mode);
            shell.listen(new KeySink() {
                @Override
                public boolean key(char c, long nanos) {
                    heard.append(c);
                    return scanner.get();
                }
            });
            shell.stage().person("Ines, owner", () -> happened.add("person"));
            shell.stage()
                    .places(List.of(
                            new NavBar.Entry<>("wall", "Wall", new Destination.Wall()),
                            new NavBar.Entry<>("today", "Today", new Destination.Today())));
            shell.open(
                    Screens.none()
                            .with(Destination.Wall.class, any -> new HeadedScreen("Wall"))
                            .with(Destination.Today.class, any -> new HeadedScreen("Today")),
                    new Destination.Wall());
            return shell;
        });
    }

    private final class HeadedScreen implements Screen {

        private final Heading heading;
        private final TouchScroll view;

        HeadedScreen(String name) {
            heading = new Heading(name, "Tuesday 14 April");
            Stack rows = new Stack();
            for (int i = 0; i < 20; i++) {
                String row = "row." + i;
                rows.add(new ListRow(row, RowFace.of("B" + i, "2 birds", ""), () -> happened.add(row)));
            }
            rows.add(Field.line("note", "Note", ""));
            view = new TouchScroll(Words.english(), "list", rows);
        }

        @Override
        public Heading heading() {
            return heading;
        }

        @Override
        public JComponent view() {
            return view;
        }
    }
}
