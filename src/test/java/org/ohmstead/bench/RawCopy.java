package org.ohmstead.bench;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.postgresql.copy.CopyIn;
import org.postgresql.copy.CopyManager;
import org.postgresql.copy.CopyOut;
import org.postgresql.core.BaseConnection;

/** The floor of bulk loading: the same rows, ready in memory in PostgreSQL's own binary form, sent by COPY. */
final class RawCopy {

    private final DataSource dataSource;
    private final List<byte[]> rows = new ArrayList<>();

    RawCopy(DataSource dataSource) {
        this.dataSource = dataSource;
    }

    /** Takes the rows of the query out of the database, with COPY's header and trailer. */
    void take(String query) throws SQLException {
        rows.clear();
        try (Connection connection = dataSource.getConnection()) {
            CopyOut out = manager(connection).copyOut("copy (" + query + ") to stdout (format binary)");
            for (byte[] row = out.readFromCopy(); row != null; row = out.readFromCopy()) {
                rows.add(row);
            }
        }
    }

    /** Sends them into a table that is made for it, and waits for the commit. */
    double seconds(String tableDefinition) throws SQLException {
        try (Connection connection = dataSource.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("drop table if exists bench_copy");
            statement.execute(tableDefinition);
            double seconds = Stopwatch.seconds(() -> send(connection));
            statement.execute("drop table bench_copy");
            return seconds;
        }
    }

    private void send(Connection connection) throws SQLException {
        CopyIn copy = manager(connection).copyIn("copy bench_copy from stdin (format binary)");
        for (byte[] row : rows) {
            copy.writeToCopy(row, 0, row.length);
        }
        copy.endCopy();
    }

    private static CopyManager manager(Connection connection) throws SQLException {
        return new CopyManager(connection.unwrap(BaseConnection.class));
    }
}
