package org.cagewall.kiosk;

import java.nio.file.Path;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What tests share that look at screens of the demo birdroom: it is opened before each of them and closed after. */
public abstract class WithDemo {

    protected static final Words WORDS = Words.english();

    @TempDir
    protected Path folder;

    protected Desk desk;

    @BeforeEach
    void open() {
        desk = TestDesk.demo(folder);
    }

    @AfterEach
    void close() {
        desk.close();
    }
}
