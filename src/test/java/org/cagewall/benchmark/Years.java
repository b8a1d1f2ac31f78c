package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Outcome;
import org.cagewall.desk.TestDesk;

/** Makes a birdroom of two dozen nests, young or with many seasons and daily checks behind it. On the caller's thread. */
final class Years {

    static final int CAGES = 24;

    /** Two seasons a year, thirteen years. */
    private static final int SEASONS = 26;

    private static final int CHICKS = 5;
    private static final int LINES_A_TOUCH = 400;

    private final Desk desk;
    private final List<Line> waiting = new ArrayList<>();

    private Years(Desk desk) {
        this.desk = desk;
    }

    /** A room with at least so many entries, filled up with checks. */
    static Desk young(Path folder, int entries) {
        Years years = new Years(TestDesk.empty(folder));
        years.room();
        years.nests();
        years.checks(entries);
        return years.desk;
    }

    static Desk old(Path folder, int entries) {
        Years years = new Years(TestDesk.empty(folder));
        years.room();
        for (int season = SEASONS; season > 0; season--) {
            for (int cage = 1; cage <= CAGES; cage++) {
                years.season(cage, season, TestDesk.TODAY.minusDays(120 + season * 180L));
            }
        }
        years.nests();
        years.checks(entries);
        return years.desk;
    }

    static String cage(int number) {
        return "B" + number;
    }

    private void room() {
        LocalDate begun = TestDesk.TODAY.minusYears(16);
        tell(begun, "'deed':'person-added','person':'Ines','role':'owner'");
        tell(begun, "'deed':'wall-added','wall':'North','rows':3,'columns':9");
        for (int i = 0; i < CAGES; i++) {
            tell(
                    begun,
                    "'deed':'cage-added','cage':'%s','wall':'North','row':%d,'column':%d,'use':'breeding'"
                            .formatted(cage(i + 1), 1 + i / 8, 1 + i % 8));
        }
        tell(begun, "'deed':'cage-added','cage':'F1','wall':'North','row':1,'column':9,'use':'flight'");
        record();
    }

    private void pair(int cage, String name, LocalDate paired) {
        tell(paired, "'deed':'bird-added','bird':'C %s','sex':'cock','cage':'F1'".formatted(name));
        tell(paired, "'deed':'bird-added','bird':'H %s','sex':'hen','cage':'F1'".formatted(name));
        tell(paired, "'deed':'paired-up','cage':'%s','cock':'C %s','hen':'H %s'".formatted(cage(cage), name, name));
        tell(paired, "'deed':'box-on','cage':'%s'".formatted(cage(cage)));
    }

    private void season(int cage, int season, LocalDate paired) {
        String name = season + "-" + cage;
        pair(cage, name, paired);
        for (int egg = 1; egg <= CHICKS + 1; egg++) {
            of(cage, "egg-laid", egg, "", paired.plusDays(8 + 2 * egg));
        }
        for (int egg = 1; egg <= CHICKS + 1; egg++) {
            of(
                    cage,
                    "egg-candled",
                    egg,
                    ",'finding':'%s'".formatted(egg > CHICKS ? "clear" : "full"),
                    paired.plusDays(24));
        }
        of(cage, "egg-removed", CHICKS + 1, ",'why':'clear'", paired.plusDays(32));
        for (int chick = 1; chick <= CHICKS; chick++) {
            LocalDate hatched = paired.plusDays(28 + 2 * chick);
            String ring = "R " + season + "-" + cage + "-" + chick;
            of(cage, "chick-hatched", chick, "", hatched);
            of(cage, "chick-ringed", chick, ",'ring':'%s'".formatted(ring), hatched.plusDays(7));
            of(cage, "chick-left-box", chick, "", hatched.plusDays(32));
            of(cage, "chick-weaned", chick, ",'to':'F1'", hatched.plusDays(42));
            left(ring, hatched.plusDays(60));
        }
        tell(paired.plusDays(90), "'deed':'box-off','cage':'%s'".formatted(cage(cage)));
        left("C " + name, paired.plusDays(95));
        left("H " + name, paired.plusDays(95));
        record();
    }

    private void left(String bird, LocalDate day) {
        tell(day, "'deed':'bird-left','bird':'%s','how':'sold'".formatted(bird));
    }

    /** Every cage has a nest of five eggs now, about ten days old. */
    private void nests() {
        for (int cage = 1; cage <= CAGES; cage++) {
            pair(cage, "now-" + cage, TestDesk.TODAY.minusDays(30));
            for (int egg = 1; egg <= CHICKS; egg++) {
                of(cage, "egg-laid", egg, "", TestDesk.TODAY.minusDays(20 - 2 * egg));
            }
        }
        record();
    }

    private void checks(int entries) {
        long missing = entries - desk.room().head();
        for (int i = 0; i < missing; i++) {
            tell(
                    TestDesk.TODAY.minusDays(3 + i / CAGES),
                    "'deed':'check','cage':'%s','answer':'well','how':'hand'".formatted(cage(1 + i % CAGES)));
            if (waiting.size() >= LINES_A_TOUCH) {
                record();
            }
        }
        record();
    }

    private void of(int cage, String deed, int mark, String more, LocalDate day) {
        tell(day, "'deed':'%s','cage':'%s','mark':'%d'%s".formatted(deed, cage(cage), mark, more));
    }

    private void tell(LocalDate day, String fields) {
        String by = fields.contains("'person-added'") ? "" : ",'by':'Ines'";
        String text = ("{" + fields + ",'on':'" + day + "'" + by + ",'sure':true}").replace('\'', '"');
        Lines.Read read = Lines.read(text, TestDesk.TODAY);
        assertThat(read).as(text).isInstanceOf(Lines.Understood.class);
        waiting.add(((Lines.Understood) read).line());
    }

    private void record() {
        List<Line> touch = List.copyOf(waiting);
        waiting.clear();
        if (!touch.isEmpty()) {
            desk.record(
                    touch, outcome -> assertThat(outcome).as("%s", touch.get(0)).isInstanceOf(Outcome.Done.class));
        }
    }
}
