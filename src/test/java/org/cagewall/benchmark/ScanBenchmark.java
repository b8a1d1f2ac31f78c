package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JPanel;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.Kiosk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Pictures;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What it costs from the picture of a card to the painted page of its cage. */
@Tag("benchmark")
class ScanBenchmark {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 800;

    @TempDir
    Path folder;

    @Test
    void aScanToThePaintedPageAgainstDecodingAndOneQuery() {
        try (Desk desk = TestDesk.demo(folder.resolve("room"))) {
            new EventThread().finish(() -> race(desk));
        }
    }

    private static void race(Desk desk) {
        Light.DAY.start(TextSize.NORMAL);
        Room room = desk.room();
        List<BufferedImage> cards = room.walk()
                .limit(8)
                .map(cage -> picture(CardFaces.code(room, cage).text()))
                .toList();
        Layers stage = new Layers(Words.english());
        Kiosk kiosk = Kiosk.on(stage, desk, Words.english());
        Floor floor = new Floor(stage);
        BufferedImage screen = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
        Race.run(
                "a scan to the painted page",
                3,
                25,
                Race.of(cards.size(), i -> {
                    kiosk.navigator()
                            .go(Destination.Cage.byScan(
                                    cageOf(desk.room(), cards.get(i)).name()));
                    floor.paintOn(screen);
                }),
                Race.of(cards.size(), i -> assertThat(log(desk, cageOf(desk.room(), cards.get(i))))
                        .isNotEmpty()));
    }

    private static Cage cageOf(Room room, BufferedImage picture) {
        String text = new Decoder().decode(Pictures.of(picture)).text().orElseThrow();
        return room.cageNumbered(CardCode.parse(text).orElseThrow().number()).orElseThrow();
    }

    private static List<LogEntry> log(Desk desk, Cage cage) {
        List<LogEntry> entries = new ArrayList<>();
        desk.log(LogQuery.newest(10).ofCage(cage.id()), answer -> answer.then(entries::addAll, why -> {}, code -> {}));
        return entries;
    }

    /** A card as a camera of 1280 x 720 sees it at a forearm's length, on a grey wall. */
    private static BufferedImage picture(String text) {
        BufferedImage picture = new BufferedImage(1280, 720, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = picture.createGraphics();
        brush.setColor(new Color(150, 148, 140));
        brush.fillRect(0, 0, 1280, 720);
        brush.setColor(new Color(236, 233, 226));
        brush.fillRect(380, 200, 480, 310);
        brush.setColor(new Color(45, 44, 42));
        Symbol symbol = Symbols.matrix(text);
        int module = 7;
        for (Symbol.Bar bar : symbol.bars()) {
            brush.fillRect(
                    660 + bar.column() * module, 230 + bar.row() * module, bar.width() * module, bar.height() * module);
        }
        brush.dispose();
        return picture;
    }

    /** Holds the stage as a window would. */
    private static final class Floor extends JPanel {

        private static final long serialVersionUID = 1L;

        Floor(Layers stage) {
            super(new BorderLayout());
            add(stage);
            setSize(WIDTH, HEIGHT);
            addNotify();
        }

        void paintOn(BufferedImage screen) {
            for (int pass = 0; pass < 8 && !isValid(); pass++) {
                validate();
            }
            Graphics2D brush = screen.createGraphics();
            printAll(brush);
            brush.dispose();
        }

        @Override
        public boolean isShowing() {
            return false;
        }
    }
}
