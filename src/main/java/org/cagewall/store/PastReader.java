package org.cagewall.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.PastEgg;
import org.cagewall.room.nest.ToldDay;

/** Reads the eggs of pairs that the room no longer holds, of all or of one in one question. Bound to the session's thread. */
final class PastReader {

    /** By pair, round and mark. */
    static final Comparator<PastEgg> IN_ORDER = Comparator.comparingLong(PastEgg::pair)
            .thenComparingLong(PastEgg::round)
            .thenComparing(egg -> egg.mark().length())
            .thenComparing(PastEgg::mark);

    private static final String EGGS = """
            SELECT e.pair, p.cage, p.day, p.about, e.round, e.mark, b.species, COALESCE(e.laid, e.day), e.about,
              (SELECT COUNT(*) FROM nest_move m WHERE m.round = e.round AND m.mark = e.mark),
              s.day, s.about,
              (SELECT COUNT(*) FROM pip i WHERE i.round = e.round AND i.mark = e.mark)
                + (SELECT COUNT(*) FROM removal r WHERE r.round = e.round AND r.mark = e.mark
                    AND r.why = 'DEAD_IN_SHELL')
                + (SELECT COUNT(*) FROM candling c WHERE c.round = e.round AND c.mark = e.mark AND c.finding = 'FULL'
                    AND NOT EXISTS (SELECT 1 FROM candling d WHERE d.round = c.round AND d.mark = c.mark
                      AND (d.day > c.day OR d.day = c.day AND d.entry > c.entry))),
              COALESCE(h.hatched, h.day), h.about, g.day, g.about,
              (SELECT MIN(t.day) FROM box_trip t WHERE t.round = e.round AND t.mark = e.mark AND t.outside),
              (SELECT COUNT(*) FROM box_trip u WHERE u.round = e.round AND u.mark = e.mark AND u.outside AND u.about),
              w.day, w.about
            FROM egg e JOIN pairing p ON p.entry = e.pair JOIN bird b ON b.entry = p.hen
              LEFT JOIN sitting s ON s.round = e.round AND NOT EXISTS (SELECT 1 FROM sitting v WHERE v.round = s.round
                AND (v.day > s.day OR v.day = s.day AND v.entry > s.entry))
              LEFT JOIN hatching h ON h.round = e.round AND h.mark = e.mark
              LEFT JOIN ringing g ON g.round = e.round AND g.mark = e.mark
              LEFT JOIN weaning w ON w.round = e.round AND w.mark = e.mark""";

    private static final String EGGS_OF_PAIR = EGGS + " WHERE e.pair = ?";

    private final Session session;

    PastReader(Session session) {
        this.session = session;
    }

    /** The eggs of all pairs but these. */
    List<PastEgg> eggsBut(Set<Long> held) {
        return session.lend(EGGS, statement -> {
            List<PastEgg> eggs = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    if (!held.contains(rows.getLong(1))) {
                        eggs.add(egg(rows));
                    }
                }
            }
            eggs.sort(IN_ORDER);
            return eggs;
        });
    }

    /** The eggs of one pair, in no order. */
    List<PastEgg> eggsOf(long pair) {
        return session.lend(EGGS_OF_PAIR, statement -> {
            Session.fill(statement, pair);
            List<PastEgg> eggs = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    eggs.add(egg(rows));
                }
            }
            return eggs;
        });
    }

    private static PastEgg egg(ResultSet rows) throws SQLException {
        Optional<ToldDay> paired = told(rows, 3);
        Optional<ToldDay> hatched = told(rows, 14);
        return new PastEgg(
                rows.getLong(1),
                rows.getLong(2),
                paired.flatMap(ToldDay::known),
                rows.getLong(5),
                rows.getString(6),
                Optional.ofNullable(rows.getString(7)),
                day(rows, 8).orElseThrow(),
                rows.getBoolean(9) || hatched.filter(ToldDay::about).isPresent(),
                rows.getInt(10) > 0,
                told(rows, 11),
                hatched.isPresent() || rows.getInt(13) > 0,
                hatched.map(ToldDay::day),
                told(rows, 16),
                told(rows, 18),
                told(rows, 20));
    }

    /** A day, and in the column after it whether that is a guess. */
    private static Optional<ToldDay> told(ResultSet rows, int column) throws SQLException {
        Optional<LocalDate> day = day(rows, column);
        return day.isPresent() ? Optional.of(new ToldDay(day.get(), rows.getBoolean(column + 1))) : Optional.empty();
    }

    private static Optional<LocalDate> day(ResultSet rows, int column) throws SQLException {
        return Optional.ofNullable(rows.getString(column)).map(LocalDate::parse);
    }
}
