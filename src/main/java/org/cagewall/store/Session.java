package org.cagewall.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * A connection to the database: the one way by which the store says SQL. It keeps its prepared statements, so that the
 * same question is not compiled twice. Bound to one thread.
 */
final class Session implements AutoCloseable {

    private final Connection connection;
    private final Map<String, PreparedStatement> idle = new HashMap<>();

    private Session(Connection connection) {
        this.connection = connection;
    }

    /**
     * Opens one on the database of that address.
     *
     * @throws SqlProblem when Derby does not let it in
     */
    static Session open(String url) {
        try {
            return new Session(Database.connect(url));
        } catch (SQLException e) {
            throw new SqlProblem(e);
        }
    }

    /** Opens one for this use alone. */
    static void use(String url, Consumer<Session> use) {
        try (Session session = open(url)) {
            use.accept(session);
        }
    }

    /**
     * Does all of it or nothing.
     *
     * @throws SqlProblem when it cannot be kept; what the use throws goes on as it is
     */
    <T> T inTransaction(Function<Session, T> use) {
        try {
            connection.setAutoCommit(false);
        } catch (SQLException e) {
            throw new SqlProblem(e);
        }
        T result;
        try {
            result = use.apply(this);
            connection.commit();
        } catch (SQLException e) {
            SqlProblem problem = new SqlProblem(e);
            Endings.after(problem, this::rollBack);
            throw problem;
        } catch (RuntimeException | Error e) {
            Endings.after(e, this::rollBack);
            throw e;
        }
        endTransaction();
        return result;
    }

    private void rollBack() {
        try {
            connection.rollback();
        } catch (SQLException e) {
            throw new SqlProblem(e);
        }
        endTransaction();
    }

    private void endTransaction() {
        try {
            connection.setAutoCommit(true);
        } catch (SQLException e) {
            throw new SqlProblem(e);
        }
    }

    /**
     * Lends the prepared statement of this SQL.
     *
     * @throws SqlProblem when Derby refuses it
     */
    <T> T lend(String sql, Use<T> use) {
        PreparedStatement kept = idle.remove(sql);
        try {
            PreparedStatement statement = kept == null ? connection.prepareStatement(sql) : kept;
            try {
                return use.of(statement);
            } finally {
                giveBack(sql, statement);
            }
        } catch (SQLException e) {
            throw new SqlProblem(e);
        }
    }

    private void giveBack(String sql, PreparedStatement statement) throws SQLException {
        if (idle.putIfAbsent(sql, statement) != null) {
            statement.close();
        }
    }

    /** Writes by a statement whose places are filled with these values; the number of rows that it touched. */
    int write(String sql, Object... values) {
        return lend(sql, statement -> {
            fill(statement, values);
            return statement.executeUpdate();
        });
    }

    /** What each row says, in the order in which they come. */
    <T> List<T> select(String sql, RowReader<T> reader, Object... values) {
        List<T> all = new ArrayList<>();
        each(sql, rows -> all.add(reader.read(rows)), values);
        return all;
    }

    /** Hands out each row as it comes, so that not all of them need to be held at once. */
    void each(String sql, RowUse use, Object... values) {
        lend(sql, statement -> {
            fill(statement, values);
            try (ResultSet rows = statement.executeQuery()) {
                while (rows.next()) {
                    use.of(rows);
                }
            }
            return statement;
        });
    }

    /** The numbers in the first column, in the order in which they come. */
    List<Long> numbers(String sql, Object... values) {
        return select(sql, rows -> rows.getLong(1), values);
    }

    /** The texts in the first column. */
    List<String> texts(String sql, Object... values) {
        return select(sql, rows -> rows.getString(1), values);
    }

    static void fill(PreparedStatement statement, Object... values) throws SQLException {
        for (int i = 0; i < values.length; i++) {
            Columns.fill(statement, i + 1, values[i]);
        }
    }

    /** Closes the connection, and with it every statement. */
    @Override
    public void close() {
        idle.clear();
        try {
            connection.close();
        } catch (SQLException e) {
            throw new SqlProblem(e);
        }
    }

    /** What is done with a statement while it is lent. */
    interface Use<T> {
        T of(PreparedStatement statement) throws SQLException;
    }

    /** Reads the row that has been reached. */
    interface RowReader<T> {
        T read(ResultSet rows) throws SQLException;
    }

    /** Does something with the row that has been reached. */
    interface RowUse {
        void of(ResultSet rows) throws SQLException;
    }
}
