package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.programme.rules.NextDates;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads the strings in bulk. */
@Component
class InServiceTable {

    private static final String STRINGS = """
            select b.id, s.area_id, s.time_zone, b.in_service_on, b.retired_on, b.survey_interval_months,
                   d.surveyed_on, d.recheck_by, d.risk_on,
                   r.by_on as demanded_by, r.reason as demanded_for
            from battery_string b join site s on s.id = b.site_id left join next_date d on d.string_id = b.id
            left join demanded_reading r on r.string_id = b.id
            """;

    private final JdbcClient jdbc;

    InServiceTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Whoever asks has seen to the reach. */
    List<InService> of(Collection<Long> stringIds) {
        return jdbc.sql(STRINGS + "where b.id = any (?) order by b.id")
                .param(stringIds.toArray(Long[]::new))
                .query((row, n) -> read(row))
                .list();
    }

    List<InService> inReach(Reach reach) {
        return jdbc.sql(STRINGS + "where :everywhere or s.area_id = any (:areaIds) order by b.id")
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> read(row))
                .list();
    }

    private static InService read(ResultSet row) throws SQLException {
        return new InService(
                row.getLong("id"),
                row.getLong("area_id"),
                ZoneId.of(row.getString("time_zone")),
                row.getObject("in_service_on", LocalDate.class),
                row.getObject("retired_on", LocalDate.class),
                row.getInt("survey_interval_months"),
                row.getObject("surveyed_on", LocalDate.class),
                row.getObject("recheck_by", LocalDate.class),
                row.getObject("risk_on", LocalDate.class),
                demand(row));
    }

    private static NextDates.@Nullable Demand demand(ResultSet row) throws SQLException {
        LocalDate by = row.getObject("demanded_by", LocalDate.class);
        return by == null ? null : new NextDates.Demand(by, row.getString("demanded_for"));
    }
}
