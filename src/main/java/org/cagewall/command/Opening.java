package org.cagewall.command;

import java.awt.AWTError;
import java.awt.HeadlessException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.Order;
import org.cagewall.demo.ScreenPictures;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.kiosk.Kiosk;
import org.cagewall.kiosk.WindowAhead;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.room.Room;
import org.cagewall.text.Message;

/**
 * Opens the kiosk on the keeper's birdroom or on the invented one; where there is no display it paints the invented one
 * instead. Used by the thread that the process starts with, which waits until the kiosk is left.
 */
final class Opening {

    private static final String CARDS = "cards.pdf";

    private final Cagewall cagewall;
    private final KioskOptions options;

    Opening(Cagewall cagewall, KioskOptions options) {
        this.cagewall = cagewall;
        this.options = options;
    }

    int open() {
        DisplayProbe.Display display = DisplayProbe.look();
        if (display != DisplayProbe.Display.ANSWERS) {
            return mayPaint(display) ? paint() : noDisplay();
        }
        Path folder = options.isDemo() ? demo() : cagewall.data();
        if (options.isDemo()) {
            makeDemo(folder);
        }
        return show(folder);
    }

    /** Whoever has a birdroom, or named a display, wants the kiosk and not pictures of an invented one. */
    private boolean mayPaint(DisplayProbe.Display display) {
        return options.isDemo() || display == DisplayProbe.Display.NONE && !cagewall.holdsARoom(cagewall.data());
    }

    private int noDisplay() {
        cagewall.console().complain(Message.of("command.kiosk-no-window"));
        return Main.NO_DISPLAY;
    }

    private int show(Path folder) {
        DataFolder locked = locked(folder);
        WindowAhead ahead =
                Kiosk.prepare(locked, options.mode(), cagewall.console().words());
        try (Desk desk = Desk.openAtAGlance(locked, Lanes.answeringOn(new EventThread()), cagewall.clocks())) {
            Kiosk.run(desk, ahead, cagewall.console().words());
            return Main.DONE;
        } catch (Desk.Unopened e) {
            throw new Refusal(e.why());
        } catch (DataFolder.Unavailable e) {
            throw new Refusal(e.why());
        } catch (HeadlessException | AWTError | LinkageError e) {
            return noDisplay();
        }
    }

    /** The folder for the kiosk alone; a kiosk that has it already is asked to come forward. */
    private DataFolder locked(Path folder) {
        try {
            return cagewall.folder(folder);
        } catch (Refusal refusal) {
            if (refusal.why().key().equals("store.open-elsewhere")) {
                DataFolder.callForward(folder);
                throw Refusal.of("command.kiosk-open", Cagewall.shown(folder));
            }
            throw refusal;
        }
    }

    /** The invented birdroom lies beside the real one, never in it. */
    private Path demo() {
        Path data = cagewall.data().toAbsolutePath().normalize();
        return data.resolveSibling((data.getFileName() == null ? "cagewall" : data.getFileName()) + "-demo");
    }

    private void makeDemo(Path folder) {
        if (!cagewall.holdsARoom(folder)) {
            cagewall.inARoom(folder, DemoCommand::makeWhereEmpty);
        }
    }

    private int paint() {
        Path folder = demo();
        return cagewall.inARoom(folder, desk -> {
            DemoCommand.makeWhereEmpty(desk);
            Path pictures = folder.resolve("pictures");
            paint(desk, pictures);
            cagewall.console().say("command.kiosk-painted", Cagewall.shown(pictures));
            return Main.DONE;
        });
    }

    private void paint(AtDesk desk, Path pictures) {
        try {
            Files.createDirectories(pictures);
            ScreenPictures.paint(desk.desk(), cagewall.console().words(), pictures);
            Files.write(pictures.resolve(CARDS), cards(desk));
        } catch (IOException | UncheckedIOException e) {
            throw Refusal.of("command.not-written", Cagewall.shown(pictures));
        }
    }

    private byte[] cards(AtDesk desk) {
        Room room = desk.room();
        Sheet sheet = CardsPdf.sheets(desk.desk().folder().labels())
                .find(Sheets.BUILT_IN.get(0))
                .sheet()
                .orElseThrow();
        List<CardToPrint> cards =
                room.walk().map(cage -> CardToPrint.of(room, cage)).toList();
        return CardsPdf.drawn(
                cards, Order.on(sheet), desk.today(), cagewall.console().words());
    }
}
