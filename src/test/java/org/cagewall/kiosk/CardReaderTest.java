package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.BadPictures;
import org.cagewall.scan.SymbolPictures;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a scanner types, and pictures of cards: the right cage opens, or one sentence says why not. */
class CardReaderTest {

    private static final long KEY = 8_000_000;

    @TempDir
    Path folder;

    private final List<Destination> gone = new ArrayList<>();
    private final List<String> told = new ArrayList<>();
    private final List<String> noticed = new ArrayList<>();
    private final List<String> chosen = new ArrayList<>();
    private Optional<Consumer<Cage>> awaited = Optional.empty();
    private final Map<String, Runnable> offered = new LinkedHashMap<>();
    private Desk desk;
    private CardReader reader;
    private Pen pen;
    private long nanos = 1_000_000_000L;

    @BeforeEach
    void open() {
        desk = TestDesk.furnished(folder.resolve("room"));
        pen = new Pen(desk, new Sentences(), new Silent());
        pen.takenBy("Ines");
        reader = new CardReader(desk, pen, new Steps(), new Sentences(), new Noticed(), () -> awaited);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aScannedCardOpensItsCage() {
        type(code("A2").text());

        assertThat(gone).containsExactly(Destination.Cage.byScan("A2"));
        assertThat(told).isEmpty();
    }

    @Test
    void aCardPrintedBeforeTheHenChangedStillOpensItsCageAndSaysSo() {
        scanAnOldCard();

        assertThat(gone).containsExactly(Destination.Cage.byScan("A2"));
        assertThat(told).singleElement().asString().contains("out of date").contains("HB 24-121");
        assertThat(offered).containsOnlyKeys("print-anew", "pencilled", "later");
    }

    @Test
    void anOldCardIsSettledWhereItIsScannedByAPencil() {
        scanAnOldCard();

        offered.get("pencilled").run();

        assertThat(CardFaces.isOutOfDate(desk.room(), desk.room().cage("A2").orElseThrow()))
                .isFalse();
    }

    @Test
    void anOldCardIsPrintedAnewFromWhereItIsScanned() {
        scanAnOldCard();

        offered.get("print-anew").run();

        assertThat(gone).containsExactly(Destination.Cage.byScan("A2"), Destination.Cards.of("A2"));
    }

    @Test
    void aSitterIsOfferedThePencilButNotThePrinter() {
        pen.takenBy("Tomas");
        scanAnOldCard();

        assertThat(offered).containsOnlyKeys("pencilled", "later");
    }

    /** A pencil on the card that hangs there would not mend the one in the hand. */
    @Test
    void aCardThatIsNotTheOnePrintedLastIsOnlyPrintedAnew() {
        CardCode old = code("A2");
        TestDesk.tell(desk, """
                {"deed":"ring-corrected","bird":"HB 24-120","ring":"HB 24-121","by":"Ines"}
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                """);

        type(old.text());

        assertThat(offered).containsOnlyKeys("print-anew", "later");
        assertThat(told)
                .singleElement()
                .asString()
                .contains("Hang up the newest one")
                .doesNotContain("pencil");
    }

    /** Who prints by a program of his own, or by a command, has the right card and no entry of it. */
    @Test
    void aCardThatSaysWhatItShouldIsUpToDateWhateverWasPrintedLast() {
        makeOld();

        type(code("A2").text());

        assertThat(gone).containsExactly(Destination.Cage.byScan("A2"));
        assertThat(told).isEmpty();
    }

    @Test
    void ofALongForeignTextTheBeginningIsToldWithoutWhatIsNoLetter() {
        type("seed \u202egrit " + "and more ".repeat(300));

        assertThat(told)
                .singleElement()
                .asString()
                .contains("seed  grit and more")
                .hasSizeLessThan(250)
                .endsWith("\u2026");
    }

    private void scanAnOldCard() {
        type(makeOld().text());
    }

    /** The card of A2 as it was printed before its hen's ring was corrected. */
    private CardCode makeOld() {
        CardCode old = code("A2");
        TestDesk.tell(desk, """
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                {"deed":"ring-corrected","bird":"HB 24-120","ring":"HB 24-121","by":"Ines"}
                """);
        return old;
    }

    @Test
    void aChangeThatWasPencilledOnSettlesTheOldCard() {
        CardCode old = code("A2");
        TestDesk.tell(desk, """
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                {"deed":"ring-corrected","bird":"HB 24-120","ring":"HB 24-121","by":"Ines"}
                {"deed":"card-pencilled","cage":"A2","by":"Ines"}
                """);

        type(old.text());

        assertThat(gone).hasSize(1);
        assertThat(told).isEmpty();
    }

    @Test
    void everyOtherCodeGetsItsOwnSentenceAndChangesNothing() {
        CardCode code = code("A3");
        Room before = desk.room();

        type(new CardCode(other(code.room()), code.number(), code.digest()).text());
        type(new CardCode(code.room(), 900, code.digest()).text());
        type(damaged(code.text()));
        type("HTTPS://EXAMPLE.ORG/SEED");

        assertThat(gone).isEmpty();
        assertThat(told).hasSize(4).doesNotHaveDuplicates();
        assertThat(told.get(0)).contains("another birdroom");
        assertThat(told.get(1)).contains("no cage has its number");
        assertThat(told.get(3)).contains("HTTPS://EXAMPLE.ORG/SEED");
        assertThat(desk.room()).isSameAs(before);
    }

    @Test
    void theCardOfARetiredCageSaysThatItIsOutOfUse() {
        CardCode code = code("A3");
        TestDesk.tell(desk, "{\"deed\":\"cage-retired\",\"cage\":\"A3\",\"by\":\"Ines\"}");

        type(code.text());

        assertThat(gone).isEmpty();
        assertThat(told).singleElement().asString().contains("A3").contains("no longer in use");
    }

    @Test
    void aCardScannedIntoAFieldOpensItsCageAndComesOutOfTheField() {
        List<Integer> takenOut = new ArrayList<>();

        assertThat(typeIntoAField("moult " + code("A2").text(), takenOut)).isTrue();

        assertThat(gone).containsExactly(Destination.Cage.byScan("A2"));
        assertThat(takenOut).containsExactly(CardCode.LENGTH);
    }

    @Test
    void whatIsWrittenIntoAFieldStaysThereHoweverFastAndOnlyTheEnterOfACodeIsKeptFromIt() {
        List<Integer> takenOut = new ArrayList<>();

        assertThat(typeIntoAField("two hens moult", takenOut)).isTrue();
        assertThat(typeIntoAField(damaged(code("A2").text()), takenOut)).isTrue();
        assertThat(typeIntoAField("moult", takenOut)).as("too short for a code").isFalse();

        assertThat(gone).isEmpty();
        assertThat(told).isEmpty();
        assertThat(takenOut).isEmpty();
    }

    /** Whether the Enter at the end was taken; no other key may be. */
    private boolean typeIntoAField(String text, List<Integer> takenOut) {
        for (char c : text.toCharArray()) {
            nanos += KEY;
            assertThat(reader.keyInField(c, nanos, takenOut::add)).isFalse();
        }
        nanos += KEY;
        return reader.keyInField('\n', nanos, takenOut::add);
    }

    @Test
    void aPastedPictureAndAPictureFileOpenTheCageButAreNoScanOfThisMoment() throws IOException {
        BufferedImage picture = SymbolPictures.of(code("A1").text());
        Path file = folder.resolve("card.png");
        ImageIO.write(picture, "png", file.toFile());

        reader.picture(picture);
        reader.files(List.of(file));

        assertThat(gone).containsExactly(Destination.Cage.byHand("A1"), Destination.Cage.byHand("A1"));
    }

    @Test
    void ofTwoCardsInAPictureTheOneInTheMiddleOpensAndTheOtherIsSpokenOf() {
        reader.picture(SymbolPictures.of(code("A1").text(), code("A2").text()));

        assertThat(gone).containsExactly(Destination.Cage.byHand("A1"));
        assertThat(noticed)
                .containsExactly(
                        "Reading the picture.",
                        "This is cage A1. Another code was in view. The one nearest the middle was read.");
        assertThat(told).isEmpty();
    }

    @Test
    void anOldCardBesideAnotherOneSaysBothOnTheOneSheet() {
        String other = code("A1").text();
        CardCode old = makeOld();

        reader.picture(SymbolPictures.of(old.text(), other));

        assertThat(gone).containsExactly(Destination.Cage.byHand("A2"));
        assertThat(told)
                .singleElement()
                .asString()
                .contains("out of date")
                .contains("HB 24-121")
                .contains("Another code was in view");
        assertThat(noticed).containsExactly("Reading the picture.");
    }

    @Test
    void aCardOfAnotherBirdroomBesideOneOfThisSaysBothAndOpensNothing() {
        CardCode here = code("A1");
        String foreign = new CardCode(other(here.room()), here.number(), here.digest()).text();

        reader.picture(SymbolPictures.of(foreign, here.text()));

        assertThat(gone).isEmpty();
        assertThat(told)
                .singleElement()
                .asString()
                .contains("another birdroom")
                .contains("The one nearest the middle was read");
    }

    @Test
    void aCageThatIsBeingChosenIsTakenFromItsCard() {
        chooseACage();

        type(code("A3").text());

        assertThat(chosen).containsExactly("A3");
        assertThat(gone).isEmpty();
        assertThat(told).isEmpty();
    }

    /** What follows is recorded at once: with two cards in view the wrong one may have been read. */
    @Test
    void aCageThatIsBeingChosenIsAskedForWhereTwoCardsAreInView() {
        chooseACage();

        reader.picture(SymbolPictures.of(code("A3").text(), code("A1").text()));

        assertThat(chosen).isEmpty();
        assertThat(told).singleElement().asString().contains("Another code was in view");
        offered.get("it-is").run();
        assertThat(chosen).containsExactly("A3");
        assertThat(gone).isEmpty();
    }

    private void chooseACage() {
        awaited = Optional.of(cage -> chosen.add(cage.name()));
    }

    @ParameterizedTest
    @MethodSource("org.cagewall.scan.BadPictures#all")
    void aFileThatIsDroppedAndHoldsNoCardSaysWhyAndTheNextOneOpensItsCage(BadPictures.Bad bad) throws IOException {
        Path file = Files.write(folder.resolve(bad.name()), bad.bytes());

        reader.files(List.of(file));
        assertThat(told).singleElement().asString().contains(bad.said());
        assertThat(gone).isEmpty();

        reader.picture(SymbolPictures.of(code("A1").text()));
        assertThat(gone).containsExactly(Destination.Cage.byHand("A1"));
    }

    @Test
    void aPastedPictureOfOnePixelOrOfFarTooManySaysSo() {
        reader.picture(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB));
        reader.picture(new BufferedImage(10_000, 10_000, BufferedImage.TYPE_BYTE_BINARY));

        assertThat(told).hasSize(2);
        assertThat(told.get(0)).contains("No card code");
        assertThat(told.get(1)).contains("too large");
    }

    private CardCode code(String cage) {
        return CardFaces.code(desk.room(), desk.room().cage(cage).orElseThrow());
    }

    private void type(String text) {
        for (char c : (text + "\n").toCharArray()) {
            nanos += KEY;
            reader.key(c, nanos);
        }
        nanos += 10_000_000_000L;
    }

    private static String other(String room) {
        return room.equals("ABC") ? "ABD" : "ABC";
    }

    private static String damaged(String code) {
        char last = code.charAt(code.length() - 1);
        return code.substring(0, code.length() - 1) + (last == '7' ? '8' : '7');
    }

    /** Keeps where one was led. */
    private final class Steps implements Navigator {

        @Override
        public void go(Destination destination) {
            gone.add(destination);
        }
    }

    /** Keeps what was told, in words. */
    private final class Sentences implements Asking {

        @Override
        public void ask(Question question) {
            told.add(Words.english().say(question.title()) + ". "
                    + Words.english().say(question.text()));
            offered.clear();
            question.answers().forEach(answer -> offered.put(answer.name(), answer.then()));
        }

        @Override
        public void tell(Message title, Message text) {
            told.add(Words.english().say(text));
        }
    }

    /** Keeps what was said without asking, in words. */
    private final class Noticed implements Notices {

        @Override
        public void done(Message what) {
            noticed.add(Words.english().say(what));
        }

        @Override
        public void done(Message what, Runnable undo) {
            throw new AssertionError("a scan records nothing that could be undone");
        }

        @Override
        public void failed(String code) {
            throw new AssertionError("nothing breaks here, but " + code);
        }
    }

    /** What is done is read in the record here, not on the screen. */
    private static final class Silent implements Notices {

        @Override
        public void done(Message what) {}

        @Override
        public void done(Message what, Runnable undo) {}

        @Override
        public void failed(String code) {
            throw new AssertionError("nothing breaks here, but " + code);
        }
    }
}
