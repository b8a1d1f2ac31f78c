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
import org.cagewall.room.Sitting;
import org.jdbi.v3.core.Handle;

/** Reads the eggs of pairs that the room no longer holds, in one question. Bound to the handle's thread. */
final class PastReader {

    /** By pair, round and mark. */
    static final Comparator<PastEgg> IN_ORDER = Comparator.comparingLong(PastEgg::pair)
            .thenComparingLong(PastEgg::round)
            .thenComparing(egg -> egg.mark().length())
            .thenComparing(PastEgg::mark);

    private static final String EGGS = """
            SELECT e.pair, e.round, e.mark, b.species, COALESCE(e.laid, e.day), e.about, COALESCE(h.hatched, h.day),
              h.about,
              s.day,
              (SELECT COUNT(*) FROM nest_move m WHERE m.round = e.round AND m.mark = e.mark),
              (SELECT MIN(g.day) FROM ringing g WHERE g.round = e.round AND g.mark = e.mark AND NOT g.about),
              (SELECT MIN(t.day) FROM box_trip t WHERE t.round = e.round AND t.mark = e.mark AND t.outside
                AND NOT EXISTS (SELECT 1 FROM box_trip u WHERE u.round = t.round AND u.mark = t.mark AND u.outside
                  AND u.about)),
              (SELECT MIN(w.day) FROM weaning w WHERE w.round = e.round AND w.mark = e.mark AND NOT w.about),
              (SELECT COUNT(*) FROM pip i WHERE i.round = e.round AND i.mark = e.mark)
                + (SELECT COUNT(*) FROM removal r WHERE r.round = e.round AND r.mark = e.mark
                    AND r.why = 'DEAD_IN_SHELL')
                + (SELECT COUNT(*) FROM candling c WHERE c.round = e.round AND c.mark = e.mark AND c.finding = 'FULL'
                    AND NOT EXISTS (SELECT 1 FROM candling d WHERE d.round = c.round AND d.mark = c.mark
                      AND (d.day > c.day OR d.day = c.day AND d.entry > c.entry))),
              p.cage, p.day, p.about, s.about
            FROM egg e JOIN pairing p ON p.entry = e.pair JOIN bird b ON b.entry = p.hen
              LEFT JOIN hatching h ON h.round = e.round AND h.mark = e.mark
              LEFT JOIN sitting s ON s.round = e.round AND NOT EXISTS (SELECT 1 FROM sitting v WHERE v.round = s.round
                AND (v.day > s.day OR v.day = s.day AND v.entry > s.entry))""";

    private final Handle handle;

    PastReader(Handle handle) {
        this.handle = handle;
    }

    /** The eggs of all pairs but these. */
    List<PastEgg> eggsBut(Set<Long> held) {
        return KeptStatements.lend(handle, EGGS, statement -> {
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

    private static PastEgg egg(ResultSet rows) throws SQLException {
        Optional<LocalDate> hatched = date(rows, 7);
        boolean pairingGuessed = rows.getBoolean(17);
        boolean sittingGuessed = rows.getBoolean(18);
        return new PastEgg(
                rows.getLong(1),
                rows.getLong(15),
                pairingGuessed ? Optional.empty() : date(rows, 16),
                rows.getLong(2),
                rows.getString(3),
                Optional.ofNullable(rows.getString(4)),
                date(rows, 5).orElseThrow(),
                rows.getBoolean(6) || hatched.isPresent() && rows.getBoolean(8),
                rows.getInt(10) > 0,
                date(rows, 9).map(day -> new Sitting(day, sittingGuessed)),
                hatched.isPresent() || rows.getInt(14) > 0,
                hatched,
                date(rows, 11),
                date(rows, 12),
                date(rows, 13));
    }

    private static Optional<LocalDate> date(ResultSet rows, int column) throws SQLException {
        return Optional.ofNullable(rows.getString(column)).map(LocalDate::parse);
    }
}
