package org.cagewall.kiosk;

import java.nio.file.Path;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.EventThread;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What journeys share that go through the kiosk in a real window, on a birdroom of their own on disk. */
abstract class InAWindow {

    @TempDir
    Path folder;

    Desk desk;
    Live live;

    @BeforeEach
    void open() {
        make(room());
        desk = Desk.open(DataFolder.open(room()), Lanes.answeringOn(new EventThread()), clocks());
        live = Live.kiosk(desk);
    }

    @AfterEach
    void close() {
        live.close();
        desk.close();
    }

    /** Makes the birdroom in which the journey begins; a small furnished one unless it says otherwise. */
    void make(Path room) {
        TestDesk.furnished(room).close();
    }

    /** The day and the time of the journey. */
    Clocks clocks() {
        return TestDesk.clocks();
    }

    /** The kiosk is left, and the record opened again as it stands on disk. */
    void leaveAndReopen() {
        close();
        desk = Desk.open(DataFolder.open(room()), Lanes.inline(), clocks());
    }

    final Path room() {
        return folder.resolve("room");
    }
}
