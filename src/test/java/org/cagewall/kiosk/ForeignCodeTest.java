package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.ChoiceSheets;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.room.Person;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * A scanner that types reads a code that is none of ours, of a sack of seed or a letter, with blanks, tabs and Enter in
 * it, on every screen and sheet of a real window: whatever lies under it is not pressed, left or recorded.
 */
@RequiresDisplay
@Tag("slow")
class ForeignCodeTest {

    private static final List<String> CODES =
            List.of("SEED MIX FOR BUDGIES\n", " S\tMIX\n FOR\t BUDGIES\n", "\t  \n \t \n\n\t ");

    private static final long SLOW_NANOS = 115_000_000L;

    @TempDir
    Path folder;

    private final List<String> answered = new CopyOnWriteArrayList<>();
    private Desk desk;
    private Kiosk kiosk;
    private Live live;

    @BeforeEach
    void open() {
        TestDesk.demo(folder.resolve("room")).close();
        desk = Desk.open(
                DataFolder.open(folder.resolve("room")), Lanes.answeringOn(new EventThread()), TestDesk.clocks());
        live = Live.kiosk(desk, made -> kiosk = made);
    }

    @AfterEach
    void close() {
        live.close();
        desk.close();
    }

    @TestFactory
    Stream<DynamicTest> aForeignCodeOperatesNoScreen() {
        Map<String, Destination> places = new LinkedHashMap<>(EveryScreenTest.places(desk));
        places.put(
                "different",
                new Destination.Different(
                        "A1", Optional.of(DayPart.MORNING), How.HAND, desk.today(), new Destination.Today()));
        places.keySet()
                .removeIf(name -> name.startsWith("cage-")
                        && !List.of("cage-A1", "cage-B3").contains(name));
        return Stream.of("Ines", "Tomas").flatMap(person -> places.entrySet().stream()
                .map(place -> dynamicTest(person + ": " + place.getKey(), () -> {
                    live.tap("nav.wall");
                    for (String code : CODES) {
                        assertOperatesNothing(person, place.getValue(), code, 0);
                    }
                })));
    }

    @TestFactory
    Stream<DynamicTest> aForeignCodeOperatesNoScreenThatIsWorkedByKeys() {
        return Stream.of(new Destination.Today(), new Destination.Setup(), Destination.Cage.byHand("A1"))
                .map(place -> dynamicTest(place.toString(), () -> {
                    for (String code : CODES) {
                        goTo("Ines", place);
                        live.key(KeyEvent.VK_TAB).key(KeyEvent.VK_TAB);
                        assertOperatesNothing("Ines", place, code, 0);
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> aSlowForeignCodeOperatesNoScreen() {
        return CODES.stream()
                .map(code -> dynamicTest(code.replaceAll("\\s", "_"), () -> {
                    goTo("Ines", new Destination.Today());
                    live.key(KeyEvent.VK_TAB).key(KeyEvent.VK_TAB);
                    assertOperatesNothing("Ines", new Destination.Today(), code, SLOW_NANOS);
                }));
    }

    @TestFactory
    Stream<DynamicTest> aForeignCodeAnswersNoSheet() {
        return sheets().entrySet().stream()
                .map(sheet -> dynamicTest(sheet.getKey(), () -> {
                    for (String code : CODES) {
                        goTo("Ines", new Destination.Today());
                        new EventThread().finish(sheet.getValue());
                        live.see("sheet");
                        long entry = desk.room().head();
                        live.type(code);
                        assertUnchanged("Ines", new Destination.Today(), entry);
                        live.see("sheet");
                        assertThat(answered).as("what the code answered").isEmpty();
                    }
                }));
    }

    private Map<String, Runnable> sheets() {
        ChoiceSheets sheets = new ChoiceSheets(live.shell().stage(), Words.english());
        Message title = Message.of("shell.leave");
        List<Option<String>> options = new ArrayList<>();
        options.add(new Option<>("one", RowFace.of("one", "", ""), "one"));
        Map<String, Runnable> made = new LinkedHashMap<>();
        made.put(
                "a question",
                () -> sheets.ask(Question.of(
                        title,
                        Message.of("shell.leave-text"),
                        AnswerButton.main("yes", Message.of("shell.leave-yes"), () -> answered.add("yes")),
                        AnswerButton.plain("no", Message.of("shell.leave-no"), () -> answered.add("no")))));
        made.put("a choice", () -> sheets.pick(title, options, answered::add));
        made.put("a number", () -> sheets.count(title, 12, number -> answered.add("number " + number)));
        made.put("a note", () -> sheets.note(title, answered::add));
        return made;
    }

    private void assertOperatesNothing(String person, Destination place, String code, long pause) {
        goTo(person, place);
        long entry = desk.room().head();
        live.type(code, pause);
        assertUnchanged(person, place, entry);
    }

    private void assertUnchanged(String person, Destination place, long entry) {
        live.key(KeyEvent.VK_F9);
        assertThat(live.shell().stage().here()).as("where the window is").isEqualTo(place);
        assertThat(kiosk.pen().holder().map(Person::name)).as("who records").isEqualTo(Optional.of(person));
        assertThat(desk.room().head()).as("the last entry").isEqualTo(entry);
    }

    private void goTo(String person, Destination place) {
        new EventThread().finish(() -> {
            live.shell().stage().close();
            kiosk.pen().takenBy(person);
            kiosk.navigator().go(place);
        });
    }
}
