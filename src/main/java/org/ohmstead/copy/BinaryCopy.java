package org.ohmstead.copy;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.BiConsumer;
import org.postgresql.copy.CopyIn;
import org.postgresql.copy.CopyManager;
import org.postgresql.core.BaseConnection;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;

/** Sends rows by binary COPY, in the transaction that is under way; the table's constraints hold as for any insert. */
public final class BinaryCopy {

    private static final byte[] SIGNATURE = "PGCOPY\n\377\r\n\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int FLUSH_BYTES = 1 << 16;
    private static final int NO_MORE_ROWS = -1;

    private BinaryCopy() {}

    /**
     * @param into the table and, in brackets, its columns
     * @param row writes one row: the number of its columns as a short, then field by field
     */
    public static <T> void write(JdbcTemplate jdbc, String into, Iterable<T> values, BiConsumer<T, WireBuffer> row) {
        ConnectionCallback<Boolean> sending = connection -> {
            send(connection, "copy " + into + " from stdin (format binary)", values, row);
            return true;
        };
        jdbc.execute(sending);
    }

    private static <T> void send(
            Connection connection, String statement, Iterable<T> values, BiConsumer<T, WireBuffer> row)
            throws SQLException {
        CopyIn copy = new CopyManager(connection.unwrap(BaseConnection.class)).copyIn(statement);
        try {
            WireBuffer out = header();
            for (T value : values) {
                row.accept(value, out);
                flushWhenFull(copy, out);
            }
            out.putShort(NO_MORE_ROWS);
            copy.writeToCopy(out.bytes(), 0, out.length());
            copy.endCopy();
        } finally {
            if (copy.isActive()) {
                copy.cancelCopy();
            }
        }
    }

    private static WireBuffer header() {
        WireBuffer out = new WireBuffer();
        out.putBytes(SIGNATURE);
        out.putInt(0);
        out.putInt(0);
        return out;
    }

    private static void flushWhenFull(CopyIn copy, WireBuffer out) throws SQLException {
        if (out.length() >= FLUSH_BYTES) {
            copy.writeToCopy(out.bytes(), 0, out.length());
            out.clear();
        }
    }
}
