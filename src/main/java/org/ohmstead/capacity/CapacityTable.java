package org.ohmstead.capacity;

import java.sql.Array;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.capacity.model.Capacity;
import org.ohmstead.capacity.model.Discharge;
import org.ohmstead.capacity.model.JarResults;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TestKind;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored capacity tests and their records. */
@Component
class CapacityTable {

    private static final String INSERT = """
            insert into capacity_test (string_id, tested_on, tested_by, kind, method, rated_amps, rated_minutes,
              discharge_amps, actual_minutes, celsius, reference_celsius, linear_coefficient, end_volts_per_cell,
              string_end_volts, jar_end_volts, percent_capacity, computation, note, recorded_at, recorded_by,
              stopped_early, jar_minutes)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) returning id""";
    private static final String SELECT = """
            select t.*, x.reason as voided_because, f.name as file_name, f.sha256 as file_sha256,
                   length(f.content) as file_bytes, y.cells_per_jar
            from capacity_test t join battery_string b on b.id = t.string_id join site s on s.id = b.site_id
            join jar_type y on y.id = b.jar_type_id
            left join capacity_test_void x on x.test_id = t.id left join capacity_test_file f on f.test_id = t.id
            """;
    private static final String IN_REACH = "(:everywhere or s.area_id = any (:areaIds))";

    private final JdbcClient jdbc;
    private final Clock clock;

    CapacityTable(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** One recording at a time per string, so that none is doubled. */
    void lock(long stringId) {
        jdbc.sql("select pg_advisory_xact_lock(hashtext('capacity test'), ?::int)")
                .param((int) (stringId % Integer.MAX_VALUE))
                .query(rows -> {});
    }

    long insert(NewCapacityTest test, Drawn drawn, Capacity capacity, @Nullable Double coefficient, String by) {
        return jdbc.sql(INSERT)
                .params(java.util.Arrays.<@Nullable Object>asList(
                        test.stringId(),
                        test.testedOn(),
                        test.testedBy(),
                        test.kind().name(),
                        test.method().name(),
                        test.ratings().amps(),
                        test.ratings().minutes(),
                        drawn.amps(),
                        drawn.minutes(),
                        test.celsius(),
                        test.ratings().celsius(),
                        coefficient,
                        test.ratings().endVoltsPerCell(),
                        drawn.stringEndVolts(),
                        reals(drawn.jarEndVolts()),
                        capacity.percent(),
                        capacity.computation(),
                        test.note(),
                        Timestamp.from(clock.instant()),
                        by,
                        drawn.stoppedEarly(),
                        reals(drawn.jarMinutes())))
                .query(Long.class)
                .single();
    }

    void insertFile(long testId, String name, byte[] sha256, byte[] content) {
        jdbc.sql("insert into capacity_test_file (test_id, name, sha256, content) values (?, ?, ?, ?)")
                .params(testId, name, sha256, content)
                .update();
    }

    void voidTest(long testId, String reason, String by) {
        jdbc.sql("insert into capacity_test_void (test_id, reason, at, by) values (?, ?, ?, ?)")
                .params(testId, reason, Timestamp.from(clock.instant()), by)
                .update();
    }

    /** Oldest first. */
    List<CapacityTestView> of(long stringId) {
        return jdbc.sql(SELECT + "where t.string_id = ? order by t.tested_on, t.id")
                .param(stringId)
                .query((row, n) -> view(row))
                .list();
    }

    Optional<CapacityTestView> find(long testId) {
        return jdbc.sql(SELECT + "where t.id = ?")
                .param(testId)
                .query((row, n) -> view(row))
                .optional();
    }

    /** Those that stand and show capacity, of strings in reach, the latest first. */
    List<CapacityTestView> counting(Reach reach) {
        return jdbc.sql(SELECT + "where x.test_id is null and t.kind <> 'SERVICE' and " + IN_REACH
                        + " order by t.tested_on desc, t.id desc")
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> view(row))
                .list();
    }

    Optional<byte[]> content(long testId) {
        return jdbc.sql("select content from capacity_test_file where test_id = ?")
                .param(testId)
                .query((row, n) -> row.getBytes(1))
                .optional();
    }

    private static CapacityTestView view(ResultSet row) throws SQLException {
        Ratings ratings = new Ratings(
                row.getDouble("rated_amps"),
                row.getDouble("rated_minutes"),
                row.getDouble("reference_celsius"),
                row.getDouble("end_volts_per_cell"));
        Discharge drawn = new Discharge(
                row.getDouble("discharge_amps"),
                row.getDouble("actual_minutes"),
                row.getDouble("celsius"),
                row.getBoolean("stopped_early"));
        Capacity capacity =
                new Capacity(row.getDouble("percent_capacity"), drawn.stoppedEarly(), row.getString("computation"));
        JarResults jars = new JarResults(ratings, capacity, row.getInt("cells_per_jar"), drawn.minutes());
        return new CapacityTestView(
                row.getLong("id"),
                row.getLong("string_id"),
                row.getObject("tested_on", LocalDate.class),
                row.getString("tested_by"),
                TestKind.valueOf(row.getString("kind")),
                Method.valueOf(row.getString("method")),
                ratings,
                drawn,
                row.getObject("linear_coefficient", Double.class),
                row.getObject("string_end_volts", Double.class),
                capacity,
                jars.lineVolts(),
                jars.of(doubles(row.getArray("jar_end_volts")), doubles(row.getArray("jar_minutes"))),
                row.getString("note"),
                row.getTimestamp("recorded_at").toInstant(),
                row.getString("recorded_by"),
                row.getString("voided_because"),
                raw(row));
    }

    private static CapacityTestView.@Nullable Raw raw(ResultSet row) throws SQLException {
        byte[] sha256 = row.getBytes("file_sha256");
        return sha256 == null
                ? null
                : new CapacityTestView.Raw(
                        row.getString("file_name"), HexFormat.of().formatHex(sha256), row.getInt("file_bytes"));
    }

    private static @Nullable Float @Nullable [] reals(double[] values) {
        if (values.length == 0) {
            return null;
        }
        @Nullable Float[] reals = new Float[values.length];
        for (int i = 0; i < values.length; i++) {
            reals[i] = Double.isNaN(values[i]) ? null : (Float) (float) values[i];
        }
        return reals;
    }

    /** The shortest decimal of each number as it is stored; NaN for a null element. */
    private static double[] doubles(@Nullable Array stored) throws SQLException {
        if (stored == null) {
            return new double[0];
        }
        @Nullable Float[] reals = (Float[]) stored.getArray();
        double[] values = new double[reals.length];
        for (int i = 0; i < reals.length; i++) {
            Float real = reals[i];
            values[i] = real == null ? Double.NaN : Double.parseDouble(real.toString());
        }
        return values;
    }
}
