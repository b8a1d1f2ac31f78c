package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.cagewall.room.card.CardCode;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What becomes of cameras: each trouble has its sentence, and none of them lasts. A real camera was not tried. */
class CamerasTest {

    private static final String CARD = new CardCode("K7Q", 12, "AB").text();
    private static final String OTHER = new CardCode("K7Q", 13, "AB").text();
    private static final long SECOND = 1_000_000_000L;

    @TempDir
    private Path folder;

    private final ScriptedDriver driver = new ScriptedDriver();
    private long nanos = 1;
    private final Looking looking = new Looking(driver.cameras(() -> nanos), () -> nanos);

    @Test
    void aCardHeldBeforeTheCameraIsRead() {
        driver.plugIn("Lid", SymbolPictures.of(CARD));

        assertThat(looking.begin("").chosen()).contains("id of Lid");
        assertThat(read()).contains(CARD);
        assertThat(driver.said()).containsExactly("find", "open Lid at 1920");
    }

    @Test
    void theSameCardIsOneScanForAsLongAsItStaysAndAnotherOnceItWasAway() {
        driver.plugIn("Lid", SymbolPictures.of(CARD));
        looking.begin("");

        assertThat(read()).contains(CARD);
        assertThat(readAfter(1)).isEmpty();
        assertThat(readAfter(1)).isEmpty();
        driver.show("Lid", SymbolPictures.of(OTHER));
        assertThat(readAfter(1)).contains(OTHER);
        driver.show("Lid", wall());
        assertThat(readAfter(1)).isEmpty();
        driver.show("Lid", SymbolPictures.of(OTHER));
        assertThat(readAfter(3)).contains(OTHER);
    }

    @Test
    void withoutACameraThereIsASentenceAndAfterPluggingInAPicture() {
        assertThat(begin()).contains("No camera was found. Plug one in, then touch Look again.");
        assertThat(looking.look()).isEqualTo(new Looking.Glance.Over());

        driver.plugIn("Lid", SymbolPictures.of(CARD));

        assertThat(begin()).isEmpty();
        assertThat(read()).contains(CARD);
    }

    @Test
    void whereTheSystemKeepsTheProgramFromCamerasItSaysWhereToAllowThem() {
        driver.deny();
        assertThat(begin().orElseThrow()).contains("may not use the camera");

        driver.plugIn("Lid", wall());
        assertThat(begin()).isEmpty();
        assertThat(trouble()).contains("may not use the camera");

        driver.allow();
        begin();
        assertThat(looking.look()).isInstanceOf(Looking.Glance.Saw.class);
    }

    @Test
    void aCameraInUseElsewhereSaysSoAndOpensOnceItIsFree() {
        driver.plugIn("Lid", wall());
        driver.useElsewhere();
        begin();

        assertThat(trouble()).contains("Close any other program");
        assertThat(looking.look()).isEqualTo(new Looking.Glance.Over());

        driver.leaveElsewhere();
        begin();
        assertThat(looking.look()).isInstanceOf(Looking.Glance.Saw.class);
    }

    @Test
    void aCameraThatIsPulledOutGoesOnGivingItsLastPictureAndIsFoundOut() {
        driver.plugIn("Lid", wall());
        begin();
        looking.look();

        driver.unplug("Lid");
        looking.look();
        nanos += 4 * SECOND;

        assertThat(trouble()).contains("was unplugged");
        assertThat(looking.look()).isEqualTo(new Looking.Glance.Over());
        driver.plugIn("Lid", SymbolPictures.of(CARD));
        begin();
        assertThat(read()).contains(CARD);
    }

    @Test
    void aCameraThatIsThereAndGivesNothingNewIsSaidToBeStuck() {
        driver.plugIn("Lid", wall());
        begin();
        looking.look();

        driver.stick("Lid");
        looking.look();
        nanos += 4 * SECOND;

        assertThat(trouble()).contains("no new picture");
    }

    @Test
    void aCoveredCameraIsToldOfAndSeesAgainByItself() {
        driver.plugIn("Lid", new BufferedImage(320, 240, BufferedImage.TYPE_3BYTE_BGR));
        begin();
        looking.look();
        nanos += 4 * SECOND;

        assertThat(trouble()).contains("only black");

        driver.show("Lid", SymbolPictures.of(CARD));
        assertThat(read()).contains(CARD);
    }

    @Test
    void ofTwoCamerasTheWantedOneIsTakenAndTwoOfANameAreToldApart() {
        driver.plugIn("Lid", wall()).plugIn("Stand", SymbolPictures.of(CARD));

        Looking.Begun begun = looking.begin("id of Stand");

        assertThat(begun.chosen()).contains("id of Stand");
        assertThat(begun.all())
                .extracting(each -> Words.english().say(each.name()))
                .containsExactly("Lid", "Stand");
        assertThat(read()).contains(CARD);
        looking.begin("id of Lid");
        looking.look();
        assertThat(driver.isOpen("Stand")).isFalse();
        assertThat(driver.isOpen("Lid")).isTrue();
    }

    @Test
    void aMachineThatTheDriverDoesNotKnowHasASentenceAndGoesOn() {
        Cameras cameras = new DrivenCameras(
                () -> {
                    throw new UnsatisfiedLinkError("no library for this machine");
                },
                () -> false,
                () -> nanos);

        assertThat(cameras.find().trouble().map(Words.english()::say).orElseThrow())
                .contains("A scanner that types");
    }

    @Test
    void theDriverOfThisMachineCanBeAsked() {
        Cameras.Found found = Cameras.ofThisMachine().find();

        assertThat(found.trouble().map(Message::key))
                .isIn(
                        Optional.empty(),
                        Optional.of("scan.camera.none"),
                        Optional.of("scan.camera.denied"),
                        Optional.of("scan.camera.no-driver"));
        assertThat(found.all().isEmpty()).isEqualTo(found.trouble().isPresent());
    }

    @Test
    void aCameraThatIsAFileMayBeKeptFromReaders() throws IOException {
        assertThat(PluggedIn.isKeptFrom(folder)).isFalse();
        Path device = Files.createFile(folder.resolve("video0"));
        assertThat(PluggedIn.isKeptFrom(folder)).isFalse();
        Files.delete(device);
        Files.createSymbolicLink(device, folder.resolve("what nobody may read"));
        assertThat(PluggedIn.isKeptFrom(folder)).isTrue();
    }

    @Test
    void aFolderOfPicturesStandsInForACameraAndGoesOnWhereItWasLeft() throws IOException {
        SymbolPictures.write(folder.resolve("1.png"), CARD);
        SymbolPictures.write(folder.resolve("2.png"), OTHER);
        Looking over = new Looking(driver.cameras(() -> nanos).and(new Replay(folder, 0.5, () -> nanos)), () -> nanos);

        assertThat(over.begin(Replay.ID).chosen()).contains(Replay.ID);
        assertThat(readOf(over)).contains(CARD);
        nanos += SECOND;
        assertThat(readOf(over)).isEmpty();
        over.close();
        nanos += SECOND;
        over.begin(Replay.ID);
        assertThat(readOf(over)).contains(OTHER);
        nanos += 2 * SECOND;
        assertThat(readOf(over)).contains(CARD);
    }

    @Test
    void aFolderWithoutPicturesSaysSo() {
        Looking over = new Looking(Cameras.none().and(new Replay(folder.resolve("none"), 5, () -> nanos)), () -> nanos);
        over.begin(Replay.ID);

        assertThat(said(over.look())).contains("no pictures in the folder none");
    }

    @Test
    void aPastedPictureIsASourceOfOnePicture() {
        FrameSource source = FrameSource.of(SymbolPictures.of(CARD));

        assertThat(source.next().map(new Decoder()::decode).flatMap(Decoding::text))
                .contains(CARD);
        assertThat(source.next()).isEmpty();
    }

    private Optional<String> begin() {
        return looking.begin("").trouble().map(Words.english()::say);
    }

    private Optional<String> read() {
        return readOf(looking);
    }

    private Optional<String> readAfter(int seconds) {
        nanos += seconds * SECOND;
        return read();
    }

    private static Optional<String> readOf(Looking looking) {
        Looking.Glance glance = looking.look();
        assertThat(glance).isInstanceOf(Looking.Glance.Saw.class);
        return ((Looking.Glance.Saw) glance).read().map(Looking.Read::text);
    }

    private String trouble() {
        return said(looking.look());
    }

    private static String said(Looking.Glance glance) {
        assertThat(glance).isInstanceOf(Looking.Glance.Blind.class);
        return Words.english().say(((Looking.Glance.Blind) glance).why());
    }

    private static BufferedImage wall() {
        BufferedImage wall = new BufferedImage(320, 240, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D brush = wall.createGraphics();
        brush.setColor(Color.LIGHT_GRAY);
        brush.fillRect(0, 0, 320, 240);
        brush.dispose();
        return wall;
    }
}
