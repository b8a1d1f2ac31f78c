package org.cagewall.kiosk.cage;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.function.Consumer;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.shell.CardTaker;
import org.cagewall.kiosk.shell.ChoiceSheets;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.theme.TextSize;

/** The furnished birdroom with nests at every stage, and the page of any of its cages painted. */
final class Nests {

    private Nests() {}

    static Birdroom room(Path folder) {
        return Birdroom.furnished(folder);
    }

    static Painted page(Birdroom room, String person, String cage) {
        return page(room, TextSize.NORMAL, person, cage);
    }

    static Painted page(Birdroom room, TextSize size, String person, String cage) {
        return page(room, size, 800, person, cage);
    }

    static Painted page(Birdroom room, TextSize size, int height, String person, String cage) {
        return page(room, size, height, person, cage, taker -> {});
    }

    /** The page, and who takes the card of another cage where one is waited for. */
    static Painted page(Birdroom room, String person, String cage, Consumer<CardTaker> taker) {
        return page(room, TextSize.NORMAL, 800, person, cage, taker);
    }

    private static Painted page(
            Birdroom room, TextSize size, int height, String person, String cage, Consumer<CardTaker> taker) {
        Destination.Cage here = Destination.Cage.byHand(cage);
        return room.painted(size, height, person, here, (pen, stage) -> {
            ChoiceSheets sheets = new ChoiceSheets(stage, Birdroom.WORDS);
            taker.accept(sheets);
            return new CageScreen(room.desk(), pen, stage, sheets, stage, Birdroom.WORDS, stage.breadth(), here);
        });
    }

    /** A line about cage A1, so many days ago. */
    static String ago(int days, String deed, String fields) {
        return at("A1", days, deed, fields);
    }

    static String at(String cage, int days, String deed, String fields) {
        LocalDate day = Birdroom.TODAY.minusDays(days);
        return "{\"deed\":\"" + deed + "\",\"cage\":\"" + cage + "\",\"on\":\"" + day + "\",\"by\":\"Ines\""
                + (fields.isEmpty() ? "" : "," + fields) + "}\n";
    }

    /** Five eggs in the box of A1, the first so many days ago, two days apart. */
    static void clutch(Birdroom room, int daysAgo) {
        StringBuilder lines = new StringBuilder(ago(24, "box-on", ""));
        for (int egg = 0; egg < 5; egg++) {
            lines.append(ago(daysAgo - 2 * egg, "egg-laid", ""));
        }
        room.tell(lines.toString().strip());
    }

    /** The same clutch sat on for twelve days: two eggs are full, one is clear, two were not looked at. */
    static void sitting(Birdroom room) {
        clutch(room, 14);
        room.tell((ago(2, "egg-candled", "\"mark\":\"1\",\"finding\":\"full\"")
                        + ago(2, "egg-candled", "\"mark\":\"2\",\"finding\":\"full\"")
                        + ago(2, "egg-candled", "\"mark\":\"3\",\"finding\":\"clear\""))
                .strip());
    }

    /** Cage Z1: four chicks of the first round, the eldest out of the box, a clear egg, and three eggs of the second. */
    static void twoRounds(Birdroom room) {
        StringBuilder lines = new StringBuilder("""
                {"deed":"cage-added","cage":"Z1","wall":"North wall","row":3,"column":6,"use":"breeding","by":"Ines"}
                {"deed":"bird-added","bird":"Z 1","sex":"cock","cage":"Z1","by":"Ines"}
                {"deed":"bird-added","bird":"Z 2","sex":"hen","cage":"Z1","by":"Ines"}
                {"deed":"paired-up","cage":"Z1","cock":"Z 1","hen":"Z 2","on":"2026-01-20","by":"Ines"}
                {"deed":"box-on","cage":"Z1","on":"2026-01-22","by":"Ines"}
                """);
        for (int egg = 0; egg < 5; egg++) {
            lines.append(at("Z1", 52 - 2 * egg, "egg-laid", ""));
        }
        for (int egg = 1; egg <= 4; egg++) {
            lines.append(at("Z1", 33 - 2 * (egg - 1), "chick-hatched", "\"mark\":\"" + egg + "\""));
        }
        lines.append(at("Z1", 40, "egg-candled", "\"mark\":\"5\",\"finding\":\"clear\""))
                .append(at("Z1", 25, "chick-ringed", "\"mark\":\"1\",\"ring\":\"HB 26-090\""))
                .append(at("Z1", 1, "chick-left-box", "\"mark\":\"1\""))
                .append(at("Z1", 5, "round-begun", ""));
        for (int days = 5; days > 0; days -= 2) {
            lines.append(at("Z1", days, "egg-laid", ""));
        }
        lines.append(at("Z1", 1, "dummies", "\"count\":1"));
        room.tell(lines.toString().strip());
    }
}
