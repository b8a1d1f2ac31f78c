package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.room.CardFaces;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Nest;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Nests told of in a real window, day after day, every touch counted. */
@RequiresDisplay
class NestJourneyTest {

    private static final LocalDate FIRST_DAY = TestDesk.TODAY;

    @TempDir
    Path folder;

    private Desk desk;
    private Live live;
    private int touches;

    @BeforeEach
    void make() {
        TestDesk.furnished(folder.resolve("room")).close();
    }

    @AfterEach
    void close() {
        if (live != null) {
            live.close();
            desk.close();
        }
    }

    @Test
    void aClutchFromItsFirstEggToWeanedChicks() {
        onDay(0, "A2");
        touch(1, here -> touched("do.egg"), nest -> nest.eggs().size() == 1);
        onDay(2, "A2");
        touch(1, here -> touched("do.egg"), nest -> nest.eggs().size() == 2);
        onDay(4, "A2");
        touch(1, here -> touched("do.egg"), nest -> nest.eggs().size() == 3);

        onDay(9, "A2");
        touch(4, here -> touched("do.candle", "candle.1", "candle.2", "candle.3.clear"), nest -> states(nest)
                .equals(List.of(EggState.FULL, EggState.FULL, EggState.CLEAR)));
        live.picture("nest-journey-1-candled");

        onDay(20, "A2");
        touch(
                2,
                here -> touched("do.hatched", "choose.1"),
                nest -> nest.chicks().size() == 1);
        touch(
                2,
                here -> touched("do.hatched", "choose.2"),
                nest -> nest.chicks().size() == 2);
        touch(1, here -> touched("do.all-fed"), nest -> looked());
        live.read("can go now").picture("nest-journey-2-hatched");
        touch(2, here -> touched("do.egg-out", "choose.3"), nest -> nest.eggs().isEmpty());

        onDay(26, "A2");
        touched("do.ring");
        live.write("ring", "HB 26-201");
        touch(1, here -> touched("choose.1"), nest -> ringed(nest) == 1);
        touched("do.ring");
        live.write("ring", "HB 26-202");
        touch(1, here -> touched("choose.2"), nest -> ringed(nest) == 2);

        onDay(52, "A2");
        touch(
                2,
                here -> touched("do.left-box", "choose.1"),
                nest -> nest.chicksInBox().size() == 1);
        touch(1, here -> touched("do.left-box"), nest -> nest.chicksInBox().isEmpty());
        live.picture("nest-journey-3-out");

        onDay(62, "A2");
        touch(
                3,
                here -> touched("do.wean", "choose.1", "pick.A4"),
                nest -> nest.chicks().size() == 1);
        touch(2, here -> touched("do.wean", "pick.A4"), nest -> nest.chicks().isEmpty());
        assertThat(desk.room().bird("HB 26-201").flatMap(bird -> bird.cage()).map(desk.room()::cageName))
                .contains("A4");
    }

    @Test
    void anEggIsMovedByScanningTheOtherCagesCard() {
        onDay(0, "A1");
        touched("do.move-egg", "choose.2");
        live.see("options").picture("nest-journey-4-move");

        live.type(card("A2"));

        live.read("Egg 2 is now A in A2").read("Cage A1").see("away.2");
        assertThat(touches).as("with the scan three").isEqualTo(2);
        live.press("away.2").read("Cage A2").see("egg.A").picture("nest-journey-5-moved-in");

        live.type(card("A1"));
        live.read("Cage A1");
    }

    @Test
    void aPairIsPartedInItsUsualOrder() {
        onDay(0, "A2");
        touch(2, here -> touched("do.part", "reason.season"), nest -> pair().parting()
                .isPresent());
        live.picture("nest-journey-6-parting");
        touch(
                1,
                here -> touched("do.box-turned"),
                nest -> desk.room().cage("A2").orElseThrow().box().isTurned());
        touch(
                1,
                here -> touched("do.box-off"),
                nest -> desk.room().cage("A2").orElseThrow().box().hanging().isEmpty());

        touch(2, here -> touched("do.cock-out", "pick.F2"), nest -> desk.room()
                .cockOut(pair())
                .isPresent());
        touch(2, here -> touched("answer.fit", "answer.later"), nest -> true);
        touch(3, here -> touched("do.hen-out", "pick.F1", "answer.sure"), nest -> henIsIn("F1"));
        touched("answer.fit", "answer.treat");
        live.write("product", "Drops from the green bottle");
        touch(1, here -> touched("answer.keep"), nest -> desk.room()
                .bird("HB 24-120")
                .flatMap(bird -> bird.treated())
                .isPresent());
    }

    @Test
    void aPairIsPartedInAnotherOrderAndAStageIsLeftOut() {
        onDay(0, "A2");
        touch(2, here -> touched("do.part", "reason.hen-worn"), nest -> pair().parting()
                .isPresent());

        touch(2, here -> touched("do.hen-out", "pick.F1"), nest -> henIsIn("F1"));
        touch(2, here -> touched("answer.fit", "answer.later"), nest -> true);
        touch(3, here -> touched("stage.box-turned", "answer.skip", "answer.not-needed"), nest -> pair().isSkipped(
                        Stage.BOX_TURNED));
        touch(
                1,
                here -> touched("do.box-off"),
                nest -> desk.room().cage("A2").orElseThrow().box().hanging().isEmpty());
        live.read("left out").picture("nest-journey-7-out-of-order");
        touch(2, here -> touched("do.cock-out", "pick.F2"), nest -> desk.room()
                .bird("HB 25-052")
                .flatMap(bird -> bird.cage())
                .map(desk.room()::cageName)
                .filter("F2"::equals)
                .isPresent());
    }

    // ------------------------------------------------------------------ the means

    private void onDay(int days, String cage) {
        leave();
        Clock clock = Clock.fixed(Instant.parse("2026-04-14T09:14:00Z"), ZoneOffset.UTC);
        desk = Desk.open(
                DataFolder.open(folder.resolve("room")),
                Lanes.answeringOn(new EventThread()),
                new Clocks(clock, Optional.of(FIRST_DAY.plusDays(days))));
        live = Live.kiosk(desk);
        live.press("tile." + cage).read("Cage " + cage);
        touches = 0;
    }

    /** The kiosk is left as its owner leaves it, so that nothing of it goes on beside the next day's. */
    private void leave() {
        if (live != null) {
            new EventThread().finish(() -> live.shell().stage().askToLeave());
            live.press("answer.leave");
            desk.close();
        }
    }

    private void touched(String... names) {
        for (String name : names) {
            live.press(name);
            touches++;
        }
    }

    /** So many touches, and then the record holds it. */
    private void touch(int most, Consumer<Live> work, Predicate<Nest> holds) {
        touches = 0;
        work.accept(live);
        live.waitUntil(
                "it is recorded",
                () -> holds.test(desk.room().nest(desk.room().cage("A2").orElseThrow())));
        assertThat(touches).isEqualTo(most);
    }

    private static List<EggState> states(Nest nest) {
        return nest.eggs().stream().map(lying -> lying.egg().state()).toList();
    }

    private static long ringed(Nest nest) {
        return nest.chicks().stream()
                .map(Lying::chick)
                .flatMap(Optional::stream)
                .flatMap(chick -> chick.ringWorn().stream())
                .count();
    }

    private boolean looked() {
        return desk.room().cage("A2").orElseThrow().nestLook().isPresent();
    }

    private Pair pair() {
        return desk.room().pairs().stream()
                .filter(pair -> desk.room().cageName(pair.cage()).equals("A2"))
                .findFirst()
                .orElseThrow();
    }

    private boolean henIsIn(String cage) {
        return desk.room()
                .bird("HB 24-120")
                .flatMap(hen -> hen.cage())
                .map(desk.room()::cageName)
                .filter(cage::equals)
                .isPresent();
    }

    private String card(String cage) {
        return CardFaces.code(desk.room(), desk.room().cage(cage).orElseThrow()).text() + "\n";
    }
}
