package org.cagewall.store;

import java.sql.SQLException;

/** What Derby said no to; its cause tells the state. Never leaves the store as an answer to a person. Immutable; any thread. */
final class SqlProblem extends RuntimeException {

    private static final long serialVersionUID = 1;

    SqlProblem(SQLException cause) {
        super(cause);
    }
}
