package org.cagewall.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Decoding;
import org.cagewall.scan.Meaning;
import org.cagewall.scan.Pictures;
import org.cagewall.text.Message;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Reads cage cards from picture files. */
@Command(
        name = "scan",
        header = "Reads cage cards from pictures: a line for each, with the cage that it opens.",
        description = "A picture that opens no cage has a dash in its line, and the reason on standard error.")
final class ScanCommand implements Callable<Integer> {

    private static final String NOTHING = "-";

    @ParentCommand
    private Cagewall cagewall;

    @Option(names = "--text", description = "Print what each code says, whatever it is; needs no birdroom.")
    private boolean text;

    @Parameters(paramLabel = "IMAGE", arity = "1..*", description = "Pictures, such as PNG or JPEG.")
    private List<Path> images;

    @Override
    public Integer call() {
        return text ? tell(images.stream().map(ScanCommand::said).toList()) : cagewall.inTheRoom(this::scan);
    }

    private int scan(AtDesk desk) {
        return tell(images.stream().map(image -> meant(image, desk.room())).toList());
    }

    /** What came of one picture. */
    private record Scanned(
            Path image,
            Optional<Meaning.Opens> opens,
            Optional<String> said,
            Optional<Message> besides,
            Optional<Message> problem) {

        /** A line is one line, and no code may tell the terminal what to do. */
        Optional<String> answer(boolean text) {
            return text ? said.map(it -> it.replaceAll("\\R|\\p{Cntrl}", " ")) : cage();
        }

        Optional<String> cage() {
            return opens.map(Meaning.Opens::cage).map(Cage::name);
        }

        Optional<Boolean> outOfDate() {
            return opens.map(Meaning.Opens::isOutOfDate);
        }
    }

    private static Scanned said(Path image) {
        Decoding decoding = new Decoder().decode(Pictures.read(image));
        return new Scanned(image, Optional.empty(), decoding.text(), decoding.besides(), decoding.reason());
    }

    private static Scanned meant(Path image, Room room) {
        Scanned scanned = said(image);
        if (scanned.said().isEmpty()) {
            return scanned;
        }
        Meaning meaning = Meaning.of(CardCode.read(scanned.said().get()), room);
        if (meaning instanceof Meaning.Opens opens) {
            return new Scanned(image, Optional.of(opens), scanned.said(), scanned.besides(), Optional.empty());
        }
        Message why = ((Meaning.Says) meaning).sentence();
        return new Scanned(image, Optional.empty(), scanned.said(), scanned.besides(), Optional.of(why));
    }

    private int tell(List<Scanned> all) {
        if (cagewall.wantsJson()) {
            cagewall.console().print(Json.line(all.stream().map(this::json).toList()));
        } else {
            all.forEach(this::tell);
        }
        return all.stream().allMatch(each -> each.problem().isEmpty()) ? Main.DONE : Main.REFUSED;
    }

    private void tell(Scanned scanned) {
        cagewall.console().print(scanned.answer(text).orElse(NOTHING));
        scanned.problem().ifPresent(why -> complain(scanned, why));
        scanned.besides().ifPresent(others -> complain(scanned, others));
        scanned.opens()
                .filter(Meaning.Opens::isOutOfDate)
                .map(Meaning.Opens::old)
                .ifPresent(old -> complain(scanned, old));
    }

    private void complain(Scanned scanned, Message why) {
        cagewall.console()
                .complain(Message.of("command.about-image", scanned.image().toString(), why));
    }

    private Json json(Scanned scanned) {
        return Json.object()
                .with("image", scanned.image().toString())
                .with("cage", scanned.cage())
                .with("outOfDate", scanned.outOfDate())
                .with("text", scanned.said())
                .with("problem", scanned.problem().map(cagewall.console().words()::say));
    }
}
