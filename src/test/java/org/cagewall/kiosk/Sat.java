package org.cagewall.kiosk;

import java.util.List;
import java.util.function.BiFunction;
import org.cagewall.desk.Daybook;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Screen;
import org.cagewall.kiosk.shell.Screens;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Role;
import org.cagewall.text.Words;

/** A screen on its stage over a real desk, as a sitter and an owner have it on the tablet. Painted with no window. */
public final class Sat {

    private static final Words WORDS = Words.english();

    private static final List<NavBar.Entry<Destination>> SITTERS = List.of(
            new NavBar.Entry<>("wall", "Wall", new Destination.Wall()),
            new NavBar.Entry<>("today", "Today", new Destination.Today()),
            new NavBar.Entry<>("phone", "Phone", new Destination.Phone()),
            new NavBar.Entry<>("close", "Close the day", new Destination.CloseTheDay()));

    private static final List<NavBar.Entry<Destination>> OWNERS = List.of(
            new NavBar.Entry<>("wall", "Wall", new Destination.Wall()),
            new NavBar.Entry<>("today", "Today", new Destination.Today()),
            new NavBar.Entry<>("handover", "Handover", new Destination.Handover()),
            new NavBar.Entry<>("cards", "Cards", new Destination.Cards()),
            new NavBar.Entry<>("birds", "Birds", new Destination.Birds()),
            new NavBar.Entry<>("setup", "Setup", new Destination.Setup()));

    private Sat() {}

    /** The screen in this person's hands. */
    public static Painted at(
            Daybook book, TextSize size, String person, Destination here, BiFunction<Pen, Layers, Screen> maker) {
        return at(book, Light.DAY, size, person, here, maker);
    }

    public static Painted at(
            Daybook book,
            Light light,
            TextSize size,
            String person,
            Destination here,
            BiFunction<Pen, Layers, Screen> maker) {
        return among(book, light, size, person, here, (pen, stage) -> Screens.none()
                .with(here.getClass(), any -> maker.apply(pen, stage)));
    }

    /** The first of several screens in this person's hands; it leads to the others. */
    public static Painted among(
            Daybook book,
            Light light,
            TextSize size,
            String person,
            Destination here,
            BiFunction<Pen, Layers, Screens> screens) {
        return Painted.of(light, size, 1280, 800, () -> {
            Layers stage = new Layers(WORDS);
            Pen pen = new Pen(book.desk(), stage, stage);
            pen.takenBy(person);
            stage.open(screens.apply(pen, stage), here);
            stage.person(
                    WORDS.say("kiosk.person", person, pen.holder().orElseThrow().role()), () -> {});
            stage.places(pen.holder().orElseThrow().role() == Role.SITTER ? SITTERS : OWNERS);
            return stage;
        });
    }
}
