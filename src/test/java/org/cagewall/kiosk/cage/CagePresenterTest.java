package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import org.cagewall.deed.BirdDeed;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.room.Cage;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Message;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The nest page without a screen: what is chosen is answered by the test, what is recorded is read from a real record. */
class CagePresenterTest {

    @TempDir
    Path folder;

    private Birdroom room;
    private final Hand hand = new Hand();
    private CagePresenter page;
    private CageState shown;

    @BeforeEach
    void open() {
        room = Nests.room(folder.resolve("birds"));
    }

    @AfterEach
    void close() {
        room.close();
    }

    @Test
    void anEggIsRecordedAndSaid() {
        room.tell(Nests.ago(24, "box-on", "").strip());
        at("A1");

        page.act("egg");

        assertThat(last()).contains("egg-laid").contains("\"by\":\"Ines\"");
        assertThat(hand.said).last().isEqualTo("A1: egg recorded");
    }

    @Test
    void whatIsTouchedForYesterdayIsRecordedForYesterday() {
        room.tell(Nests.ago(24, "box-on", "").strip());
        at("A1");
        page.yesterday(true);

        page.act("egg");

        assertThat(last()).contains("\"on\":\"2026-04-13\"").doesNotContain("\"at\"");
    }

    @Test
    void anEggMarkedAmongSeveralIsTheOneThatHatches() {
        Nests.clutch(room, 20);
        at("A1");
        hand.touches("2");

        page.act("hatched");

        assertThat(last()).contains("chick-hatched").contains("\"mark\":\"2\"");
    }

    @Test
    void aClearEggThatHatchesIsAskedAboutAndRecordedOnlyWhenSure() {
        Nests.sitting(room);
        at("A1");
        hand.touches("3");
        page.act("hatched");
        assertThat(last()).contains("egg-candled");

        hand.touches("3").answers("sure");
        page.act("hatched");

        assertThat(last()).contains("chick-hatched").contains("\"sure\":true");
    }

    @Test
    void allEggsAreWaitedForAtTheFirstLookAgainstTheLight() {
        Nests.clutch(room, 14);
        at("A1");

        page.act("candle");

        assertThat(hand.due).containsExactly("1", "2", "3", "4", "5");
        assertThat(room.newest(5)).allMatch(line -> line.contains("egg-candled"));
    }

    @Test
    void aMovedEggGoesToTheCageThatWasChosenAndGetsALetter() {
        Nests.sitting(room);
        Nests.twoRounds(room);
        at("A1");
        hand.touches("4").touches("Z1").answers("sure");

        page.act("move-egg");

        assertThat(last()).contains("egg-moved").contains("\"to\":\"Z1\"").contains("\"letter\":\"A\"");
    }

    @Test
    void theShellLiesBesideAChickOnTheDayOfHatchingOnly() {
        Nests.twoRounds(room);
        room.tell(Nests.ago(24, "box-on", "").strip());
        room.tell((Nests.ago(19, "egg-laid", "") + Nests.ago(0, "chick-hatched", "\"mark\":\"1\"")).strip());

        at("A1");
        assertThat(chicks()).containsExactly(EggLook.HATCHLING);
        at("Z1");
        assertThat(chicks()).contains(EggLook.CHICK).doesNotContain(EggLook.HATCHLING);
    }

    @Test
    void aDeadChickIsRecordedWithWhatItLikelyCameOf() {
        Nests.twoRounds(room);
        at("Z1");
        hand.touches("4").answers("empty-crop");

        page.act("died");

        assertThat(last()).contains("chick-died").contains("\"likely\":\"empty-crop\"");
    }

    @Test
    void theOfferedRingIsTheNextOfTheStock() {
        Nests.twoRounds(room);
        room.tell(
                "{\"deed\":\"rings-bought\",\"year\":2026,\"size\":\"4.2\",\"first\":101,\"last\":150,\"by\":\"Ines\"}");
        at("Z1");
        hand.touches("4").answers("sure");

        page.act("ring");

        assertThat(last()).contains("chick-ringed").contains("\"ring\":\"26-101\"");
    }

    @Test
    void aWeanedChickIsABirdOfItsNewCage() {
        Nests.twoRounds(room);
        at("Z1");
        hand.touches("1").touches("Flight 1").answers("sure");

        page.act("wean");

        assertThat(room.room().bird("HB 26-090").flatMap(bird -> bird.cage()).map(room.room()::cageName))
                .contains("Flight 1");
    }

    @Test
    void aSitterWhoScansACageSeesWhatToDoThereAndAnswersItByOneTouch() {
        open("Tomas", "A1");
        assertThat(shown.chore().orElseThrow().answer()).isEqualTo("Fed, all well");
        assertThat(shown.chore().orElseThrow().how()).contains("Rinse the water dish and fill it.");

        page.allWell();

        assertThat(room.newest(2).get(0)).contains("task-done").contains("/A1/morning");
        assertThat(room.newest(2).get(1)).contains("\"check\"").contains("\"when\"");
        assertThat(shown.chore()).isEmpty();
    }

    @Test
    void anOwnerWhoLooksInAnswersNoFeeding() {
        at("A1");
        assertThat(shown.chore()).isEmpty();

        page.allWell();

        assertThat(last()).contains("\"check\"").doesNotContain("\"when\"");
    }

    @Test
    void strikingOutARowWalkSaysOfHowManyCagesItIsStruckAndCanBeUndone() {
        room.tell("{\"deed\":\"row-checked\",\"wall\":\"North wall\",\"row\":1,\"by\":\"Ines\"}");
        String walked = last();
        at("A1");
        CageState.PastFace walk = shown.entries().orElseThrow().get(0);
        hand.answers("wrong-touch");

        page.past(walk);

        assertThat(hand.asked.get(hand.asked.size() - 1))
                .matches("This speaks of [2-9] cages\\. Strike it out for all\\?");
        assertThat(last()).contains("struck-out");
        hand.undo.orElseThrow().run();
        assertThat(last()).contains("row-checked").contains("\"row\":1");
        assertThat(walked).contains("row-checked");
    }

    /** The database is shut and taken away under the page, so that no reading of it succeeds. */
    @Test
    void aLogThatCannotBeReadIsSaidOnThePageInPlaceOfItsEntries() throws IOException {
        Path home = room.desk().folder().path();
        room.desk().close();
        Files.move(home, home.resolveSibling("gone"));

        at("A1");
        room = Nests.room(folder.resolve("another"));

        assertThat(shown.known()).isTrue();
        assertThat(shown.entries()).isEmpty();
        assertThat(shown.unread().orElseThrow()).startsWith("What was recorded here could not be read");
    }

    @Test
    void aSitterWhoCountsTooFewBirdsCountsOnceMoreAndIsLedToThePhonesIfOneIsMissing() {
        open("Tomas", "Flight 1");
        hand.touches(heads(-2)).answers("again").touches(heads(0));
        page.act("count");
        assertThat(last()).contains("\"counted\"").contains("\"birds\":" + heads(0));
        assertThat(hand.went).isEmpty();

        hand.touches(heads(-2)).answers("sure");
        page.act("count");

        assertThat(room.newest(2).get(0)).contains("\"check\"").contains("\"missing\"");
        assertThat(room.newest(2).get(1)).contains("\"counted\"").contains("\"birds\":" + heads(-2));
        assertThat(hand.went)
                .containsExactly(new Destination.Phone(Optional.of(Danger.MISSING), Optional.of("Flight 1")));
    }

    @Test
    void moreBirdsThanThereShouldBeAreReportedOnceTheyWereCountedTwice() {
        open("Tomas", "Flight 1");
        hand.touches(heads(1)).answers("sure");

        page.act("count");

        assertThat(room.newest(2).get(0)).contains("\"check\"").contains("\"more-birds\"");
    }

    /** As many as the flight holds, and so many more. */
    private String heads(int more) {
        return String.valueOf(room.room().headsIn(room.room().cage("Flight 1").orElseThrow()) + more);
    }

    @Test
    void aHenInTheBoxIsNotMissingAtACount() {
        Nests.sitting(room);
        open("Tomas", "A1");
        hand.touches("1");

        page.act("count");

        assertThat(last()).contains("\"counted\"").contains("\"birds\":1");
    }

    private void at(String cage) {
        open("Ines", cage);
    }

    private void open(String person, String cage) {
        Pen pen = new Pen(room.desk(), hand, hand);
        pen.takenBy(person);
        page = new CagePresenter(
                room.desk(),
                pen,
                hand,
                hand,
                hand,
                Birdroom.WORDS,
                Destination.Cage.byHand(cage),
                state -> shown = state);
        page.watch().start();
    }

    private List<EggLook> chicks() {
        return shown.nest().orElseThrow().lots().stream()
                .flatMap(lot -> lot.chicks().stream())
                .map(CageState.LyingFace::look)
                .toList();
    }

    private String last() {
        return room.newest(1).get(0);
    }

    /** Touches what it was told to touch, and gives the answers that it was told to give; else it leaves things so. */
    private static final class Hand implements Picking, NestForms, Notices, Navigator {

        final List<String> said = new ArrayList<>();
        final List<String> due = new ArrayList<>();
        final List<Destination> went = new ArrayList<>();
        final List<String> asked = new ArrayList<>();
        Optional<Runnable> undo = Optional.empty();
        private final Deque<String> touches = new ArrayDeque<>();
        private final Deque<String> answers = new ArrayDeque<>();

        Hand touches(String name) {
            touches.add(name);
            return this;
        }

        Hand answers(String name) {
            answers.add(name);
            return this;
        }

        @Override
        public void ask(Question question) {
            asked.add(Birdroom.WORDS.say(question.title()));
            String name = answers.isEmpty() ? "" : answers.remove();
            question.answers().stream()
                    .filter(answer -> answer.name().equals(name))
                    .findFirst()
                    .ifPresent(answer -> answer.then().run());
        }

        @Override
        public void tell(Message title, Message text) {
            said.add(Birdroom.WORDS.say(text));
        }

        @Override
        public <T> void pick(Message title, List<Option<T>> options, Consumer<T> then) {
            String name = touches.remove();
            options.stream()
                    .filter(option -> option.name().equals(name))
                    .findFirst()
                    .ifPresent(option -> then.accept(option.value()));
        }

        @Override
        public void cage(Message title, List<Option<Cage>> options, Consumer<Cage> then) {
            pick(title, options, then);
        }

        @Override
        public void count(Message title, int most, IntConsumer then) {
            then.accept(Integer.parseInt(touches.remove()));
        }

        @Override
        public void note(Message title, Consumer<String> then) {
            then.accept(touches.remove());
        }

        @Override
        public void choose(Message title, List<CageState.LyingFace> faces, Consumer<CageState.LyingFace> then) {
            touched(faces).ifPresent(then);
        }

        private Optional<CageState.LyingFace> touched(List<CageState.LyingFace> faces) {
            String mark = touches.remove();
            return faces.stream().filter(face -> face.mark().equals(mark)).findFirst();
        }

        @Override
        public void candle(
                Message title,
                List<CageState.LyingFace> eggs,
                List<CageState.LyingFace> waitedFor,
                Consumer<Map<CageState.LyingFace, EggFinding>> then) {
            waitedFor.forEach(face -> due.add(face.mark()));
            Map<CageState.LyingFace, EggFinding> found = new LinkedHashMap<>();
            eggs.forEach(egg -> found.put(egg, EggFinding.FULL));
            then.accept(found);
        }

        @Override
        public void takeOut(
                Message title,
                List<CageState.LyingFace> eggs,
                BiConsumer<CageState.LyingFace, Optional<WhyRemoved>> then) {
            touched(eggs).ifPresent(egg -> then.accept(egg, Optional.empty()));
        }

        @Override
        public void ring(
                Message title,
                Optional<String> offered,
                List<CageState.LyingFace> chicks,
                BiConsumer<CageState.LyingFace, String> then) {
            touched(chicks).ifPresent(chick -> then.accept(chick, offered.orElseThrow()));
        }

        @Override
        public void look(Message title, int chicks, Consumer<Looked> then) {}

        @Override
        public void found(Message title, LocalDate day, Consumer<Found> then) {}

        @Override
        public void treat(
                Message title, Optional<String> lastProduct, BirdDeed.TreatedFor reason, Consumer<Treated> then) {}

        @Override
        public void part(Message title, List<String> evidence, Consumer<PartedFor> then) {
            then.accept(PartedFor.SEASON);
        }

        @Override
        public void read(Message title, List<String> sentences) {
            said.addAll(sentences);
        }

        @Override
        public void done(Message what) {
            said.add(Birdroom.WORDS.say(what));
        }

        @Override
        public void done(Message what, Runnable takesBack) {
            undo = Optional.of(takesBack);
            done(what);
        }

        @Override
        public void failed(String code) {
            throw new AssertionError("failed: " + code);
        }

        @Override
        public void go(Destination to) {
            went.add(to);
        }
    }
}
