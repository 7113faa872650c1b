package org.ohmstead.intake;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.intake.map.ColumnMap;
import org.ohmstead.kernel.NotFound;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Saved column maps, version by version. */
@Repository
class ColumnMapShelf {

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final Clock clock;

    ColumnMapShelf(JdbcClient jdbc, JsonMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.json = json;
        this.clock = clock;
    }

    /** The latest version of each within reach, by name. */
    List<ColumnMapView> latest(Reach reach) {
        return jdbc.sql("""
                        select distinct on (name) * from column_map
                        where area_id is null or :everywhere or area_id = any (:areaIds)
                        order by name, version desc
                        """)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query(this::view)
                .list();
    }

    /** Whether no version of that name belongs to an area out of reach. */
    boolean isWithin(String name, Reach reach) {
        return jdbc.sql("""
                        select not exists (select from column_map
                          where name = :name and area_id is not null and not :everywhere and not area_id = any (:areaIds))
                        """)
                .param("name", name)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query(Boolean.class)
                .single();
    }

    /** A version as it was saved; what was read by it can be read again whoever asks. */
    ColumnMapView version(String name, int version) {
        return jdbc.sql("select * from column_map where name = ? and version = ?")
                .params(name, version)
                .query(this::view)
                .optional()
                .orElseThrow(() -> NotFound.of("column map", name + ", version " + version));
    }

    private ColumnMapView view(ResultSet row, int n) throws SQLException {
        return new ColumnMapView(
                row.getString("name"),
                row.getInt("version"),
                row.getObject("area_id", Long.class),
                row.getString("belongs_to"),
                row.getBoolean("retired"),
                row.getTimestamp("saved_at").toInstant(),
                row.getString("saved_by"),
                json.readValue(row.getString("definition"), ColumnMap.class));
    }

    /** Makes the next version; two people saving at once get one version each, or the later one an error. */
    int add(String name, @Nullable Long areaId, String belongsTo, boolean retired, ColumnMap map, String savedBy) {
        return jdbc.sql("""
                        insert into column_map
                          (name, version, area_id, belongs_to, definition, retired, saved_at, saved_by)
                        select :name, coalesce(max(version), 0) + 1, :area, :belongsTo, :map::jsonb, :retired, :now, :by
                        from column_map where name = :name
                        returning version
                        """)
                .param("name", name)
                .param("area", areaId, java.sql.Types.BIGINT)
                .param("belongsTo", belongsTo)
                .param("map", json.writeValueAsString(map))
                .param("retired", retired)
                .param("now", Timestamp.from(clock.instant()))
                .param("by", savedBy)
                .query(Integer.class)
                .single();
    }
}
