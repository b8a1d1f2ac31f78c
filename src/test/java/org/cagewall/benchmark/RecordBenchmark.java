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
import org.cagewall.deed.Line;
import org.cagewall.deed.Told;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Outcome;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.Answer;
import org.cagewall.room.DayPart;
import org.cagewall.room.How;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a check costs from touch to disk, in a birdroom with a year behind it or only days. */
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
                Told.on(desk.today(), "Tomas").at(desk.time()));
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
