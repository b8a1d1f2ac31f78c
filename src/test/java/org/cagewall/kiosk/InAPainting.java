package org.cagewall.kiosk;

import java.nio.file.Path;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** The whole kiosk on a real desk, painted without a window. */
abstract class InAPainting {

    static final Words WORDS = Words.english();

    @TempDir
    Path folder;

    Desk desk;
    Kiosk kiosk;
    Painted painted;

    @BeforeEach
    void open() {
        desk = desk(folder);
        painted = Painted.screen(() -> {
            Layers stage = new Layers(WORDS);
            kiosk = Kiosk.on(stage, desk, WORDS);
            return stage;
        });
    }

    /** The furnished room; whoever needs another one opens that. */
    Desk desk(Path empty) {
        return TestDesk.furnished(empty);
    }

    @AfterEach
    void close() {
        desk.close();
    }
}
