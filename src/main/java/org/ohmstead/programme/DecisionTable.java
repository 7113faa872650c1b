package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.List;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads all that was decided for a string, as one list. */
@Component
class DecisionTable {

    private static final String ALL = """
            select 'PACK' as kind, from_on, '' as requirement, pack as detail, null::date as until_on,
                   null::date as ended_on, null::bigint as waiver_id, set_at, set_by
            from string_programme where string_id = :id
            union all
            select 'ELECTION', from_on, requirement, branch, null, null, null, set_at, set_by
            from programme_election where string_id = :id
            union all
            select 'OWN_INTERVAL', from_on, requirement, coalesce(months::text, ''), null, null, null, set_at, set_by
            from programme_own_interval where string_id = :id
            union all
            select 'WAIVER', granted_on, requirement, reason, until_on, ended_on, id, set_at, set_by
            from duty_waiver where string_id = :id
            order by from_on desc, set_at desc, requirement""";

    private final JdbcClient jdbc;

    DecisionTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** The latest first. */
    List<Decision> of(long stringId) {
        return jdbc.sql(ALL).param("id", stringId).query((row, n) -> read(row)).list();
    }

    private static Decision read(ResultSet row) throws SQLException {
        return new Decision(
                Decision.Kind.valueOf(row.getString("kind")),
                row.getObject("from_on", LocalDate.class),
                row.getString("requirement"),
                row.getString("detail"),
                row.getObject("until_on", LocalDate.class),
                row.getObject("ended_on", LocalDate.class),
                row.getObject("waiver_id", Long.class),
                row.getTimestamp("set_at").toInstant(),
                row.getString("set_by"));
    }
}
