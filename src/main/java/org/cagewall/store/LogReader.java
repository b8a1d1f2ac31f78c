package org.cagewall.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.VisitDeed;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Message;

/** Reads entries of the record for people. Bound to the session's thread. */
final class LogReader {

    private static final String SELECT = "SELECT e.number, e.touch, e.recorded, e.person, e.day, e.line,"
            + " s.entry, s.why, (SELECT t.person FROM entry t WHERE t.number = s.entry),"
            + " CASE WHEN EXISTS (SELECT 1 FROM seen r WHERE r.seen = e.number) THEN 1 ELSE 0 END"
            + " FROM entry e LEFT JOIN strike s ON s.struck = e.number";

    private final Session session;

    LogReader(Session session) {
        this.session = session;
    }

    Optional<LogEntry> entry(long number) {
        return withCages(entries(SELECT + " WHERE e.number = ?", List.of(number), 1)).stream()
                .findFirst();
    }

    List<LogEntry> touch(long first) {
        return withCages(entries(SELECT + " WHERE e.touch = ?", List.of(first), Integer.MAX_VALUE));
    }

    List<LogEntry> read(LogQuery query) {
        List<String> conditions = new ArrayList<>();
        List<Object> args = new ArrayList<>();
        query.cage().ifPresent(id -> {
            conditions.add(mentions("CAGE"));
            args.add(id);
        });
        query.bird().ifPresent(id -> {
            conditions.add(mentions("BIRD"));
            args.add(id);
        });
        query.from().ifPresent(day -> {
            conditions.add("e.day >= ?");
            args.add(day);
        });
        query.to().ifPresent(day -> {
            conditions.add("e.day <= ?");
            args.add(day);
        });
        String where = conditions.isEmpty() ? "" : " WHERE " + String.join(" AND ", conditions);
        return withCages(entries(SELECT + where + " ORDER BY e.day DESC, e.number DESC", args, query.most()));
    }

    private static String mentions(String kind) {
        return "EXISTS (SELECT 1 FROM mention m WHERE m.kind = '" + kind + "' AND m.id = ? AND m.entry = e.number)";
    }

    private List<LogEntry> entries(String sql, List<Object> args, int most) {
        String bounded = most == Integer.MAX_VALUE ? sql : sql + " FETCH FIRST " + most + " ROWS ONLY";
        return session.select(bounded, LogReader::entry, args.toArray());
    }

    private static LogEntry entry(ResultSet rows) throws SQLException {
        LocalDate day = LocalDate.parse(rows.getString(5));
        String text = rows.getString(6);
        Line line = understood(text, day);
        Said said = said(line.deed());
        long struckBy = rows.getLong(7);
        return new LogEntry(
                rows.getLong(1),
                rows.getLong(2),
                Instant.parse(rows.getString(3)),
                day,
                line.told().at(),
                rows.getString(4),
                line.deed().deed(),
                List.of(),
                line.deed().words(),
                said.answer(),
                said.how(),
                said.part(),
                said.task(),
                line.told().note(),
                struckBy == 0
                        ? Optional.empty()
                        : Optional.of(new LogEntry.Strike(struckBy, rows.getString(9), rows.getString(8))),
                rows.getInt(10) == 1,
                text);
    }

    /** What a deed of the daily round says of itself. */
    private record Said(Optional<Answer> answer, Optional<How> how, Optional<DayPart> part, Optional<String> task) {

        static final Said NOTHING = new Said(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Said said(Deed deed) {
        if (deed instanceof VisitDeed.Check check) {
            return new Said(Optional.of(check.answer()), Optional.of(check.how()), check.when(), Optional.empty());
        }
        if (deed instanceof VisitDeed.RowChecked row) {
            return new Said(Optional.of(Answer.WELL), Optional.of(How.HAND), row.when(), Optional.empty());
        }
        if (deed instanceof VisitDeed.TaskDone done) {
            return new Said(Optional.empty(), done.how(), Optional.empty(), Optional.of(done.task()));
        }
        if (deed instanceof VisitDeed.TaskNotDone undone) {
            return new Said(Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(undone.task()));
        }
        return Said.NOTHING;
    }

    private static Line understood(String text, LocalDate day) {
        if (Lines.read(text, day) instanceof Lines.Understood understood) {
            return understood.line();
        }
        throw new StoreProblem(Message.of("store.unread-line"));
    }

    private List<LogEntry> withCages(List<LogEntry> entries) {
        if (entries.isEmpty()) {
            return entries;
        }
        long lowest = entries.stream().mapToLong(LogEntry::number).min().orElseThrow();
        long highest = entries.stream().mapToLong(LogEntry::number).max().orElseThrow();
        Map<Long, List<Long>> cages = session
                .select(
                        "SELECT entry, id FROM mention WHERE kind = 'CAGE' AND entry BETWEEN ? AND ? ORDER BY entry, id",
                        rows -> new long[] {rows.getLong(1), rows.getLong(2)},
                        lowest,
                        highest)
                .stream()
                .collect(Collectors.groupingBy(row -> row[0], Collectors.mapping(row -> row[1], Collectors.toList())));
        return entries.stream()
                .map(entry -> entry.at(cages.getOrDefault(entry.number(), List.of())))
                .toList();
    }
}
