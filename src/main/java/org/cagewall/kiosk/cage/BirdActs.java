package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Lines;
import org.cagewall.deed.NestDeed;
import org.cagewall.kiosk.kit.AgeWords;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.room.Cage;
import org.cagewall.room.Keeps;
import org.cagewall.room.Room;
import org.cagewall.room.Unfit;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** What happens to the birds of one cage, from the touch to the record. Free of Swing; used on the event thread. */
final class BirdActs {

    /** The last treatment is looked for among n entries. */
    private static final int LOOK_BACK = 2_000;

    private final Scribe scribe;
    private final Picking picking;
    private final NestForms forms;
    private final Words words;
    private final Runnable toBirds;

    BirdActs(Scribe scribe, Picking picking, NestForms forms, Words words, Runnable toBirds) {
        this.scribe = scribe;
        this.picking = picking;
        this.forms = forms;
        this.words = words;
        this.toBirds = toBirds;
    }

    /** Whether there was something to do under this name. */
    boolean does(String action) {
        switch (action) {
            case "pair-up" -> pairUp();
            case "put-in" -> putIn();
            case "take-out" ->
                pickBirdHere("cage.which-out", bird -> takeOut(bird, Comparator.comparing(cage -> !isForMany(cage))));
            case "cock-out" -> mate(Sex.COCK).ifPresent(this::leaves);
            case "hen-out" -> mate(Sex.HEN).ifPresent(this::leaves);
            case "look-over" -> pickBirdHere("cage.look-over", bird -> lookOver(bird, () -> {}));
            case "treat" -> pickBirdHere("cage.which-treated", bird -> treat(bird, BirdDeed.TreatedFor.MITES_SEEN));
            case "loose" -> loose();
            default -> {
                return false;
            }
        }
        return true;
    }

    private Optional<Bird> mate(Sex sex) {
        return scribe.pair().flatMap(pair -> scribe.room().bird(sex == Sex.COCK ? pair.cock() : pair.hen()));
    }

    private void pairUp() {
        pickBird(
                Message.of("cage.which-cock", scribe.name()),
                birds(Sex.COCK),
                cock -> pickBird(
                        Message.of("cage.which-hen", cock.ring()),
                        birds(Sex.HEN),
                        hen -> scribe.record(
                                new NestDeed.PairedUp(scribe.name(), cock.ring(), hen.ring(), Optional.empty()),
                                scribe.did("pair-up"))));
    }

    private void putIn() {
        Optional<Long> here = scribe.cage().map(Cage::id);
        pickBird(
                Message.of("cage.which-in", scribe.name()),
                options(scribe.room().birds().stream().filter(Bird::isPresent).filter(bird -> !bird.cage()
                        .equals(here))),
                bird -> scribe.record(
                        new BirdDeed.BirdMoved(bird.ring(), scribe.name(), Optional.empty(), Optional.empty()),
                        Message.of("cage.done.put-in", bird.ring(), scribe.name())));
    }

    /** Where no bird is there to be picked, a new one can be recorded. */
    private void pickBird(Message title, List<Option<Bird>> birds, Consumer<Bird> then) {
        if (birds.isEmpty()) {
            picking.ask(Question.of(
                    title,
                    Message.of("cage.no-bird-text"),
                    AnswerButton.main("new-bird", Message.of("birds.new"), toBirds),
                    AnswerButton.leave("no", Message.of("shell.leave-it"))));
        } else {
            picking.pick(title, birds, then);
        }
    }

    private void takeOut(Bird bird, Comparator<Cage> first) {
        picking.cage(
                Message.of("cage.where-to", bird.ring()),
                cages(first),
                to -> scribe.record(moved(bird, to), Message.of("cage.done.moved", bird.ring(), to.name())));
    }

    private Deed moved(Bird bird, Cage to) {
        return new BirdDeed.BirdMoved(bird.ring(), to.name(), Optional.of(scribe.name()), Optional.empty());
    }

    /** One of a pair leaves the breeding cage: flights of its own kind first; then it is looked over, and treated. */
    private void leaves(Bird bird) {
        Keeps kept = bird.sex() == Sex.HEN ? Keeps.HENS : Keeps.COCKS;
        Comparator<Cage> first = Comparator.comparing(
                        (Cage cage) -> cage.keeps().filter(kept::equals).isEmpty())
                .thenComparing(cage -> cage.use() != Use.FLIGHT)
                .thenComparing(cage -> !isForMany(cage));
        picking.cage(
                Message.of("cage.where-to", bird.ring()),
                cages(first),
                to -> scribe.record(
                        List.of(moved(bird, to)),
                        Message.of("cage.done.moved", bird.ring(), to.name()),
                        room -> lookOver(bird, () -> offerTreatment(bird))));
    }

    private void offerTreatment(Bird bird) {
        picking.ask(Question.of(
                Message.of("cage.treat-leaving", bird.ring()),
                Message.of("cage.treat-leaving-text"),
                AnswerButton.main(
                        "treat", Message.of("cage.treat-yes"), () -> treat(bird, BirdDeed.TreatedFor.LEAVING)),
                AnswerButton.leave("later", Message.of("cage.treat-no"))));
    }

    private void loose() {
        pickBirdHere(
                "cage.which-loose",
                bird -> scribe.record(
                        new BirdDeed.BirdLoose(Optional.of(bird.ring()), Optional.empty()),
                        Message.of("cage.done.loose", bird.ring())));
    }

    void lookOver(Bird bird, Runnable then) {
        picking.ask(Question.of(
                Message.of("cage.how-is", bird.ring()),
                Message.of("cage.how-is-text"),
                condition(bird, Condition.FIT, then),
                condition(bird, Condition.WATCH, then),
                condition(bird, Condition.ILL, then),
                AnswerButton.leave("leave", Message.of("cage.leave"))));
    }

    private AnswerButton condition(Bird bird, Condition condition, Runnable then) {
        String name = condition.name().toLowerCase(Locale.ROOT);
        return AnswerButton.plain(
                name,
                Message.of("cage.condition." + name),
                () -> scribe.record(
                        List.of(new BirdDeed.BirdLookedOver(
                                bird.ring(),
                                condition,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())),
                        Message.of("cage.done.looked-over", bird.ring()),
                        room -> then.run()));
    }

    /** What was given last is offered by its name; how much of it is the label's and the vet's to say. */
    void treat(Bird bird, BirdDeed.TreatedFor reason) {
        scribe.desk()
                .log(
                        LogQuery.newest(LOOK_BACK),
                        scribe.pen()
                                .reading(log -> forms.treat(
                                        Message.of("cage.treat", bird.ring()),
                                        lastProduct(log),
                                        reason,
                                        treated -> scribe.record(
                                                new BirdDeed.BirdTreated(
                                                        bird.ring(),
                                                        treated.product(),
                                                        treated.reason(),
                                                        Optional.empty(),
                                                        Optional.empty(),
                                                        Optional.empty()),
                                                Message.of("cage.done.treated", bird.ring())))));
    }

    private static Optional<String> lastProduct(List<LogEntry> log) {
        return log.stream()
                .filter(entry -> entry.deed().equals("bird-treated") && !entry.isStruck())
                .findFirst()
                .flatMap(entry -> product(entry.line(), entry.day()));
    }

    private static Optional<String> product(String line, LocalDate day) {
        return Lines.read(line, day) instanceof Lines.Understood read
                        && read.line().deed() instanceof BirdDeed.BirdTreated treated
                ? Optional.of(treated.product())
                : Optional.empty();
    }

    private void pickBirdHere(String title, Consumer<Bird> then) {
        List<Bird> birds = scribe.cage().map(scribe.room()::birdsIn).orElse(List.of());
        if (birds.size() == 1) {
            then.accept(birds.get(0));
            return;
        }
        picking.pick(Message.of(title, scribe.name()), options(birds.stream()), then);
    }

    /** Birds to pair up: those that are fit to be paired first; of each its age, and what speaks against it. */
    private List<Option<Bird>> birds(Sex sex) {
        Room room = scribe.room();
        return room.birds().stream()
                .filter(bird -> bird.isPresent() && bird.out().isEmpty())
                .filter(bird -> bird.sex() == sex || bird.sex() == Sex.UNKNOWN)
                .filter(bird -> room.pairs().stream()
                        .filter(room::together)
                        .noneMatch(pair -> pair.cock() == bird.id() || pair.hen() == bird.id()))
                .sorted(Comparator.comparing((Bird bird) -> !doubts(bird).isEmpty())
                        .thenComparing(Bird::ring))
                .map(bird -> option(
                        bird,
                        Stream.concat(
                                        Stream.of(bird.colour(), age(bird)).flatMap(Optional::stream),
                                        doubts(bird).stream().map(words::say))
                                .collect(Collectors.joining(", "))))
                .toList();
    }

    private List<Message> doubts(Bird bird) {
        Room room = scribe.room();
        return Stream.concat(
                        Unfit.remarks(room, bird, scribe.day()).stream(),
                        Unfit.notParted(room, bird)
                                .map(pair -> Message.of("cage.still-paired", room.cageName(pair.cage()), pair.label()))
                                .stream())
                .toList();
    }

    private Optional<String> age(Bird bird) {
        return bird.hatched().map(hatched -> AgeWords.of(hatched, scribe.day(), words));
    }

    private List<Option<Bird>> options(Stream<Bird> birds) {
        return birds.sorted(Comparator.comparing(Bird::ring))
                .map(bird -> option(
                        bird,
                        bird.colour()
                                .map(colour -> words.say("cage.bird-line", bird.sex(), colour))
                                .orElse(words.say("cage.bird-line-plain", bird.sex()))))
                .toList();
    }

    private Option<Bird> option(Bird bird, String line) {
        return new Option<>(
                bird.ring(), RowFace.of(bird.cage().map(scribe.room()::cageName).orElse(""), bird.ring(), line), bird);
    }

    /** Where a bird may go. */
    private List<Option<Cage>> cages(Comparator<Cage> first) {
        Room room = scribe.room();
        return room.walk()
                .filter(cage -> !cage.name().equalsIgnoreCase(scribe.name()))
                .sorted(first)
                .map(cage -> new Option<>(
                        cage.name(),
                        RowFace.of(cage.name(), words.say("cage.use", cage.use(), room.headsIn(cage)), ""),
                        cage))
                .toList();
    }

    private static boolean isForMany(Cage cage) {
        return cage.use() == Use.FLIGHT || cage.use() == Use.STOCK;
    }
}
