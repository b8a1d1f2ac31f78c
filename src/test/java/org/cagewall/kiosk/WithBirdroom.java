package org.cagewall.kiosk;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What tests of a screen share that sit in one furnished birdroom with two walls: opened before each, closed after. */
public abstract class WithBirdroom {

    @TempDir
    protected Path folder;

    protected Birdroom birdroom;

    @BeforeEach
    void open() {
        birdroom = Birdroom.furnished(folder.resolve("room"));
    }

    @AfterEach
    void close() {
        birdroom.close();
    }
}
