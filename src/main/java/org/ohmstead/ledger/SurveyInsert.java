package org.ohmstead.ledger;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.ZoneOffset;
import org.jspecify.annotations.Nullable;

/** The statement that inserts one survey, and the binding of its parameters. */
final class SurveyInsert {

    static final String SQL = "insert into survey (" + SurveyWire.COLUMNS
            + ") values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) returning id";

    private SurveyInsert() {}

    static void bind(PreparedStatement statement, NewSurvey survey, Instant recordedAt, String recordedBy)
            throws SQLException {
        facts(statement, survey.facts());
        readings(statement, survey.readings());
        statement.setObject(24, recordedAt.atOffset(ZoneOffset.UTC));
        statement.setString(25, recordedBy);
        statement.setObject(26, survey.uploadId(), Types.OTHER);
        statement.setBytes(27, survey.rawSha256());
    }

    private static void facts(PreparedStatement statement, SurveyFacts facts) throws SQLException {
        statement.setLong(1, facts.stringId());
        statement.setObject(2, facts.takenAt().atOffset(ZoneOffset.UTC));
        statement.setObject(3, facts.takenOn());
        statement.setString(4, facts.takenBy());
        statement.setString(5, facts.instrument());
        statement.setObject(6, facts.calibrationDue(), Types.DATE);
        statement.setString(7, facts.ohmicKind().name());
        number(statement, 8, facts.ohmicHertz());
        number(statement, 9, facts.ambientCelsius());
        number(statement, 10, facts.stringVolts());
        number(statement, 11, facts.floatAmps());
        number(statement, 12, facts.rippleAmps());
        number(statement, 13, facts.rippleVolts());
        number(statement, 14, facts.injectedAmps());
        number(statement, 15, facts.clampedAmps());
        statement.setBoolean(16, facts.onFloat());
        statement.setString(17, facts.note());
    }

    private static void readings(PreparedStatement statement, Readings readings) throws SQLException {
        int width = readings.widestLink();
        Connection connection = statement.getConnection();
        statement.setArray(18, connection.createArrayOf("float4", RealArrays.boxed(readings.ohmic())));
        measured(statement, 19, readings.volts());
        measured(statement, 20, readings.celsius());
        measured(statement, 21, readings.gravity());
        statement.setInt(22, width);
        measured(statement, 23, Straps.flatten(readings.linkMicroohms(), width));
    }

    private static void measured(PreparedStatement statement, int index, double[] values) throws SQLException {
        if (RealArrays.isUnmeasured(values)) {
            statement.setNull(index, Types.ARRAY);
        } else {
            statement.setArray(index, statement.getConnection().createArrayOf("float4", RealArrays.boxed(values)));
        }
    }

    private static void number(PreparedStatement statement, int index, double value) throws SQLException {
        @Nullable Float real = Double.isNaN(value) ? null : (Float) Reals.toReal(value);
        statement.setObject(index, real, Types.REAL);
    }
}
