package org.cagewall.kiosk.setup;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.nio.file.Path;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.cagewall.desk.Archive;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.WithBirdroom;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Cage;
import org.cagewall.room.FoodKind;
import org.cagewall.room.Keeps;
import org.cagewall.room.Place;
import org.cagewall.room.Quiet;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Sets a birdroom up by touch and reads back what was recorded. */
class SetupScreenTest extends WithBirdroom {

    private SetupScreen made;

    @Test
    void anEmptyRoomIsSetUpInThreeSteps() {
        Painted page = emptyRoom().png("setup-step-1").assertFit();

        write(page, "name", "Ines");
        write(page, "phone", "0555 0142").press("next");
        assertThat(room().owner()).hasValueSatisfying(owner -> {
            assertThat(owner.name()).isEqualTo("Ines");
            assertThat(owner.phone()).contains("0555 0142");
        });

        page.png("setup-step-2").assertFit().press("rows.fewer").press("columns.fewer");
        write(page, "wall", "North wall").press("next");
        assertThat(room().wall("north wall")).hasValueSatisfying(wall -> {
            assertThat(wall.rows()).isEqualTo(2);
            assertThat(wall.columns()).isEqualTo(5);
        });

        page.png("setup-step-3").assertFit().press("fill");
        assertThat(room().walk().map(Cage::name))
                .containsExactly("A1", "A2", "A3", "A4", "A5", "B1", "B2", "B3", "B4", "B5");
        assertThat(birdroom.newest(1).get(0)).contains("\"by\":\"Ines\"");
    }

    @Test
    void aFirstWallThatIsTakenBackIsAskedForAgain() {
        Painted page = emptyRoom();
        write(page, "name", "Ines");
        write(page, "phone", "0555 0142").press("next");
        page.press("next");
        assertThat(page.maybe("fill")).isPresent();

        page.press("notice.undo");

        assertThat(room().walls()).isEmpty();
        assertThat(page.maybe("fill")).isEmpty();
        assertThat(page.maybe("next")).isPresent();
    }

    @Test
    void anOwnerWithoutANameOrAPhoneIsAskedForIt() {
        Painted page = emptyRoom().press("next").png("setup-step-1-problem").assertFit();
        assertThat(page.find("name.wrong", JLabel.class).getText()).isEqualTo("Write your name.");

        write(page, "name", "Ines").press("next");
        assertThat(page.find("phone.wrong", JLabel.class).getText()).startsWith("Write the number");
        assertThat(room().people()).isEmpty();

        write(page, "phone", "ask Joan").press("next");
        assertThat(page.find("phone.wrong", JLabel.class).getText()).startsWith("ask Joan is no phone number.");
        assertThat(room().people()).isEmpty();
    }

    @Test
    void theFirstWallMayAlsoBeFilledOneByOne() {
        Painted page = emptyRoom();
        write(page, "name", "Ines");
        write(page, "phone", "0555 0142").press("next").press("next").press("one-by-one");

        page.png("setup-bare").assertFit().press("place.free-2-1-1").press("add-cage");

        assertThat(room().walk().map(Cage::name)).containsExactly("A1");
    }

    @Test
    void aCageIsAddedWhereAFreePlaceWasTouched() {
        Painted page = page("Ines").png("setup-walls").assertFit();
        page.press(free("North wall", 3, 6)).png("setup-place").assertFit();
        assertThat(page.find("cage", JTextComponent.class).getText()).isEqualTo("C6");

        page.press("use.flight").press("use.keeps.hens").assertFit();
        write(page, "cage", "Hen flight").press("add-cage").png("setup-added").assertFit();

        Cage added = room().cage("Hen flight").orElseThrow();
        assertThat(added.use()).isEqualTo(Use.FLIGHT);
        assertThat(added.keeps()).contains(Keeps.HENS);
        assertThat(added.place())
                .hasValueSatisfying(place -> assertThat(place.column()).isEqualTo(6));
    }

    @Test
    void aNameThatIsTakenIsToldAndWhatWasFilledInStays() {
        Painted page = page("Ines").press(free("North wall", 3, 6));

        write(page, "cage", "A1").press("add-cage");
        assertThat(page.find("sheet.text", JLabel.class).getText()).contains("already a cage A1");
        page.press("answer.ok");
        assertThat(page.find("cage", JTextComponent.class).getText()).isEqualTo("A1");

        write(page, "cage", " ").press("add-cage");
        assertThat(page.find("cage.wrong", JLabel.class).getText()).startsWith("Write a name");
    }

    @Test
    void aSecondWallGoesOnWithTheLettersAndIsFilledInOneTouch() {
        Painted page = page("Ines").press("new-wall").png("setup-new-wall").assertFit();
        write(page, "wall", "East wall")
                .press("columns.fewer")
                .press("add-wall")
                .assertFit();

        page.press(free("East wall", 1, 1))
                .press("use.stock")
                .press("fill")
                .png("setup-filled")
                .assertFit();

        assertThat(room().walk()
                        .filter(cage -> cage.place()
                                .filter(place -> place.wall()
                                        == room().wall("East wall")
                                                .orElseThrow()
                                                .id())
                                .isPresent())
                        .map(Cage::name))
                .hasSize(15)
                .startsWith("E1", "E2", "E3", "E4", "E5", "F1");
    }

    @Test
    void aCageIsMovedByTouchingItAndThenTheFreePlace() {
        Painted page =
                page("Ines").press("place.B2").png("setup-cage").assertFit().press("move");
        page.press("place.A1");
        assertThat(page.find("problem", JLabel.class).getText()).startsWith("A cage hangs there");

        page.png("setup-moving").assertFit().press(free("North wall", 3, 6));

        assertThat(room().cage("B2").orElseThrow().place())
                .contains(new Place(room().wall("North wall").orElseThrow().id(), 3, 6));
    }

    @Test
    void aCageChangesItsUseAndIsJoinedAndParted() {
        long before = room().head();
        Painted page = page("Ines").press("place.B3").press("use.breeding");
        assertThat(room().head()).isEqualTo(before);

        page.press("use.stock").png("setup-use").assertFit().press("use.keeps.hens");
        assertThat(room().cage("B3").orElseThrow().keeps()).contains(Keeps.HENS);
        page.press("use.nursery");
        assertThat(room().cage("B3").orElseThrow().use()).isEqualTo(Use.NURSERY);

        page.press("join.B4").png("setup-joined").assertFit();
        assertThat(room().cage("B4").orElseThrow().inUse()).isFalse();

        page.press("place.B4").press("split.B4");
        assertThat(room().cage("B4").orElseThrow().inUse()).isTrue();
    }

    @Test
    void aCageIsTakenOutOfUseOnlyAfterAQuestionAndOnlyWhenItIsEmpty() {
        Painted page = page("Ines").press("place.A1").press("retire").press("answer.retire");
        assertThat(page.find("sheet.text", JLabel.class).getText()).contains("Move them first");
        page.press("answer.ok").press("leave").press("place.B6").press("retire").press("answer.no");
        assertThat(room().cage("B6").orElseThrow().inUse()).isTrue();

        page.press("retire").png("setup-retire").assertFit().press("answer.retire");

        assertThat(room().cage("B6").orElseThrow().inUse()).isFalse();
    }

    @Test
    void aCardThatIsScannedOverSomethingHalfWrittenAsksFirst() {
        Painted page = page("Ines").press("tab.people").press("person.Tomas");
        assertThat(made.isBegun())
                .as("what the record holds was written by nobody")
                .isFalse();

        page.after(() -> page.find("phone", JTextComponent.class).setText("0555 0188"));

        assertThat(made.isBegun()).isTrue();
    }

    @Test
    void peopleAreAddedAndChanged() {
        Painted page =
                page("Ines").press("tab.people").png("setup-people").assertFit().press("add-person");
        assertThat(page.find("name.wrong", JLabel.class).getText()).isEqualTo("Write a name.");

        write(page, "name", "Maud").press("role.keeper");
        write(page, "phone", "0555 0133").press("add-person");
        assertThat(room().person("Maud")).hasValueSatisfying(maud -> {
            assertThat(maud.role()).isEqualTo(Role.KEEPER);
            assertThat(maud.phone()).contains("0555 0133");
        });

        page.press("person.Tomas").png("setup-person").assertFit();
        write(page, "phone", "0555 0199").press("change-person");
        assertThat(room().person("Tomas").orElseThrow().phone()).contains("0555 0199");
    }

    @Test
    void somebodyWithoutAPhoneAnyMoreHasNone() {
        Painted page = page("Ines").press("tab.people").press("person.Tomas");
        write(page, "phone", "0555 0199").press("change-person").press("person.Tomas");
        assertThat(page.find("phone", JTextComponent.class).getText()).isEqualTo("0555 0199");

        write(page, "phone", " ").png("setup-person-no-phone").assertFit().press("change-person");

        assertThat(birdroom.newest(1).get(0)).contains("person-changed").contains("\"phone\":null");
        assertThat(room().person("Tomas").orElseThrow().phone()).isEmpty();
        assertThat(page.find("person.Tomas", JComponent.class)
                        .getAccessibleContext()
                        .getAccessibleName())
                .contains("no phone known");
    }

    @Test
    void whatCannotBeDialledIsSaidAtItsFieldAndStaysThere() {
        Painted page = page("Ines").press("tab.people");
        write(page, "name", "Maud");
        write(page, "phone", "12").press("add-person");
        assertThat(page.png("setup-person-wrong-phone")
                        .assertFit()
                        .find("phone.wrong", JLabel.class)
                        .getText())
                .startsWith("12 is no phone number.");
        assertThat(page.find("phone", JTextComponent.class).getText()).isEqualTo("12");

        page.press("person.Tomas");
        write(page, "phone", "05S5 0199").press("change-person");
        assertThat(page.find("phone.wrong", JLabel.class).getText()).startsWith("05S5 0199 is no phone number.");
        assertThat(page.maybe("problem.card")).isEmpty();
        assertThat(room().person("Tomas").orElseThrow().phone()).contains("0555 0177");
    }

    @Test
    void theLastOwnerStaysOwner() {
        Painted page = page("Ines")
                .press("tab.people")
                .press("person.Ines")
                .press("role.sitter")
                .press("change-person");

        assertThat(page.find("sheet.text", JLabel.class).getText()).contains("the only owner");
        assertThat(room().person("Ines").orElseThrow().role()).isEqualTo(Role.OWNER);
    }

    @Test
    void foodIsWrittenOnceAndSavedForManyCages() {
        Painted page = page("Ines")
                .press("tab.food")
                .png("setup-food-none")
                .assertFit()
                .press("cage.A1");
        page.press("what.quick.1").press("amount.quick.1").press("add-line");
        page.press("what.quick.2").press("amount.quick.3").press("when.evening").press("add-line");
        page.press("allowed.count")
                .press("cage.A2")
                .png("setup-food")
                .assertFit()
                .press("save");

        for (String cage : List.of("A1", "A2")) {
            assertThat(room().cage(cage).orElseThrow().routine().feed())
                    .containsExactly(
                            new FeedLine("seed mix", "1 scoop", DayPart.MORNING).as(FoodKind.DISH),
                            new FeedLine("soft food", "1 spoon", DayPart.EVENING).as(FoodKind.PERISHABLE));
            assertThat(room().cage(cage).orElseThrow().routine().allows(Permission.COUNT))
                    .isTrue();
        }

        page.press("cage.A1").press("take-out.1").press("choose.breeding").press("save");
        assertThat(room().cage("B6").orElseThrow().routine().feed())
                .containsExactly(new FeedLine("soft food", "1 spoon", DayPart.EVENING).as(FoodKind.PERISHABLE));
    }

    @Test
    void whatALineOfFoodIsIsGuessedAndShownAndMayBeSaidOtherwise() {
        Painted page = page("Ines").press("tab.food").press("cage.A1");
        page.press("what.quick.3").press("amount.quick.4").press("add-line");
        assertThat(page.find("kind.1.perishable", AbstractButton.class).isSelected())
                .isTrue();

        page.press("kind.1.other").press("save");

        assertThat(room().cage("A1").orElseThrow().routine().feed())
                .containsExactly(new FeedLine("greens", "1 handful", DayPart.MORNING).as(FoodKind.OTHER));
    }

    @Test
    void aMedicineIsNotTakenForFood() {
        Painted page = page("Ines").press("tab.food").press("cage.A1").press("amount.quick.1");
        page.after(() -> page.find("what", JTextComponent.class).setText("wormer"));
        page.press("add-line");

        assertThat(page.find("what.wrong", JLabel.class).getText()).contains("Medicine is not food");
    }

    @Test
    void aLineWithoutAnAmountSaysSo() {
        Painted page = page("Ines")
                .press("tab.food")
                .press("cage.A1")
                .press("what.quick.1")
                .press("add-line");

        assertThat(page.find("amount.wrong", JLabel.class).getText()).isEqualTo("Write how much.");
        page.png("setup-food-problem").assertFit();
    }

    @Test
    void theRoomGetsItsNameItsHeatItsNightAndItsRings() {
        Painted page =
                page("Ines").press("tab.room").png("setup-room").assertFit().press("save");
        assertThat(page.find("problem", JLabel.class).getText()).startsWith("Nothing has been changed");

        write(page, "room", "Hill Street birdroom");
        page.press("act.fewer")
                .press("night.dim")
                .press("from.more")
                .press("day.more")
                .assertFit()
                .press("save");

        assertThat(room().settings().name()).isEqualTo("Hill Street birdroom");
        assertThat(room().settings().heatAct()).isEqualTo(29);
        assertThat(room().settings().quiet()).contains(new Quiet(LocalTime.of(22, 0), LocalTime.of(7, 0)));
        assertThat(room().settings().ringsIssued()).isEqualTo(MonthDay.of(1, 2));
        page.png("setup-room-saved").assertFit();
    }

    @Test
    void afterHowManyRoundsAPairIsPartedAndHowLongAHenRestsAreSet() {
        page("Ines")
                .press("tab.room")
                .press("most-rounds.more")
                .press("rest-months.fewer")
                .press("save");

        assertThat(birdroom.newest(1).get(0)).contains("room-set", "\"most-rounds\":3", "\"rest-months\":2");
        assertThat(room().settings().mostRounds()).isEqualTo(3);
        assertThat(room().settings().restMonths()).isEqualTo(2);
    }

    @Test
    void whatOneHenCoversAndOnePairFeedsAreSet() {
        page("Ines")
                .press("tab.room")
                .press("most-eggs.more")
                .press("most-chicks.fewer")
                .press("save");

        assertThat(birdroom.newest(1).get(0))
                .contains("room-set", "\"most-eggs\":7", "\"most-chicks\":4")
                .doesNotContain("heat");
        assertThat(room().settings().mostEggs()).isEqualTo(7);
        assertThat(room().settings().mostChicks()).isEqualTo(4);
    }

    @Test
    void quietHoursCanBeGivenUpAgain() {
        Painted page = page("Ines").press("tab.room").press("night.dim").press("save");
        assertThat(room().settings().quiet()).contains(new Quiet(LocalTime.of(21, 0), LocalTime.of(7, 0)));
        assertThat(page.find("from", JComponent.class).isVisible()).isTrue();

        page.press("night.bright").png("setup-room-no-quiet").assertFit().press("save");

        assertThat(birdroom.newest(1).get(0)).contains("room-set").contains("\"quiet\":null");
        assertThat(room().settings().quiet()).isEmpty();
    }

    @Test
    void aDayThatNoMonthHasAndHeatTheWrongWayRoundAreSaid() {
        Painted page = page("Ines").press("tab.room").press("month.more");
        for (int day = 1; day < 30; day++) {
            page.press("day.more");
        }
        page.press("save");
        assertThat(page.find("problem", JLabel.class).getText()).isEqualTo("That month has fewer days.");

        page.press("month.more")
                .press("act.more")
                .press("act.more")
                .press("act.more")
                .press("save");
        assertThat(page.find("problem", JLabel.class).getText()).startsWith("The heat to act on");
    }

    @Test
    void aBackupIsWrittenAndMakesTheSameRoomAgain() {
        Painted page = page("Ines").press("tab.backup").png("setup-backup").assertFit();

        page.press("back-up").png("setup-backed-up").assertFit();

        assertThat(page.find("backed-up", JLabel.class).getText()).contains("backup-2026-04-14");
        Path backup = birdroom.desk().folder().path().resolve("backups").resolve("backup-2026-04-14");
        DataFolder other = DataFolder.open(folder.resolve("other"));
        Clocks clocks = Clocks.system().withToday(Birdroom.TODAY);
        Archive.restore(backup, other, clocks, (entries, ofAll) -> {});
        try (Desk again = Desk.open(other, Lanes.inline(), clocks)) {
            assertThat(again.room()).isEqualTo(room());
        }
    }

    @Test
    void aSitterIsToldWhoSetsTheRoomUp() {
        Painted page = page("Tomas").png("setup-closed").assertFit();

        assertThat(page.maybe("tab.walls")).isEmpty();
        assertThat(page.find("to-wall", JComponent.class)).isNotNull();
    }

    @Test
    void theOwnerClosesTheKioskByTouchAndIsAskedFirst() {
        AtomicInteger left = new AtomicInteger();
        Painted page = birdroom.painted("Ines", new Destination.Setup(), (pen, stage) -> {
            stage.onLeave(left::incrementAndGet);
            return screen(pen, stage);
        });

        page.press("tab.room").press("close-kiosk").png("setup-close").assertFit();
        assertThat(page.find("sheet.title", JLabel.class).getText()).isEqualTo("Close Cagewall?");
        page.press("answer.stay");
        assertThat(page.maybe("sheet")).isEmpty();
        assertThat(left).hasValue(0);

        page.press("close-kiosk").press("answer.leave");
        assertThat(left).hasValue(1);
    }

    @Test
    void thePagesAreFitAtLargeLettersToo() {
        Painted page = birdroom.painted(TextSize.LARGE, "Ines", new Destination.Setup(), this::screen)
                .png("setup-walls-large")
                .assertFit();
        page.press("place.B2").png("setup-cage-large").assertFit();
        page.press("tab.people").assertFit();
        page.press("tab.food").press("cage.A1").png("setup-food-large").assertFit();
        page.press("tab.room").png("setup-room-large").assertFit();
        page.press("tab.rings").png("setup-rings-large").assertFit();
        page.press("tab.days").png("setup-days-large").assertFit();
        page.press("tab.backup").assertFit();
    }

    @Test
    void ringsThatWereBoughtAreWrittenDownAndTheNextOneIsOffered() {
        Painted page = page("Ines").press("tab.rings").png("setup-rings").assertFit();
        write(page, "size", "4.2 mm");
        write(page, "form", "HB 26-###")
                .press("add-rings")
                .png("setup-rings-added")
                .assertFit();

        assertThat(room().rings()).singleElement().satisfies(stock -> {
            assertThat(stock.ring(7)).isEqualTo("HB 26-007");
            assertThat(stock.rings()).hasSize(50);
        });
        write(page, "off", "HB 26-001")
                .press("why.lost")
                .press("write-off")
                .png("setup-ring-off")
                .assertFit();
        assertThat(room().ringsSpoilt()).containsExactly("HB 26-001");
        assertThat(page.find("next-ring", JLabel.class).getText()).isEqualTo("Next ring: HB 26-002");
    }

    @Test
    void aYearsColourIsToldByThePageOfTheBodyWhoseRingsTheyAre() {
        birdroom.tell(
                "{\"deed\":\"rings-bought\",\"year\":2022,\"size\":\"4.2 mm\",\"first\":1,\"last\":9,\"by\":\"Ines\"}");

        Painted page = page("Ines").press("tab.rings").png("setup-rings-2022").assertFit();
        assertThat(page.find("stock.2022-1", Component.class)
                        .getAccessibleContext()
                        .getAccessibleName())
                .contains("2022, 4.2 mm");

        page.press("ring-body.society");

        assertThat(page.find("stock.2022-1", Component.class)
                        .getAccessibleContext()
                        .getAccessibleName())
                .contains("2022, pink, 4.2 mm");
    }

    @Test
    void ringsWithoutAPlaceForTheNumberAreAskedAbout() {
        Painted page = page("Ines").press("tab.rings");
        write(page, "size", "4.2 mm");
        write(page, "form", "HB 26").press("add-rings").assertFit();

        assertThat(page.find("form.wrong", JLabel.class).getText()).contains("with a # for each digit");
        assertThat(room().rings()).isEmpty();
    }

    @Test
    void aValueOfTheTimetableIsSetAndTakenBack() {
        Painted page = page("Ines").press("tab.days").png("setup-days").assertFit();
        page.press("days.incubation").png("setup-days-value").assertFit();
        page.press("expected.more")
                .press("latest.more")
                .press("set-days")
                .png("setup-days-set")
                .assertFit();
        assertThat(room().settings().timetable()).containsEntry("budgerigar.incubation", "17 19 22");

        page.press("days.incubation").press("take-back");
        assertThat(room().settings().timetable()).isEmpty();
    }

    private Room room() {
        return birdroom.room();
    }

    private String free(String wall, int row, int column) {
        return "place.free-" + room().wall(wall).orElseThrow().id() + "-" + row + "-" + column;
    }

    @ParameterizedTest
    @EnumSource
    void theRoomsPageIsWholeToItsLowestCardInAllLetters(TextSize size) {
        Painted page = birdroom.painted(size, "Ines", new Destination.Setup(), this::screen);
        if (page.maybe("turn.after").isPresent()) {
            page.press("turn.after").press("turn.after").press("turn.after");
        } else {
            page.press("tab.room");
        }
        page.png("setup-room-" + size).assertFit();

        for (int turn = 1; canBePressed(page, "settings.down") && turn < 12; turn++) {
            page.press("settings.down").png("setup-room-" + size + "-" + turn);
        }

        page.assertFit();
        assertThat(page.names()).contains("most-rounds.more", "rest-months.more");
    }

    @ParameterizedTest
    @EnumSource(names = {"LARGER", "LARGEST"})
    void everyPartOfTheSetupIsReachedInLargerLetters(TextSize size) {
        Painted page = birdroom.painted(size, "Ines", new Destination.Setup(), this::screen);
        List<String> parts = new ArrayList<>();
        for (int part = 0; part < 7; part++) {
            parts.add(page.find("turn.shown", JLabel.class).getText());
            page.png("setup-" + size + "-" + parts.get(part));
            if (part < 6) {
                page.press("turn.after");
            }
        }

        assertThat(parts).containsExactly("Walls", "People", "Food", "Room", "Rings", "Days", "Backup");
        assertThat(canBePressed(page, "turn.after")).isFalse();
        assertThat(page.press("turn.before").find("turn.shown", JLabel.class).getText())
                .isEqualTo("Days");
    }

    private static boolean canBePressed(Painted page, String name) {
        return page.maybe(name).filter(java.awt.Component::isEnabled).isPresent();
    }

    private Painted emptyRoom() {
        birdroom.close();
        birdroom = Birdroom.empty(folder.resolve("new"));
        return page("");
    }

    private static Painted write(Painted page, String field, String text) {
        JTextComponent place = page.find(field, JTextComponent.class);
        return page.after(() -> place.setText(text));
    }

    private Painted page(String person) {
        return birdroom.painted(person, new Destination.Setup(), this::screen);
    }

    private SetupScreen screen(Pen pen, Layers stage) {
        made = new SetupScreen(birdroom.desk(), pen, stage, stage, stage, stage, Birdroom.WORDS);
        return made;
    }
}
