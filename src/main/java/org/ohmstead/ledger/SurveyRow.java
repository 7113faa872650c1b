package org.ohmstead.ledger;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/** Turns a row of the survey table into a record. The arrays come over in their binary form, decoded here. */
final class SurveyRow {

    /** Of the survey {@code s}; in the order that {@link #read} expects. */
    static final String COLUMNS = """
            s.id, s.string_id, s.taken_at, s.taken_on, s.taken_by, s.instrument, s.instrument_calibration_due,
            s.ohmic_kind, s.ohmic_hertz, s.ambient_celsius, s.string_volts, s.float_amps, s.ripple_amps,
            s.ripple_volts, s.injected_amps, s.clamped_amps, s.on_float, s.note,
            array_send(s.ohmic), array_send(s.volts), array_send(s.celsius), array_send(s.gravity),
            s.straps_per_link, array_send(s.link_microohms),
            s.recorded_at, s.recorded_by, s.upload_id, s.raw_sha256""";

    /** The columns above and those of the withdrawal {@code w}, as {@link #readWithWithdrawal} expects. */
    static final String COLUMNS_WITH_WITHDRAWAL =
            COLUMNS + ", w.kind, w.superseded_by, w.at as withdrawn_at, w.by as withdrawn_by, w.reason";

    private SurveyRow() {}

    static SurveyRecord read(ResultSet row) throws SQLException {
        return read(row, null);
    }

    static SurveyRecord readWithWithdrawal(ResultSet row) throws SQLException {
        String kind = row.getString(29);
        return read(row, kind == null ? null : withdrawal(row, kind));
    }

    private static Withdrawal withdrawal(ResultSet row, String kind) throws SQLException {
        return new Withdrawal(
                Withdrawal.Kind.valueOf(kind),
                row.getObject(30, Long.class),
                instant(row, 31),
                row.getString(32),
                row.getString(33));
    }

    private static SurveyRecord read(ResultSet row, @Nullable Withdrawal withdrawal) throws SQLException {
        return new SurveyRecord(
                row.getLong(1),
                facts(row),
                readings(row),
                instant(row, 25),
                row.getString(26),
                row.getObject(27, UUID.class),
                row.getBytes(28),
                withdrawal);
    }

    private static SurveyFacts facts(ResultSet row) throws SQLException {
        return new SurveyFacts(
                row.getLong(2),
                instant(row, 3),
                row.getObject(4, LocalDate.class),
                row.getString(5),
                row.getString(6),
                row.getObject(7, LocalDate.class),
                OhmicKind.valueOf(row.getString(8)),
                number(row, 9),
                number(row, 10),
                number(row, 11),
                number(row, 12),
                number(row, 13),
                number(row, 14),
                number(row, 15),
                number(row, 16),
                row.getBoolean(17),
                row.getString(18));
    }

    private static Readings readings(ResultSet row) throws SQLException {
        double[] ohmic = RealArrays.read(row.getBytes(19), 0);
        int positions = ohmic.length;
        int width = row.getInt(23);
        return new Readings(
                ohmic,
                RealArrays.read(row.getBytes(20), positions),
                RealArrays.read(row.getBytes(21), positions),
                RealArrays.read(row.getBytes(22), positions),
                Straps.unflatten(RealArrays.read(row.getBytes(24), (positions + 1) * width), width));
    }

    private static Instant instant(ResultSet row, int column) throws SQLException {
        return row.getObject(column, OffsetDateTime.class).toInstant();
    }

    private static double number(ResultSet row, int column) throws SQLException {
        float value = row.getFloat(column);
        return row.wasNull() ? Double.NaN : Reals.fromReal(value);
    }
}
