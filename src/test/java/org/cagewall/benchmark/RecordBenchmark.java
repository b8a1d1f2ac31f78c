package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.EggDeed;
import org.cagewall.deed.Line;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Outcome;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.nest.EggFinding;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What an entry costs from touch to disk, in a birdroom with only days behind it or many years. */
@Tag("benchmark")
class RecordBenchmark {

    private static final int CHECKS = 60;

    @TempDir
    Path folder;

    @Test
    void aRecordedCheckAgainstOneRowCommitted() throws SQLException {
        String bare = "jdbc:derby:" + folder.resolve("bare");
        make(bare);
        try (Desk desk = TestDesk.demo(folder.resolve("room"));
                Connection connection = DriverManager.getConnection(bare)) {
            connection.setAutoCommit(false);
            List<String> cages = desk.room().walk().map(cage -> cage.name()).toList();
            int[] rows = {0};
            try (PreparedStatement insert = connection.prepareStatement("INSERT INTO bare VALUES (?, ?)")) {
                Race.run(
                        "a recorded check",
                        5,
                        20,
                        Race.of(CHECKS, i -> check(desk, cages.get(i % cages.size()))),
                        Race.of(CHECKS, i -> commitOneRow(connection, insert, rows[0]++)));
            }
            assertThat(desk.room().visits()).hasSizeGreaterThan(CHECKS);
        }
    }

    /** At least 0.8 times as many entries a second, so at most 1.25 times as long for each. */
    @Test
    void anEntryAfterManyYearsAgainstOneAfterDays() {
        try (Desk young = Years.young(folder.resolve("young"), 600);
                Desk old = Years.old(folder.resolve("old"), 150_000)) {
            assertThat(old.room().head()).isGreaterThanOrEqualTo(150_000);
            assertThat(old.room().past()).hasSizeGreaterThan(3_000);
            Race.run(
                    "a check after 150,000 entries",
                    1.25,
                    10,
                    Race.of(CHECKS, i -> check(old, Years.cage(1 + i % Years.CAGES))),
                    Race.of(CHECKS, i -> check(young, Years.cage(1 + i % Years.CAGES))));
            Race.run(
                    "an egg candled after 150,000 entries",
                    1.25,
                    10,
                    Race.of(CHECKS, i -> candle(old, i)),
                    Race.of(CHECKS, i -> candle(young, i)));
        }
    }

    private static void candle(Desk desk, int i) {
        String mark = String.valueOf(1 + i / Years.CAGES % 5);
        Line line = new Line(
                new EggDeed.EggCandled(Years.cage(1 + i % Years.CAGES), mark, Optional.empty(), EggFinding.UNSURE),
                Circumstances.on(desk.today(), "Ines").at(desk.time()));
        desk.record(line, outcome -> assertThat(outcome).isInstanceOf(Outcome.Done.class));
    }

    /** The bare database is made and opened again, as the record was. */
    private static void make(String bare) throws SQLException {
        try (Connection connection = DriverManager.getConnection(bare + ";create=true")) {
            connection.createStatement().execute("CREATE TABLE bare (n INT PRIMARY KEY, words VARCHAR(200))");
        }
        assertThatThrownBy(() -> DriverManager.getConnection(bare + ";shutdown=true"))
                .isInstanceOf(SQLException.class);
    }

    private static void check(Desk desk, String cage) {
        Line line = new Line(
                new VisitDeed.Check(cage, Answer.WELL, How.SCAN, Optional.of(DayPart.MORNING), Optional.empty()),
                Circumstances.on(desk.today(), "Ines").at(desk.time()));
        desk.record(line, outcome -> assertThat(outcome).isInstanceOf(Outcome.Done.class));
    }

    private static void commitOneRow(Connection connection, PreparedStatement insert, int n) {
        try {
            insert.setInt(1, n);
            insert.setString(2, "{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"well\",\"how\":\"scan\"}");
            insert.executeUpdate();
            connection.commit();
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }
}
