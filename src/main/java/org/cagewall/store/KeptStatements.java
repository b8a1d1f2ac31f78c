package org.cagewall.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HashMap;
import java.util.Map;
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

    @Override
    public void close(Connection connection) {
        idle.clear();
    }
}
