package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.estate.CapacityLimit;
import org.ohmstead.assessment.model.estate.ReferenceLevel;
import org.ohmstead.kernel.OhmicKind;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What the estate's jars taught of jar types, as it was applied, and what they could teach. */
@Component
class LessonTable {

    private final JdbcClient jdbc;

    LessonTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** In force, by jar type code; those taken back are left out. */
    Map<String, Lesson.Learned> inForce() {
        Map<String, Lesson.Learned> found = new HashMap<>();
        RowCallbackHandler keep = row -> found.put(row.getString("code"), learned(row));
        jdbc.sql("""
                        select * from (
                          select distinct on (l.jar_type_id) l.*, t.code from jar_type_learned l
                          join jar_type t on t.id = l.jar_type_id order by l.jar_type_id, l.version desc) latest
                        where not taken_back""").query(keep);
        return found;
    }

    int lastVersion(long jarTypeId) {
        return jdbc.sql("select coalesce(max(version), 0) from jar_type_learned where jar_type_id = ?")
                .param(jarTypeId)
                .query(Integer.class)
                .single();
    }

    /** Baselines of settled jars of that type, entered or read. */
    List<ReferenceLevel.Settled> settled(String jarTypeCode) {
        return jdbc.sql("""
                        select j.string_id, j.ohmic_kind, j.baseline_ohmic
                        from jar_assessment j
                        join occupancy o on o.string_id = j.string_id and o.position = j.position
                                        and o.from_on = j.sitting_since
                        join jar_type t on t.id = o.jar_type_id
                        where t.code = ? and j.baseline_from in ('ENTERED', 'SURVEY') and j.ohmic_kind is not null
                          and j.baseline_ohmic > 0
                        order by j.string_id, j.position""")
                .param(jarTypeCode)
                .query((row, n) -> new ReferenceLevel.Settled(
                        row.getLong("string_id"),
                        OhmicKind.valueOf(row.getString("ohmic_kind")),
                        row.getDouble("baseline_ohmic")))
                .list();
    }

    /** A lesson without values takes back what stood. */
    void add(
            long jarTypeId,
            int version,
            Instant at,
            String by,
            @Nullable ReferenceLevel reference,
            @Nullable CapacityLimit limit) {
        jdbc.sql("""
                        insert into jar_type_learned (jar_type_id, version, applied_at, applied_by, ohmic_kind,
                          reference_ohmic, reference_low, reference_high, spread, reference_jars, reference_strings,
                          log_limit, log_limit_low, log_limit_high, log_limit_spread, tested, failed, taken_back)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .params(Arrays.asList(
                        jarTypeId,
                        version,
                        Timestamp.from(at),
                        by,
                        reference == null ? null : reference.kind().name(),
                        reference == null ? null : reference.value(),
                        reference == null ? null : reference.low(),
                        reference == null ? null : reference.high(),
                        reference == null ? null : reference.spread(),
                        reference == null ? 0 : reference.jars(),
                        reference == null ? 0 : reference.strings(),
                        limit == null ? null : limit.logLimit(),
                        limit == null ? null : limit.low(),
                        limit == null ? null : limit.high(),
                        limit == null ? null : limit.spread(),
                        limit == null ? 0 : limit.tested(),
                        limit == null ? 0 : limit.failed(),
                        reference == null && limit == null))
                .update();
    }

    private static Lesson.Learned learned(ResultSet row) throws SQLException {
        String kind = row.getString("ohmic_kind");
        Double limit = row.getObject("log_limit", Double.class);
        return new Lesson.Learned(
                row.getInt("version"),
                row.getTimestamp("applied_at").toInstant(),
                row.getString("applied_by"),
                kind == null
                        ? null
                        : new ReferenceLevel(
                                OhmicKind.valueOf(kind),
                                row.getDouble("reference_ohmic"),
                                row.getDouble("reference_low"),
                                row.getDouble("reference_high"),
                                row.getDouble("spread"),
                                row.getInt("reference_jars"),
                                row.getInt("reference_strings")),
                limit == null
                        ? null
                        : new CapacityLimit(
                                limit,
                                row.getDouble("log_limit_low"),
                                row.getDouble("log_limit_high"),
                                row.getDouble("log_limit_spread"),
                                row.getInt("tested"),
                                row.getInt("failed")));
    }
}
