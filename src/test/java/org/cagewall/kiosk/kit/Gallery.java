package org.cagewall.kiosk.kit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.NextRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.nest.EggButton;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.kiosk.kit.paper.QrView;
import org.cagewall.kiosk.kit.wall.Tile;
import org.cagewall.kiosk.kit.wall.TileFace;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.shell.Screen;
import org.cagewall.kiosk.shell.Screens;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** Pages made of every part, to be looked at. Used on the event thread. */
final class Gallery {

    private static final Words WORDS = Words.english();
    private static final Runnable NOTHING = () -> {};

    private Gallery() {}

    static Layers wall() {
        Grid grid = new Grid(3, 6);
        int place = 0;
        for (TileFace face : tiles()) {
            Tile tile = new Tile("tile." + face.name(), face, NOTHING);
            tile.setSelected(face.name().equals("A5"));
            grid.put(tile, place / 6, place % 6);
            place++;
        }
        return stage(
                new Heading("North wall", "Tuesday 14 April \u00b7 12 pairs \u00b7 3 due today, 1 late"),
                grid,
                new Destination.Wall());
    }

    static List<TileFace> tiles() {
        return List.of(
                new TileFace("A1", "Pair 4", "5 eggs, 4 full", "hatch from 26 Apr", TileFace.State.CALM),
                new TileFace("A2", "Pair 9", "4 chicks, 1 egg", "ring 2 by Thursday", TileFace.State.DUE),
                new TileFace("A3", "", "Empty", "clean since 2 Apr", TileFace.State.EMPTY),
                new TileFace("A4", "Pair 2", "Box on, day 9", "egg by 24 Apr", TileFace.State.CALM),
                new TileFace(
                        "A5", "Pair 7 \u00b7 round 2", "2 eggs, 3 chicks", "take away Friday", TileFace.State.CALM),
                new TileFace("A6", "Pair 11", "3 eggs", "next 15 Apr", TileFace.State.CALM),
                new TileFace("B1", "Pair 1", "Hen alone", "flight 25 Apr", TileFace.State.CALM),
                new TileFace("B2", "Pair 6", "Box turned", "box off today", TileFace.State.DUE),
                new TileFace("B3", "Pair 3", "5 eggs", "candle, late 2 d", TileFace.State.LATE),
                new TileFace("B4", "", "2 young cocks", "weaned 6 Apr", TileFace.State.CALM),
                new TileFace("B5", "Pair 8", "6 eggs, all clear", "past due 22 Apr", TileFace.State.CALM),
                new TileFace("B6", "Pair 5", "Different", "hen quiet, 7:40", TileFace.State.DIFFERENT),
                new TileFace("C1", "", "4 hens", "counted Monday", TileFace.State.CALM),
                new TileFace("C2", "Pair 10", "No box", "box on 20 Apr", TileFace.State.CALM),
                new TileFace("C3", "Pair 12", "1 chick, 4 eggs", "next hatch Wed", TileFace.State.CALM),
                new TileFace("C4", "", "Empty", "", TileFace.State.EMPTY),
                new TileFace("C5", "", "New, day 12", "quarantine to 2 May", TileFace.State.CALM),
                new TileFace("C6", "", "3 young", "seen cracking seed", TileFace.State.CALM));
    }

    static Layers cage() {
        Pane page = clear(
                new MigLayout("insets 0, fill, gap 24 16", "[grow 1,fill,sizegroup][grow 1,fill,sizegroup]", "[fill]"));
        Pane left = clear(new MigLayout(
                "insets 0, fill, wrap 2, gap 12 16",
                "[fill,grow,sizegroup][fill,grow,sizegroup]",
                "[grow][]" + "[grow]"));
        left.add(nest(), "spanx 2, grow");
        left.add(bird("Cock", "HB 26-041", "light green \u00b7 fit 2 Apr"), "grow");
        left.add(bird("Hen", "HB 25-117", "grey \u00b7 sits well"), "grow");
        left.add(entries(), "spanx 2, grow");
        page.add(left, "grow");
        page.add(actions(), "grow");
        return stage(
                new Heading("Cage A1", "Pair 4 \u00b7 sitting since 8 April \u00b7 scanned 9:14"),
                page,
                Destination.Cage.byScan("A1"));
    }

    private static Card nest() {
        Card card = new Card();
        Pane head = clear(new MigLayout("insets 0, fillx", "[]push[]"));
        head.add(new WrapLabel("In the box", TextStyle.BUTTON, Tone.SOFT).lines(1));
        head.add(new WrapLabel("first hatch 26 Apr, between 25 and 29", TextStyle.SECOND, Tone.SOFT).lines(1));
        card.add(head, "growx");
        card.add(eggs(), "growx, gaptop 8");
        card.add(
                new WrapLabel(
                        "Candle egg 5 on Thursday. Clear egg 4 can stay: it holds the hen.",
                        TextStyle.SECOND,
                        Tone.INK),
                "growx, wmin 0");
        return card;
    }

    private static JPanel eggs() {
        Pane eggs = clear(new java.awt.GridLayout(1, 0));
        eggs.add(new EggButton("egg.1", EggLook.FULL, "1", "26 Apr", "egg 1, full", NOTHING));
        eggs.add(new EggButton("egg.2", EggLook.FULL, "2", "26 Apr", "egg 2, full", NOTHING));
        eggs.add(new EggButton("egg.3", EggLook.FULL, "3", "28 Apr", "egg 3, full", NOTHING));
        eggs.add(new EggButton("egg.4", EggLook.CLEAR, "4", "clear", "egg 4, clear", NOTHING));
        eggs.add(new EggButton("egg.5", EggLook.NOT_CANDLED, "5", "candle", "egg 5, not candled", NOTHING));
        eggs.add(new EggButton("egg.6", EggLook.FULL, "K", "from B3", "egg K from B3, full", NOTHING));
        return eggs;
    }

    private static Card bird(String sex, String ring, String line) {
        Card card = new Card(new MigLayout("insets 14 20 14 20, wrap 1, gap 0 4"));
        card.add(new WrapLabel(sex, TextStyle.TAG, Tone.SOFT));
        card.add(new WrapLabel(ring, TextStyle.LEAD, Tone.INK));
        card.add(new WrapLabel(line, TextStyle.SECOND, Tone.SOFT));
        return card;
    }

    private static Card entries() {
        Card card = new Card(new MigLayout("insets 14 20 14 20, wrap 2, gap 0 4", "[116!][grow,fill]"));
        card.add(new WrapLabel("Last entries", TextStyle.TAG, Tone.SOFT), "spanx 2");
        String[][] lines = {
            {"Today 7:32", "all well \u00b7 Tomas, by scan"},
            {"Mon 18:05", "egg 5 laid \u00b7 Ines"},
            {"Sun 9:20", "egg 6 laid \u00b7 Ines"}
        };
        for (String[] line : lines) {
            card.add(new WrapLabel(line[0], TextStyle.SECOND, Tone.SOFT).lines(1));
            WrapLabel what = new WrapLabel(line[1], TextStyle.SECOND, Tone.INK);
            card.add(line[0].startsWith("Sun") ? what.struckOut() : what, "wmin 0");
        }
        return card;
    }

    private static JPanel actions() {
        Pane right = clear(new MigLayout(
                "insets 0, fill, wrap 2, gap 16 16",
                "[grow,fill,sizegroup][grow,fill,sizegroup]",
                "[grow 120][][grow 108][grow 108][grow 108][]"));
        right.add(
                TouchButton.of(ButtonKind.MAIN, "all-well", "All well", NOTHING)
                        .type(TextStyle.MAIN)
                        .tall(110),
                "grow");
        right.add(
                TouchButton.of(ButtonKind.OUTLINED, "different", "Something different", NOTHING)
                        .type(TextStyle.ACTION)
                        .tall(110),
                "grow");
        right.add(new WrapLabel("What happened?", TextStyle.BUTTON, Tone.SOFT));
        right.add(
                new Segment<>(
                        "when",
                        List.of(new Choice<>("today", "today", 0), new Choice<>("yesterday", "yesterday", 1)),
                        day -> {}),
                "growx 0, alignx right");
        for (String what : new String[] {"Candle", "Hatched", "Take egg out", "Move egg", "Dummies", "Hen off eggs"}) {
            ButtonKind kind = what.equals("Candle") ? ButtonKind.LIKELY : ButtonKind.PLAIN;
            right.add(TouchButton.of(kind, "do." + what, what, NOTHING).type(TextStyle.ACTION), "grow");
        }
        right.add(TouchButton.of(ButtonKind.QUIET, "part", "Begin parting this pair", NOTHING), "spanx 2, grow");
        return right;
    }

    static Layers sitter() {
        Pane page = clear(new MigLayout("insets 0, fill, gap 20", "[grow,fill][332!,fill]", "[grow,fill]"));
        Stack list = new Stack();
        list.add(new NextRow(
                "next",
                "B1",
                "You should see: 1 hen",
                "Husks out. Fill the seed. Fresh water. One scoop of soft food.",
                List.of(
                        TouchButton.of(ButtonKind.MAIN, "all-well", "All well", NOTHING),
                        TouchButton.of(ButtonKind.OUTLINED, "different", "Something different", NOTHING)
                                .type(TextStyle.LEAD))));
        list.add(new ListRow(
                "row.B2",
                RowFace.of("B2", "You should see: 2 birds, box turned", "Husks out. Fill the seed. Fresh water."),
                NOTHING));
        list.add(new ListRow(
                "row.B3",
                RowFace.of(
                        "B3",
                        "You should see: 1 or 2 birds, box shut",
                        "Fill the seed. Fresh water. Leave the box shut."),
                NOTHING));
        list.add(new ListRow(
                "row.B4",
                RowFace.of("B4", "You should see: 2 birds", "Hen quiet, reported 7:40")
                        .tagged(TagKind.DIFFERENT, "Different")
                        .in(RowFace.State.DIFFERENT),
                NOTHING));
        list.add(new ListRow(
                "row.A6", RowFace.of("A6", "2 birds", "Done 8:10, all well").in(RowFace.State.DONE), NOTHING));
        list.add(new ListRow(
                "row.A7",
                RowFace.of("A7", "2 birds", "Done 8:12, all well")
                        .in(RowFace.State.DONE)
                        .tagged(TagKind.LATE, "late 1 day"),
                NOTHING));
        page.add(new TouchScroll(WORDS, "list", list));
        page.add(phone());
        Layers stage = stage(
                new Heading(
                        "Good morning, Tomas",
                        "Tuesday 14 April \u00b7 11 of 26 cages done \u00b7 about 25 minutes left"),
                page,
                new Destination.Today());
        stage.person("Tomas, sitter", NOTHING);
        stage.places(List.of(
                new NavBar.Entry<>("wall", "Wall", new Destination.Wall()),
                new NavBar.Entry<>("today", "Today", new Destination.Today()),
                new NavBar.Entry<>("phone", "Phone", new Destination.Phone()),
                new NavBar.Entry<>("close", "Close the day", new Destination.CloseTheDay())));
        return stage;
    }

    private static Card phone() {
        Card card = new Card(new MigLayout("insets 16 24 16 24, wrap 1, fillx, gap 0 12", "[grow,fill]")).strong();
        card.add(new WrapLabel("Stop and phone", TextStyle.ACTION, Tone.INK));
        for (String rule : new String[] {
            "A bird on the floor, puffed up, gasping, bleeding, not eating.",
            "A bird dead, loose, stuck or missing. Do not chase it.",
            "Room over 32 \u00b0C, power off, smoke, water, rats, a cat."
        }) {
            Card one = new Card().attention();
            one.add(new WrapLabel(rule, TextStyle.TAG, Tone.ATTENTION_INK), "growx, wmin 0");
            card.add(one, "growx");
        }
        for (String[] each :
                new String[][] {{"Ines", "0555 0142"}, {"Club friend", "0555 0177"}, {"Bird vet", "0555 0190"}}) {
            Pane line = clear(new MigLayout("insets 0 8 0 0, fillx", "[]push[]"));
            line.add(new WrapLabel(each[0], TextStyle.BUTTON, Tone.SOFT).lines(1));
            line.add(new WrapLabel(each[1], TextStyle.ACTION, Tone.INK).lines(1));
            card.add(line);
        }
        card.add(new WrapLabel("No answer in 15 minutes? Next one.", TextStyle.SECOND, Tone.SOFT), "wmin 0");
        return card;
    }

    static JComponent buttons() {
        Pane page = clear(new MigLayout(
                "insets 24, wrap 4, fillx, gap 16",
                "[grow,fill,sizegroup][grow,fill,sizegroup][grow,fill,sizegroup][grow,fill,sizegroup]"));
        for (ButtonKind kind : ButtonKind.values()) {
            String name = kind.name().charAt(0)
                    + kind.name().substring(1).toLowerCase().replace('_', ' ');
            page.add(TouchButton.of(kind, "calm." + kind, name, NOTHING).tall(88));
            TouchButton pressed = TouchButton.of(kind, "pressed." + kind, name + " pressed", NOTHING)
                    .tall(88);
            pressed.getModel().setArmed(true);
            pressed.getModel().setPressed(true);
            page.add(pressed);
        }
        TouchButton off =
                TouchButton.of(ButtonKind.PLAIN, "off", "Not now", NOTHING).tall(88);
        off.setEnabled(false);
        page.add(off);
        page.add(TouchButton.of(ButtonKind.PLAIN, "two", "Something different was seen in here", NOTHING)
                .type(TextStyle.ACTION)
                .tall(88));
        page.add(TouchButton.of(ButtonKind.OUTLINED, "second", "Ines", NOTHING)
                .type(TextStyle.LEAD)
                .second("owner, 0555 0142")
                .tall(88));
        page.add(
                TouchButton.of(ButtonKind.PLAIN, "pill", "Ines, owner", NOTHING).pill());
        page.add(new Tag(TagKind.DUE, "box off today"));
        page.add(new Tag(TagKind.LATE, "candle, late 2 d"));
        page.add(new Tag(TagKind.DIFFERENT, "hen quiet, 7:40"));
        page.add(new Tag(TagKind.PLAIN, "by scan"));
        Pane eggs = clear(new java.awt.GridLayout(1, 0));
        for (EggLook look : EggLook.values()) {
            eggs.add(new EggButton(
                    "egg." + look,
                    look,
                    String.valueOf(look.ordinal() + 1),
                    look.name().toLowerCase().replace('_', ' '),
                    look.name(),
                    NOTHING));
        }
        EggButton chosen = new EggButton("egg.chosen", EggLook.FULL, "K", "chosen", "chosen", NOTHING);
        chosen.setSelected(true);
        eggs.add(chosen);
        page.add(eggs, "spanx 4");
        return onGround(page);
    }

    static JComponent inputs() {
        Pane page = clear(
                new MigLayout("insets 24, fill, gap 32 16", "[grow,fill,sizegroup][grow,fill,sizegroup]", "[top]"));
        Stack left = new Stack(20);
        left.add(Field.line("name", "Name of the cage", "B3"));
        Field wrong = Field.line("ring", "Ring", "HB 26-0");
        wrong.wrong("There is no bird with this ring. The nearest is HB 26-041.");
        left.add(wrong);
        left.add(Field.note("note", "What did you see?", "Hen quiet, sits low on the perch. Droppings look right."));
        left.add(Chips.someOf(
                        "signs",
                        List.of(
                                choice("puffed up"),
                                choice("on the floor"),
                                choice("not eating"),
                                choice("blood"),
                                choice("droppings"),
                                choice("other")),
                        all -> {})
                .choose(List.of("puffed up", "droppings")));
        left.add(new Stepper(WORDS, "birds", "Birds", 0, 40, 5, number -> {}));
        page.add(left);
        Pane right = clear(new MigLayout("insets 0, wrap 1, fillx, gap 0 20", "[grow,fill]"));
        LocalDate today = LocalDate.of(2026, 4, 14);
        right.add(new DateStrip(
                WORDS, "day", today, today.minusDays(10), today.plusDays(60), today.plusDays(4), day -> {}));
        right.add(new ListRow("plain", RowFace.of("", "The grey hen has moved to the flight", ""), NOTHING));
        page.add(right);
        return onGround(page);
    }

    static JComponent pad() {
        Pane page = clear(new MigLayout("insets 24, fill, gap 32", "[420!][grow,fill]", "[top]"));
        page.add(new CountPad(WORDS, "pad", 400, number -> {}));
        Stack right = new Stack(20);
        boolean[][] dark = new boolean[21][21];
        for (int row = 0; row < 21; row++) {
            for (int column = 0; column < 21; column++) {
                dark[row][column] = (row * 7 + column * 11 + row * column) % 3 == 0;
            }
        }
        right.add(new QrView(dark, "cage B3"));
        right.add(new EmptyState(
                "No cages yet",
                "Say how many rows and columns your first wall has, and the cages appear in their places.",
                List.of(TouchButton.of(ButtonKind.MAIN, "first", "Lay out the first wall", NOTHING))));
        page.add(right);
        return onGround(page);
    }

    private static Choice<String> choice(String word) {
        return new Choice<>(word, word, word);
    }

    private static JComponent onGround(JComponent page) {
        JPanel ground = new JPanel(new java.awt.BorderLayout());
        ground.add(page);
        return ground;
    }

    static Pane clear(java.awt.LayoutManager layout) {
        return new Pane(layout);
    }

    static Layers stage(Heading heading, JComponent view, Destination here) {
        Layers stage = new Layers(WORDS);
        stage.open(Screens.none().with(here.getClass(), any -> new Page(heading, view)), here);
        stage.person("Ines, owner", NOTHING);
        List<NavBar.Entry<Destination>> places = new ArrayList<>();
        places.add(new NavBar.Entry<>("wall", "Wall", new Destination.Wall()));
        places.add(new NavBar.Entry<>("today", "Today", new Destination.Today()));
        places.add(new NavBar.Entry<>("handover", "Handover", new Destination.Handover()));
        places.add(new NavBar.Entry<>("cards", "Cards", new Destination.Cards()));
        places.add(new NavBar.Entry<>("birds", "Birds", new Destination.Birds()));
        places.add(new NavBar.Entry<>("setup", "Setup", new Destination.Setup()));
        stage.places(places);
        return stage;
    }

    private record Page(Heading heading, JComponent view) implements Screen {}

    static Optional<JComponent> none() {
        return Optional.empty();
    }
}
