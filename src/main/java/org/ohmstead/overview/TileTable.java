package org.ohmstead.overview;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.kernel.Technology;
import org.ohmstead.kernel.Urgency;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads what tiles are made of: one row a string in service, in one query however many strings. */
@Component
class TileTable {

    private static final String TILES = """
            select b.id, s.code as site_code, s.name as site_name, s.time_zone, r.name as area_name, b.name, b.positions,
                   t.technology, a.urgency, a.headline, d.due_on, d.reason
            from battery_string b
            join site s on s.id = b.site_id
            join area r on r.id = s.area_id
            join jar_type t on t.id = b.jar_type_id
            left join current_assessment c on c.string_id = b.id
            left join string_assessment a on a.id = c.assessment_id
            left join next_date d on d.string_id = b.id
            where b.retired_on is null and (:everywhere or s.area_id = any (:areaIds)) and (:site is null or s.code = :site)
            order by s.code, b.name""";

    private final JdbcClient jdbc;

    TileTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** @param urgency null while nobody has assessed it; so is the headline */
    record Row(
            long stringId,
            String siteCode,
            String siteName,
            ZoneId timeZone,
            String areaName,
            String name,
            int positions,
            Technology technology,
            @Nullable Urgency urgency,
            @Nullable String headline,
            @Nullable LocalDate dueOn,
            @Nullable String dueReason) {}

    /** How large the estate is.
     *
     * @param timeZone of most of the sites; UTC without any
     */
    record Places(int areas, int sites, ZoneId timeZone) {}

    /** @param siteCode null for all sites */
    List<Row> rows(Reach reach, @Nullable String siteCode) {
        return jdbc.sql(TILES)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .param("site", siteCode, java.sql.Types.VARCHAR)
                .query((row, n) -> row(row))
                .list();
    }

    Places places(Reach reach) {
        return jdbc.sql("""
                        select count(distinct area_id) as areas, count(*) as sites,
                               coalesce(mode() within group (order by time_zone), 'UTC') as time_zone
                        from site where :everywhere or area_id = any (:areaIds)""")
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) ->
                        new Places(row.getInt("areas"), row.getInt("sites"), ZoneId.of(row.getString("time_zone"))))
                .single();
    }

    private static Row row(ResultSet row) throws SQLException {
        String urgency = row.getString("urgency");
        return new Row(
                row.getLong("id"),
                row.getString("site_code"),
                row.getString("site_name"),
                ZoneId.of(row.getString("time_zone")),
                row.getString("area_name"),
                row.getString("name"),
                row.getInt("positions"),
                Technology.valueOf(row.getString("technology")),
                urgency == null ? null : Urgency.valueOf(urgency),
                row.getString("headline"),
                row.getObject("due_on", LocalDate.class),
                row.getString("reason"));
    }
}
