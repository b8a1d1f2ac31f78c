package org.cagewall.demo;

import java.awt.Graphics2D;
import java.awt.event.ActionEvent;
import java.awt.event.ActionListener;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.NestState;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.Kiosk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.text.Words;

/**
 * Paints the main screens into files, with no window and so on any machine. The desk must answer inline; the work is
 * done on the event thread.
 */
public final class ScreenPictures {

    private static final int SCREEN_WIDTH = 1280;
    private static final int SCREEN_HEIGHT = 800;

    private final Desk desk;
    private final Words words;
    private final Path folder;
    private final List<Path> painted = new ArrayList<>();

    private ScreenPictures(Desk desk, Words words, Path folder) {
        this.desk = desk;
        this.words = words;
        this.folder = folder;
    }

    /**
     * Paints every main screen of the desk's birdroom at 1280 x 800.
     *
     * @return the pictures, in the order in which they are best looked at
     * @throws UncheckedIOException when the folder cannot be written to
     */
    public static List<Path> paint(Desk desk, Words words, Path folder) {
        ScreenPictures pictures = new ScreenPictures(desk, words, folder);
        new EventThread().finish(pictures::paintAll);
        return List.copyOf(pictures.painted);
    }

    private void paintAll() {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Light.DAY.start(TextSize.NORMAL);
        asOwner("wall", new Destination.Wall());
        fullest().ifPresent(cage -> {
            asOwner("cage", Destination.Cage.byScan(cage.name()));
            asOwner("different", Destination.Cage.byHand(cage.name()), "different");
        });
        at(NestState.CHICKS_IN_BOX).ifPresent(cage -> asOwner("nest", Destination.Cage.byScan(cage.name())));
        at(NestState.SITTING).ifPresent(cage -> asOwner("candling", Destination.Cage.byScan(cage.name()), "do.candle"));
        at(NestState.PARTING).ifPresent(cage -> asOwner("parting", Destination.Cage.byScan(cage.name())));
        fullest().ifPresent(this::scanning);
        asOwner("today-owner", new Destination.Today());
        asOwner("ahead", new Destination.Ahead());
        asOwner("ahead-days", new Destination.Ahead(), "tab.days");
        asOwner("handover", new Destination.Handover());
        asOwner("review", new Destination.Handover(), "tab.what-happened");
        asOwner("cards", new Destination.Cards());
        asOwner("cards-paper", new Destination.Cards(), "choose.all", "lay-out", "place.1", "place.2");
        asOwner("birds", new Destination.Birds());
        asOwner("setup", new Destination.Setup());
        asSitter("today-sitter", new Destination.Today());
        asSitter("phone", new Destination.Phone());
        asSitter("close-the-day", new Destination.CloseTheDay());
        Light.QUIET.start(TextSize.NORMAL);
        asOwner("wall-quiet-hours", new Destination.Wall());
        Light.DAY.start(TextSize.NORMAL);
    }

    /** By day: the card has opened its cage, and whoever holds it still has touched Scan again. */
    private void scanning(Cage cage) {
        Layers stage = new Layers(words);
        Kiosk kiosk = Kiosk.on(stage, desk, words, InventedCamera.before(desk, cage, words), () -> LocalTime.NOON);
        as(Role.OWNER, kiosk);
        for (int look = 0; look < 2; look++) {
            kiosk.navigator().go(new Destination.Scan());
            kiosk.look();
        }
        write(settled(stage), "scan");
        kiosk.end();
    }

    /** Of the cages that are so far, the one in whose nest most lies. */
    private Optional<Cage> at(NestState state) {
        Room room = desk.room();
        Almanac almanac = Almanac.of(room);
        return room.cages().stream()
                .filter(cage -> almanac.nest(cage).state(desk.today()) == state)
                .max(Comparator.comparingInt(cage ->
                        room.nest(cage).eggs().size() + room.nest(cage).chicks().size()));
    }

    /** The cage with the most eggs shows its page best. */
    private Optional<Cage> fullest() {
        Room room = desk.room();
        return room.pairs().stream()
                .filter(room::together)
                .max(Comparator.comparingInt(org.cagewall.room.nest.Pair::eggs))
                .flatMap(pair -> room.cage(pair.cage()));
    }

    private void asOwner(String name, Destination destination, String... presses) {
        as(Role.OWNER, name, destination, presses);
    }

    private void asSitter(String name, Destination destination, String... presses) {
        as(Role.SITTER, name, destination, presses);
    }

    private void as(Role role, String name, Destination destination, String... presses) {
        Layers stage = new Layers(words);
        Kiosk kiosk = Kiosk.on(stage, desk, words);
        as(role, kiosk);
        kiosk.navigator().go(destination);
        Floor floor = settled(stage);
        for (String press : presses) {
            press(stage, press);
            floor.settle();
        }
        write(floor, name);
        kiosk.end();
    }

    private void as(Role role, Kiosk kiosk) {
        desk.room().people().stream()
                .filter(person -> person.role() == role)
                .findFirst()
                .map(Person::name)
                .ifPresent(kiosk.pen()::takenBy);
    }

    private static Floor settled(Layers stage) {
        Floor floor = new Floor(stage);
        floor.settle();
        return floor;
    }

    private static void press(JComponent part, String name) {
        if (part instanceof AbstractButton button && name.equals(part.getName())) {
            for (ActionListener listener : button.getActionListeners()) {
                listener.actionPerformed(new ActionEvent(button, ActionEvent.ACTION_PERFORMED, name));
            }
            return;
        }
        for (java.awt.Component child : part.getComponents()) {
            if (child instanceof JComponent component) {
                press(component, name);
            }
        }
    }

    private void write(Floor floor, String name) {
        BufferedImage picture = new BufferedImage(SCREEN_WIDTH, SCREEN_HEIGHT, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = picture.createGraphics();
        floor.printAll(brush);
        brush.dispose();
        Path file = folder.resolve(name + ".png");
        try {
            ImageIO.write(picture, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        painted.add(file);
    }

    /** Holds a stage as a window would. */
    private static final class Floor extends JPanel {

        private static final long serialVersionUID = 1L;
        private static final int PASSES = 8;

        Floor(JComponent part) {
            super(new java.awt.BorderLayout());
            add(part);
        }

        void settle() {
            setSize(SCREEN_WIDTH, SCREEN_HEIGHT);
            if (!isDisplayable()) {
                addNotify();
            }
            for (int pass = 0; pass < PASSES && !isValid(); pass++) {
                validate();
            }
        }

        @Override
        public boolean isShowing() {
            return false;
        }
    }
}
