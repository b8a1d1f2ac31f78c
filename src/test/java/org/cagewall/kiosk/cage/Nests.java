package org.cagewall.kiosk.cage;

import java.nio.file.Path;
import java.time.LocalDate;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Sheets;
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
        Destination.Cage here = Destination.Cage.byHand(cage);
        return room.painted(
                size,
                person,
                here,
                (pen, stage) -> new CageScreen(
                        room.desk(), pen, stage, new Sheets(stage, Birdroom.WORDS), stage, Birdroom.WORDS, here));
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
}
