package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.shell.CardTaker;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How many touches it takes from an open page to what stands in the record. */
class NestTouchesTest {

    @TempDir
    Path folder;

    private Birdroom room;

    @BeforeEach
    void open() {
        room = Nests.room(folder);
    }

    @AfterEach
    void close() {
        room.close();
    }

    @Test
    void birdsToPairUpShowTheirAgeAndWhatSpeaksAgainstThemAndTheFitComeFirst() {
        room.tell("""
                {"deed":"cage-added","cage":"Z9","wall":"North wall","row":3,"column":6,"use":"breeding","by":"Ines"}
                {"deed":"bird-added","bird":"A 1","sex":"cock","cage":"B1","hatched":"2024-03-01","by":"Ines"}
                {"deed":"bird-added","bird":"A 2","sex":"cock","cage":"B1","hatched":"2024-03-01","by":"Ines"}
                {"deed":"bird-looked-over","bird":"A 1","condition":"watch","by":"Ines"}""");

        Painted page = touch("Z9", "do.pair-up");

        assertThat(said(page, "pick.A 1")).contains("years").contains("to be watched since");
        assertThat(said(page, "pick.A 2")).contains("years").doesNotContain("to be watched");
        assertThat(page.names().indexOf("pick.A 1")).isGreaterThan(page.names().indexOf("pick.A 2"));
    }

    @Test
    void bigYoungWithEggsOfTheNextRoundAreSaidToBeInTheirWay() {
        Nests.twoRounds(room);

        assertThat(Nests.page(room, "Ines", "Z1").texts())
                .contains("In the box, and young out of it")
                .anyMatch(text -> text.startsWith("Big young are in with eggs: they trample them."))
                .noneMatch(text -> text.contains("feeds itself") || text.contains("alone "));
    }

    @Test
    void afterTheFirstHatchTheNextOneIsAwaited() {
        Nests.clutch(room, 20);
        room.tell(Nests.ago(0, "chick-hatched", "\"mark\":\"1\"").strip());

        assertThat(Nests.page(room, "Ines", "A1").texts()).anyMatch(text -> text.contains("next hatch"));
    }

    @Test
    void aFirstEggThatDidNotComeIsSaidAsPast() {
        room.tell(Nests.ago(31, "box-on", "").strip());

        assertThat(Nests.page(room, "Ines", "A1").texts())
                .anyMatch(text -> text.contains("no egg yet; the first was expected by"));
    }

    @Test
    void aPairAtTheEndOfItsSeasonIsNotAskedForEggsWithNoBoxOn() {
        assertThat(Nests.page(room, "Ines", "A1").texts())
                .contains("Nest box")
                .noneMatch(text -> text.contains("no eggs yet"));
    }

    private static String said(Painted page, String name) {
        return page.find(name, JComponent.class).getAccessibleContext().getAccessibleName();
    }

    @Test
    void aTreatmentWithNoProductIsNotLostButAskedForIt() {
        room.tell(Nests.ago(24, "box-on", "").strip());

        Painted page = touch("A1", "do.more", "pick.treat", "pick.HB 25-117", "answer.keep");
        assertThat(page.texts()).contains("Write what was given, as its label says.");

        page.after(() -> page.find("product", JTextComponent.class).setText("Drops from the green bottle"))
                .press("answer.keep");
        assertThat(last()).contains("bird-treated").contains("green bottle");
    }

    @Test
    void allWellIsOneTouch() {
        touch("A1", "all-well");

        assertThat(last()).contains("\"deed\":\"check\"").contains("\"answer\":\"well\"");
    }

    @Test
    void anEggOfTodayIsOneTouch() {
        room.tell(Nests.ago(24, "box-on", "").strip());

        touch("A1", "do.egg");

        assertThat(last()).contains("\"deed\":\"egg-laid\"").contains("\"mark\":\"1\"");
    }

    @Test
    void eachStageOfTheBoxIsOneTouch() {
        touch("A1", "do.box-on");
        assertThat(last()).contains("box-on");
        room.tell(Nests.ago(0, "parting-begun", "\"reason\":\"season\"").strip());

        touch("A1", "do.box-turned");
        assertThat(last()).contains("box-turned");
        touch("A1", "do.box-off");
        assertThat(last()).contains("box-off");
    }

    @Test
    void anEggTakenOutIsTwoTouchesAndItsReasonIsWhatItShows() {
        Nests.sitting(room);

        touch("A1", "do.egg-out", "choose.3");

        assertThat(last()).contains("egg-removed").contains("\"why\":\"clear\"");
    }

    @Test
    void aHatchingIsTwoTouches() {
        Nests.clutch(room, 20);

        touch("A1", "do.hatched", "choose.1");

        assertThat(last()).contains("chick-hatched").contains("\"mark\":\"1\"");
    }

    @Test
    void aWholeClutchIsCandledByOneTouchAnEggAndRecordsItselfAfterTheLast() {
        Nests.clutch(room, 14);

        Painted page = touch("A1", "do.candle", "candle.1", "candle.2", "candle.3.clear", "candle.4");
        assertThat(last()).contains("egg-laid");
        page.press("candle.5");

        assertThat(page.maybe("sheet")).isEmpty();
        assertThat(room.newest(5)).allMatch(line -> line.contains("egg-candled"));
        assertThat(state("3")).isEqualTo(EggState.CLEAR);
        assertThat(state("5")).isEqualTo(EggState.FULL);
    }

    @Test
    void aWrongFindingOfACandledClutchIsMendedBeforeTheLastTouchAndAfterIt() {
        Nests.clutch(room, 14);
        Painted page = touch("A1", "do.candle", "candle.1", "candle.1.clear", "candle.2", "candle.3", "candle.4");
        page.press("candle.5.addled").png("nest-candled").assertFit();
        assertThat(state("1")).isEqualTo(EggState.CLEAR);
        assertThat(state("5")).isEqualTo(EggState.ADDLED);

        page.press("egg.5").press("pick.full-after-all");
        assertThat(state("5")).isEqualTo(EggState.FULL);

        page.press("notice.undo");
        assertThat(state("5")).isEqualTo(EggState.ADDLED);
    }

    @Test
    void aCandledClutchIsTakenBackByTheNotice() {
        Nests.clutch(room, 14);

        touch("A1", "do.candle", "candle.1", "candle.2", "candle.3", "candle.4", "candle.5", "notice.undo");

        assertThat(state("1")).isEqualTo(EggState.NOT_CANDLED);
        assertThat(state("5")).isEqualTo(EggState.NOT_CANDLED);
    }

    @Test
    void onlyTheEggsThatAreDueALookAreWaitedFor() {
        Nests.clutch(room, 10);

        Painted page = touch("A1", "do.candle", "candle.1", "candle.2", "candle.3");
        assertThat(page.maybe("sheet")).isPresent();
        page.press("candle.4");

        assertThat(page.maybe("sheet")).isEmpty();
        assertThat(room.newest(4)).allMatch(line -> line.contains("egg-candled"));
        assertThat(state("5")).as("sat on for two days").isEqualTo(EggState.NOT_CANDLED);
    }

    @Test
    void someEggsLookedAtAndTheRestLeftAreKeptByOneTouchMore() {
        Nests.clutch(room, 14);

        touch("A1", "do.candle", "candle.1", "answer.keep");

        assertThat(last()).contains("egg-candled").contains("\"mark\":\"1\"");
        assertThat(state("2")).isEqualTo(EggState.NOT_CANDLED);
    }

    @Test
    void aClearEggThatHatchesWasFullAfterAllByOneMoreTouch() {
        Nests.sitting(room);

        touch("A1", "do.hatched", "choose.3", "answer.sure");

        assertThat(state("3")).isEqualTo(EggState.HATCHED);
    }

    @Test
    void allFedIsOneTouch() {
        Nests.twoRounds(room);

        touch("Z1", "do.all-fed");

        assertThat(last()).contains("nest-looked-at").contains("\"chicks\":4").contains("\"crops\":\"full\"");
    }

    @Test
    void aChickLeavesTheBoxByTwoTouches() {
        Nests.twoRounds(room);

        touch("Z1", "do.left-box", "choose.2");

        assertThat(last()).contains("chick-left-box").contains("\"mark\":\"2\"");
    }

    @Test
    void theOfferedRingGoesOnByTwoTouches() {
        Nests.sitting(room);
        room.tell("""
                {"deed":"rings-bought","year":2026,"size":"4.2","first":101,"last":150,"by":"Ines"}
                {"deed":"chick-hatched","cage":"A1","mark":"1","on":"2026-04-06","by":"Ines"}
                {"deed":"chick-hatched","cage":"A1","mark":"2","on":"2026-04-08","by":"Ines"}""");

        touch("A1", "do.ring", "choose.1");

        assertThat(last()).contains("chick-ringed").contains("\"mark\":\"1\"").contains("26-101");
    }

    @Test
    void aWeaningIsThreeTouchesAndAFourthForAChickThatIsYoungForIt() {
        Nests.twoRounds(room);

        Painted page = touch("Z1", "do.wean", "choose.1", "pick.Flight 1", "answer.sure");

        assertThat(last()).contains("chick-weaned").contains("\"to\":\"Flight 1\"");
        assertThat(page.maybe("chick.1.1")).isEmpty();
    }

    @Test
    void whereNoBirdIsThereToPairUpANewOneIsOneTouchAway() {
        room.close();
        room = Birdroom.empty(folder.resolve("new"));
        room.tell("""
                {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142","by":"Ines"}
                {"deed":"wall-added","wall":"North wall","rows":1,"columns":1,"by":"Ines"}
                {"deed":"cage-added","cage":"A1","wall":"North wall","row":1,"column":1,"use":"breeding","by":"Ines"}
                """.strip());

        Painted page = touch("A1", "do.pair-up");

        assertThat(page.maybe("answer.new-bird")).isPresent();
    }

    @Test
    void aDeadChickIsThreeTouches() {
        Nests.twoRounds(room);

        touch("Z1", "do.died", "choose.4", "answer.empty-crop");

        assertThat(last()).contains("chick-died").contains("\"likely\":\"empty-crop\"");
    }

    @Test
    void aLookOverIsThreeTouchesAndATreatmentNamesWhatWasGivenLast() {
        room.tell("""
                {"deed":"bird-treated","bird":"HB 24-008","product":"Drops from the green bottle","reason":"yearly","by":"Ines"}""");

        touch("A1", "do.look-over", "pick.HB 25-117", "answer.fit");
        assertThat(last()).contains("bird-looked-over").contains("fit");

        touch("A1", "do.treat", "pick.HB 26-041", "answer.keep");
        assertThat(last()).contains("bird-treated").contains("HB 26-041").contains("Drops from the green bottle");
    }

    @Test
    void anEggMovesByThreeTouchesAndBothPagesShowIt() {
        Nests.sitting(room);
        Nests.twoRounds(room);

        Painted asked = touch("A1", "do.move-egg", "choose.4", "pick.Z1");

        assertThat(said(asked)).contains("Egg 4 is to hatch 5 days before the next in Z1");
        assertThat(last()).doesNotContain("egg-moved");
        asked.png("nest-move-far").assertFit().press("answer.sure");
        assertThat(last()).contains("egg-moved").contains("\"letter\":\"A\"");
        Painted from = Nests.page(room, "Ines", "A1").png("nest-moved-away").assertFit();
        Painted to = Nests.page(room, "Ines", "Z1").png("nest-moved-in").assertFit();
        assertThat(from.names()).contains("away.4");
        assertThat(to.names()).contains("egg.A");
    }

    @Test
    void aChickMovesByThreeTouches() {
        Nests.sitting(room);
        Nests.twoRounds(room);

        room.tell((Nests.ago(1, "chick-hatched", "\"mark\":\"1\"") + Nests.ago(0, "chick-hatched", "\"mark\":\"2\""))
                .strip());

        Painted asked = touch("A1", "do.move-chick", "choose.1", "pick.Z1");
        assertThat(said(asked)).contains("Chick 1 hatched 16 days before the next in Z1");
        asked.press("answer.no");
        assertThat(last()).contains("chick-hatched");

        touch("A1", "do.move-chick", "choose.1", "pick.Z1", "answer.sure");
        assertThat(last()).contains("chick-moved").contains("\"mark\":\"1\"").contains("\"to\":\"Z1\"");
    }

    @Test
    void aChickThatWasTouchedMovesByOneMoreTouchAndTheScanOfTheOtherCard() {
        Nests.sitting(room);
        Nests.twoRounds(room);
        room.tell((Nests.ago(1, "chick-hatched", "\"mark\":\"1\"") + Nests.ago(0, "chick-hatched", "\"mark\":\"2\""))
                .strip());

        CardTaker[] taker = new CardTaker[1];
        Nests.page(room, "Ines", "A1", it -> taker[0] = it)
                .press("chick.2")
                .press("pick.move-chick")
                .after(() -> taker[0].awaited()
                        .orElseThrow()
                        .accept(room.room().cage("Z1").orElseThrow()))
                .press("answer.sure");
        assertThat(last()).contains("chick-moved").contains("\"mark\":\"2\"").contains("\"to\":\"Z1\"");
    }

    @Test
    void aTouchedEggOrChickIsNamedAtTheHeadOfItsSheet() {
        Nests.twoRounds(room);

        assertThat(titleOf("egg.2.1")).startsWith("Egg 1, laid");
        assertThat(titleOf("chick.1.1")).startsWith("Chick 1, ");
        assertThat(titleOf("dummy.1")).isEqualTo("A dummy egg");
    }

    private String titleOf(String lying) {
        return touch("Z1", lying).find("sheet.title", JLabel.class).getText();
    }

    @Test
    void aSeasonUnderWayIsToldInOneGo() {
        room.tell(Nests.ago(24, "box-on", "").strip());
        Painted page = Nests.page(room, "Ines", "A1").press("do.eggs-found");
        times(page, 3, "eggs.more");
        times(page, 20, "ago.more");
        times(page, 2, "chicks.more");
        times(page, 3, "age.more");

        page.press("answer.keep").png("nest-found-kept").assertFit();

        assertThat(last())
                .contains("eggs-found")
                .contains("\"count\":3")
                .contains("\"first\":\"2026-03-25\"")
                .contains("\"chicks\":2")
                .contains("\"age\":3");
        assertThat(room.room().nest(room.room().cage("A1").orElseThrow()).chicks())
                .hasSize(2);
    }

    @Test
    void clearEggsAreNotNaggedAboutWhileOthersMayHatch() {
        Nests.sitting(room);
        assertThat(said("A1")).contains("Clear egg 3 can stay");

        room.tell((Nests.ago(1, "egg-removed", "\"mark\":\"4\"")
                        + Nests.ago(1, "egg-removed", "\"mark\":\"5\"")
                        + Nests.ago(0, "chick-hatched", "\"mark\":\"1\"")
                        + Nests.ago(0, "chick-hatched", "\"mark\":\"2\""))
                .strip());
        assertThat(said("A1")).contains("Clear egg 3 can go now");
    }

    @Test
    void aSitterSeesNoNestUnlessChicksAreDueALookThatIsAllowed() {
        Nests.sitting(room);

        assertThat(Nests.page(room, "Tomas", "A1").names())
                .noneMatch(name -> name.startsWith("egg."))
                .doesNotContain("do.candle", "do.more", "do.part");

        room.tell("{\"deed\":\"routine-set\",\"cage\":\"A1\",\"feed\":[],\"allowed\":[\"look-in\"],\"by\":\"Ines\"}");
        assertThat(Nests.page(room, "Tomas", "A1")
                        .png("cage-sitter")
                        .assertFit()
                        .names())
                .contains("chore")
                .noneMatch(name -> name.startsWith("egg."));
    }

    private Painted touch(String cage, String... touches) {
        Painted page = Nests.page(room, "Ines", cage);
        for (String touch : touches) {
            page.press(touch);
        }
        return page;
    }

    private static void times(Painted page, int times, String name) {
        for (int i = 0; i < times; i++) {
            page.press(name);
        }
    }

    private String last() {
        return room.newest(1).get(0);
    }

    private EggState state(String mark) {
        return room.room().nest(room.room().cage("A1").orElseThrow()).all().stream()
                .map(Lying::egg)
                .filter(egg -> egg.mark().equals(mark))
                .findFirst()
                .orElseThrow()
                .state();
    }

    private String said(String cage) {
        return said(Nests.page(room, "Ines", cage));
    }

    private static String said(Painted page) {
        StringBuilder all = new StringBuilder();
        for (java.awt.Component part : page.all()) {
            if (part instanceof javax.swing.JLabel label) {
                all.append(label.getText()).append('\n');
            } else if (part.getAccessibleContext() != null
                    && part.getAccessibleContext().getAccessibleName() != null) {
                all.append(part.getAccessibleContext().getAccessibleName()).append('\n');
            }
        }
        return all.toString().replace('\u00A0', ' ');
    }
}
