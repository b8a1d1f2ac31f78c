package org.cagewall.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.desk.Book;
import org.cagewall.desk.Head;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;

/** Follows the chain of digests through the whole record. */
@Command(name = "verify", header = "Checks that no entry of the record was changed, lost or added outside the program.")
final class VerifyCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::verify);
    }

    private int verify(AtDesk desk) {
        Optional<Long> broken = desk.read(Book::firstBroken);
        Head head = desk.read(Book::head);
        Json json = Json.object()
                .with("entries", head.entries())
                .with("digest", head.digest())
                .with("whole", broken.isEmpty())
                .with("firstBroken", broken);
        if (broken.isPresent() && !cagewall.wantsJson()) {
            throw Refusal.of("command.chain-broken", broken.get());
        }
        cagewall.answer(json, "command.chain-whole", head.entries(), head.digest());
        return broken.isEmpty() ? Main.DONE : Main.REFUSED;
    }
}
