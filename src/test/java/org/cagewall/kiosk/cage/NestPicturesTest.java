package org.cagewall.kiosk.cage;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class NestPicturesTest {

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
    void sitting() {
        Nests.clutch(room, 14);
        room.tell((Nests.ago(2, "egg-candled", "\"mark\":\"1\",\"finding\":\"full\"")
                        + Nests.ago(2, "egg-candled", "\"mark\":\"2\",\"finding\":\"full\"")
                        + Nests.ago(2, "egg-candled", "\"mark\":\"3\",\"finding\":\"clear\""))
                .strip());
        Painted page = Nests.page(room, "Ines", "A1").png("nest-sitting").assertFit();
        page.press("do.candle").png("nest-candle").assertFit();
        Nests.page(room, "Ines", "A1").press("egg.3").png("nest-egg-menu").assertFit();
        Nests.page(room, "Ines", "A1").press("do.egg-out").png("nest-egg-out").assertFit();
        Nests.page(room, "Ines", "A1").press("do.move-egg").press("choose.1").png("nest-move").assertFit();
        Nests.page(room, "Ines", "A1").press("do.part").png("nest-part").assertFit();
        Nests.page(room, "Ines", "A1").press("do.more").png("nest-more").assertFit();
        Nests.page(room, "Tomas", "A1").png("nest-sitter").assertFit();
    }

    @Test
    void twoRounds() {
        StringBuilder lines = new StringBuilder(Nests.ago(60, "box-on", ""));
        room.tell("""
                {"deed":"cage-added","cage":"Z1","wall":"North wall","row":3,"column":6,"use":"breeding","by":"Ines"}
                {"deed":"bird-added","bird":"Z 1","sex":"cock","cage":"Z1","by":"Ines"}
                {"deed":"bird-added","bird":"Z 2","sex":"hen","cage":"Z1","by":"Ines"}
                {"deed":"paired-up","cage":"Z1","cock":"Z 1","hen":"Z 2","on":"2026-01-20","by":"Ines"}
                {"deed":"box-on","cage":"Z1","on":"2026-01-22","by":"Ines"}""");
        StringBuilder z = new StringBuilder();
        for (int egg = 0; egg < 5; egg++) {
            z.append(Nests.at("Z1", 52 - 2 * egg, "egg-laid", ""));
        }
        for (int egg = 1; egg <= 4; egg++) {
            z.append(Nests.at("Z1", 33 - 2 * (egg - 1), "chick-hatched", "\"mark\":\"" + egg + "\""));
        }
        z.append(Nests.at("Z1", 40, "egg-candled", "\"mark\":\"5\",\"finding\":\"clear\""));
        z.append(Nests.at("Z1", 25, "chick-ringed", "\"mark\":\"1\",\"ring\":\"HB 26-090\""));
        z.append(Nests.at("Z1", 1, "chick-left-box", "\"mark\":\"1\""));
        z.append(Nests.at("Z1", 5, "round-begun", ""));
        z.append(Nests.at("Z1", 5, "egg-laid", ""));
        z.append(Nests.at("Z1", 3, "egg-laid", ""));
        z.append(Nests.at("Z1", 1, "egg-laid", ""));
        z.append(Nests.at("Z1", 1, "dummies", "\"count\":1"));
        room.tell(z.toString().strip());
        Nests.page(room, "Ines", "Z1").png("nest-two-rounds").assertFit();
        Nests.page(room, "Ines", "Z1").press("do.nest-look").png("nest-look").assertFit();
        Nests.page(room, "Ines", "Z1").press("chick.1.2").png("nest-chick-menu").assertFit();
        Nests.page(room, "Ines", "Z1").press("do.ring").png("nest-ring").assertFit();
        room.tell(Nests.at("Z1", 1, "parting-begun", "\"reason\":\"rounds\"").strip());
        Nests.page(room, "Ines", "Z1").png("nest-parting").assertFit();
        assertThat(room.room().cage("Z1")).isPresent();
    }

    @Test
    void found() {
        room.tell(Nests.ago(24, "box-on", "").strip());
        Nests.page(room, "Ines", "A1").png("nest-box-on").assertFit();
        Nests.page(room, "Ines", "A1").press("do.eggs-found").png("nest-found").assertFit();
        Nests.page(room, "Ines", "A1").press("do.more").press("pick.treat").press("pick.HB 25-117").png("nest-treat").assertFit();
    }
}
