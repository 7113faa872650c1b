package org.ohmstead.ledger;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.ohmstead.access.Access;
import org.postgresql.copy.CopyIn;
import org.postgresql.copy.CopyManager;
import org.postgresql.core.BaseConnection;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Writes surveys straight into their table by binary COPY; the table's constraints hold as for any insert. */
@Component
class SurveyCopy {

    private static final String COPY = "copy survey (" + SurveyWire.COLUMNS + ") from stdin (format binary)";
    private static final byte[] SIGNATURE = "PGCOPY\n\377\r\n\0".getBytes(StandardCharsets.ISO_8859_1);
    private static final int FLUSH_BYTES = 1 << 16;
    /** Names the lock under which bulk loads queue: "ledger" in letters of a telephone's keys. */
    private static final long BULK_LOCK = 533437L;

    private final JdbcTemplate jdbc;
    private final SurveyReader reader;
    private final Access access;
    private final Clock clock;

    SurveyCopy(JdbcTemplate jdbc, SurveyReader reader, Access access, Clock clock) {
        this.jdbc = jdbc;
        this.reader = reader;
        this.access = access;
        this.clock = clock;
    }

    /** One load at a time: two loads of the same history would not see each other's rows. */
    void waitForOtherLoads() {
        jdbc.query("select pg_advisory_xact_lock(?)", row -> {}, BULK_LOCK);
    }

    List<SurveyRecord> recorded(List<NewSurvey> batch) {
        return reader.recordedAt(batch.stream().map(NewSurvey::facts).toList());
    }

    void write(List<NewSurvey> surveys) {
        if (surveys.isEmpty()) {
            return;
        }
        String by = access.current().username();
        jdbc.execute((Connection connection) -> {
            write(connection, surveys, clock.instant(), by);
            return true;
        });
    }

    private static void write(Connection connection, List<NewSurvey> surveys, Instant recordedAt, String by)
            throws SQLException {
        CopyIn copy = new CopyManager(connection.unwrap(BaseConnection.class)).copyIn(COPY);
        try {
            WireBuffer out = header();
            for (NewSurvey survey : surveys) {
                SurveyWire.row(survey, recordedAt, by, out);
                flushWhenFull(copy, out);
            }
            out.putShort(-1);
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
