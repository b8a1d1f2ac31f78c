package org.cagewall.kiosk.handover;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Reading;
import org.cagewall.handover.Pack;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.paper.Printers;
import org.cagewall.room.Role;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Has the pack printed or put into a file. Free of Swing; used on the event thread. */
final class PackActs {

    private final Desk desk;
    private final Pen pen;
    private final Asking asking;
    private final Notices notices;
    private final Words words;
    private final Shown<HandoverState> shown;
    private final PackJob job;

    PackActs(
            Desk desk,
            Pen pen,
            Asking asking,
            Notices notices,
            Words words,
            Printers printers,
            Shown<HandoverState> shown) {
        this.desk = desk;
        this.pen = pen;
        this.asking = asking;
        this.notices = notices;
        this.words = words;
        this.shown = shown;
        this.job = new PackJob(words, desk.folder(), printers);
    }

    /** Shows what is in it, and looks for printers. */
    void open() {
        thePack().ifPresent(pack -> {
            page(new HandoverState.Packing(
                    words.say("handover.pack-title", pack.absence().sitter()),
                    contents(pack),
                    Optional.empty(),
                    KioskSettings.read(desk.folder().kioskProperties()).printer(),
                    HandoverState.Work.NONE,
                    Optional.empty(),
                    HandoverState.Came.WELL));
            desk.work(book -> job.printers(), answer -> {
                answer.then(
                        printers -> packing(now -> now.with(
                                printers,
                                printers.contains(now.printer())
                                        ? now.printer()
                                        : printers.stream().findFirst().orElse(""))),
                        why -> withoutPrinter(),
                        code -> withoutPrinter());
            });
        });
    }

    private void withoutPrinter() {
        packing(now -> now.with(List.of(), ""));
    }

    private Optional<Pack> thePack() {
        return desk.room()
                .absenceOn(desk.today())
                .or(() -> desk.room().absenceAfter(desk.today()))
                .map(away -> Pack.of(desk.room(), desk.today(), away));
    }

    private List<String> contents(Pack pack) {
        return List.of(
                words.say("handover.pack-door"),
                words.say("handover.pack-wall", pack.walls().size()),
                words.say("handover.pack-routine"),
                words.say("handover.pack-days", pack.days().size(), pack.left()),
                words.say("handover.pack-cases"),
                words.say("handover.pack-back"));
    }

    void printer(String name) {
        packing(now -> now.with(now.printers().orElse(List.of()), name));
    }

    void save() {
        make(job::save, "handover.pack-saved");
    }

    void print() {
        if (shown.now().page() instanceof HandoverState.Packing now) {
            make(pack -> job.print(pack, now.printer()), "handover.pack-printed");
        }
    }

    /** Only an owner or a keeper prints; pages are made of the room as it is at that moment. */
    private void make(Function<Pack, PackJob.Result> how, String done) {
        Optional<Pack> pack = thePack();
        if (pen.holder().filter(person -> person.role() != Role.SITTER).isEmpty()) {
            asking.tell(Message.of("handover.pack-sitter"), Message.of("handover.pack-sitter-text"));
        } else if (pack.isPresent()) {
            packing(HandoverState.Packing::working);
            desk.work(book -> how.apply(pack.get()), answer -> follow(answer, done));
        }
    }

    private void follow(Reading<PackJob.Result> answer, String done) {
        answer.then(
                result -> {
                    result.problem().ifPresent(why -> say(HandoverState.Came.NOT, words.say(why)));
                    result.where()
                            .ifPresent(where -> say(
                                    HandoverState.Came.WELL,
                                    words.say(done, where, desk.folder().path().toString())));
                },
                reason -> say(HandoverState.Came.NOT, words.sentence(reason)),
                code -> {
                    packing(now -> now.saying(HandoverState.Came.WELL, Optional.empty()));
                    notices.failed(code);
                });
    }

    private void say(HandoverState.Came how, String what) {
        packing(now -> now.saying(how, Optional.of(what)));
    }

    private void packing(UnaryOperator<HandoverState.Packing> to) {
        if (shown.now().page() instanceof HandoverState.Packing now) {
            page(to.apply(now));
        }
    }

    private void page(HandoverState.Page page) {
        shown.change(state -> new HandoverState(state.title(), state.subtitle(), state.tab(), page));
    }
}
