package org.cagewall.command;

import java.util.concurrent.Callable;
import org.cagewall.demo.DemoRoom;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** Makes the invented birdroom. */
@Command(name = "demo", header = "Makes an invented birdroom in a data folder that has none yet.")
final class DemoCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Override
    public Integer call() {
        return cagewall.inARoom(desk -> {
            if (!makeWhereEmpty(desk)) {
                throw Refusal.of("store.not-empty", Cagewall.shown(cagewall.data()));
            }
            long entries = desk.room().head();
            cagewall.answer(
                    Json.object()
                            .with("folder", Cagewall.shown(cagewall.data()))
                            .with("entries", entries),
                    "command.demo-made",
                    entries,
                    Cagewall.shown(cagewall.data()));
            return Main.DONE;
        });
    }

    /** Records the invented birdroom, all of it or nothing, unless something was recorded before; whether it did. */
    static boolean makeWhereEmpty(AtDesk desk) {
        if (!desk.room().isEmpty()) {
            return false;
        }
        desk.record(DemoRoom.lines(desk.today()));
        return true;
    }
}
