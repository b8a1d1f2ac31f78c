package org.cagewall.kiosk.cage;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.PartingDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.room.Noticed;
import org.cagewall.room.Reason;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.Stage;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** How the pair of one cage is parted, from the touch to the record. Free of Swing; used on the event thread. */
final class PartingActs {

    private final Scribe scribe;
    private final Picking picking;
    private final NestForms forms;
    private final Words words;
    private final Consumer<String> act;

    /** {@code act} does what is done by another of the page's touches. */
    PartingActs(Scribe scribe, Picking picking, NestForms forms, Words words, Consumer<String> act) {
        this.scribe = scribe;
        this.picking = picking;
        this.forms = forms;
        this.words = words;
        this.act = act;
    }

    /** Whether there was something to do under this name. */
    boolean does(String action) {
        String cage = scribe.name();
        switch (action) {
            case "box-on" -> scribe.record(new NestDeed.BoxOn(cage), scribe.did("box-on"));
            case "box-turned" -> scribe.record(new NestDeed.BoxTurned(cage), scribe.did("box-turned"));
            case "box-off" -> scribe.record(new NestDeed.BoxOff(cage), scribe.did("box-off"));
            case "box-cleaned" -> scribe.record(new NestDeed.BoxCleaned(cage), scribe.did("box-cleaned"));
            case "round-over" -> scribe.record(new NestDeed.RoundEnded(cage), scribe.did("round-over"));
            case "part" -> forms.part(Message.of("cage.part", cage), evidence(), this::begin);
            case "evidence" -> forms.read(Message.of("cage.evidence", cage), evidence());
            case "not-agreeing" -> notAgreeing();
            default -> {
                return false;
            }
        }
        return true;
    }

    private List<String> evidence() {
        return scribe.pair()
                .map(pair ->
                        new EvidenceWords(words).of(Almanac.of(scribe.room()).evidence(pair, scribe.day())))
                .orElse(List.of());
    }

    private void begin(PartedFor reason) {
        scribe.record(new PartingDeed.PartingBegun(scribe.name(), reason), scribe.did("part"));
    }

    private void notAgreeing() {
        picking.ask(Question.of(
                Message.of("cage.not-agreeing", scribe.name()),
                Message.of("cage.not-agreeing-text"),
                AnswerButton.plain("part", Message.of("cage.not-agreeing-part"), () -> begin(PartedFor.FIGHTING)),
                AnswerButton.plain("take-out", Message.of("cage.do.take-out"), () -> act.accept("take-out")),
                AnswerButton.plain(
                        "note",
                        Message.of("cage.not-agreeing-note"),
                        () -> scribe.record(
                                VisitDeed.Noted.at(scribe.name(), Noticed.PAIR_NOT_AGREEING), scribe.did("note"))),
                AnswerButton.leave("leave", Message.of("cage.leave"))));
    }

    /** A stage was touched in the list: it is done, or left out with a word. */
    void stage(Stage stage) {
        String name = Actions.nameOf(stage);
        picking.ask(Question.of(
                Message.of("cage.stage-ask", words.say("cage.do." + name)),
                Message.of(stage == Stage.HEN_OUT && isCockThere() ? "cage.hen-first-text" : "cage.stage-text"),
                AnswerButton.main("do", Message.of("cage.stage-do"), () -> act.accept(name)),
                AnswerButton.plain("skip", Message.of("cage.stage-skip"), () -> skip(stage)),
                AnswerButton.leave("leave", Message.of("cage.leave"))));
    }

    private boolean isCockThere() {
        return scribe.pair()
                .filter(pair -> scribe.room().cockOut(pair).isEmpty())
                .isPresent();
    }

    private void skip(Stage stage) {
        picking.ask(Question.of(
                Message.of("cage.skip", words.say("cage.do." + Actions.nameOf(stage))),
                Message.of("cage.skip-text"),
                Stream.concat(
                                Stream.of(Reason.NEXT_ROUND, Reason.NOT_NEEDED).map(why -> skipped(stage, why)),
                                Stream.of(
                                        AnswerButton.plain(
                                                "own",
                                                Message.of("cage.skip-why.own"),
                                                () -> picking.note(
                                                        Message.of("cage.skip-why.own"),
                                                        why -> skipped(stage, why, scribe))),
                                        AnswerButton.leave("leave", Message.of("cage.leave"))))
                        .toArray(AnswerButton[]::new)));
    }

    private AnswerButton skipped(Stage stage, Reason why) {
        return AnswerButton.plain(
                why.id(), Message.of("cage.skip-why." + why.id()), () -> skipped(stage, why.id(), scribe));
    }

    private static void skipped(Stage stage, String why, Scribe scribe) {
        scribe.record(
                new PartingDeed.StageSkipped(scribe.name(), stage, why),
                Message.of("cage.done.skipped", scribe.name(), stage));
    }
}
