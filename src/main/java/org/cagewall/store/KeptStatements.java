package org.cagewall.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.ConnectionException;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.DefaultStatementBuilder;
import org.jdbi.v3.core.statement.StatementContext;

/** Keeps the prepared statements of a connection, so that the same question is not compiled twice. Bound to the
 * connection's thread. */
final class KeptStatements extends DefaultStatementBuilder {

    private final Map<String, PreparedStatement> idle = new HashMap<>();

    @Override
    public PreparedStatement create(Connection connection, String sql, StatementContext context) throws SQLException {
        PreparedStatement kept = idle.remove(sql);
        return kept == null ? super.create(connection, sql, context) : kept;
    }

    @Override
    public void close(Connection connection, String sql, Statement statement) throws SQLException {
        boolean keeps = statement instanceof PreparedStatement prepared && idle.putIfAbsent(sql, prepared) == null;
        if (!keeps) {
            super.close(connection, sql, statement);
        }
    }

    /**
     * Lends a prepared statement without the parsing of names and the registers of mappers that stand before others: for
     * what is asked many times in every touch.
     */
    static <T> T lend(Handle handle, String sql, Use<T> use) {
        KeptStatements kept = (KeptStatements) handle.getStatementBuilder();
        try {
            PreparedStatement statement = kept.idle.remove(sql);
            if (statement == null) {
                statement = handle.getConnection().prepareStatement(sql);
            }
            try {
                return use.of(statement);
            } finally {
                kept.close(handle.getConnection(), sql, statement);
            }
        } catch (SQLException e) {
            throw new ConnectionException(e);
        }
    }

    /** Writes by a statement whose places are filled with these values. */
    static int write(Handle handle, String sql, Object... values) {
        return lend(handle, sql, statement -> {
            fill(statement, values);
            return statement.executeUpdate();
        });
    }

    /** The numbers in the first column, in the order in which they come. */
    static List<Long> numbers(Handle handle, String sql, Object... values) {
        return lend(handle, sql, statement -> {
            fill(statement, values);
            List<Long> numbers = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    numbers.add(rows.getLong(1));
                }
            }
            return numbers;
        });
    }

    /** The texts in the first column. */
    static List<String> texts(Handle handle, String sql, Object... values) {
        return lend(handle, sql, statement -> {
            fill(statement, values);
            List<String> texts = new ArrayList<>();
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    texts.add(rows.getString(1));
                }
            }
            return texts;
        });
    }

    static void fill(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            Columns.fill(statement, i + 1, values[i]);
        }
    }

    /** What is done with a statement while it is lent. */
    interface Use<T> {
        T of(PreparedStatement statement) throws SQLException;
    }

    @Override
    public void close(Connection connection) {
        idle.clear();
    }
}
