package org.ohmstead.fleet;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.ohmstead.fleet.csv.RemakeEntry;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The remakes of all links. */
@Repository
class Remakes {

    private static final String COLUMNS =
            "id, string_id, ordinal, remade_on, as_found_microohms, as_left_microohms, note";

    private final JdbcClient jdbc;

    Remakes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    List<RemakeView> ofStrings(Long[] stringIds) {
        return jdbc.sql("select " + COLUMNS + " from link_remake where string_id = any (?)"
                        + " order by string_id, ordinal, remade_on")
                .param(stringIds)
                .query(Remakes::remake)
                .list();
    }

    Optional<RemakeView> find(long id) {
        return jdbc.sql("select " + COLUMNS + " from link_remake where id = ?")
                .param(id)
                .query(Remakes::remake)
                .optional();
    }

    Optional<RemakeView> find(long stringId, int ordinal, LocalDate on) {
        return jdbc.sql("select " + COLUMNS + " from link_remake where string_id = ? and ordinal = ? and remade_on = ?")
                .params(stringId, ordinal, on)
                .query(Remakes::remake)
                .optional();
    }

    RemakeView add(long stringId, RemakeEntry entry) {
        return jdbc.sql("insert into link_remake (string_id, ordinal, remade_on, as_found_microohms,"
                        + " as_left_microohms, note) values (?, ?, ?, ?, ?, ?) returning " + COLUMNS)
                .params(values(stringId, entry))
                .query(Remakes::remake)
                .single();
    }

    /** Known by link and day. */
    void put(long stringId, RemakeEntry entry) {
        jdbc.sql("insert into link_remake (string_id, ordinal, remade_on, as_found_microohms, as_left_microohms, note)"
                        + " values (?, ?, ?, ?, ?, ?) on conflict on constraint one_remake_per_day do update"
                        + " set as_found_microohms = excluded.as_found_microohms,"
                        + " as_left_microohms = excluded.as_left_microohms, note = excluded.note")
                .params(values(stringId, entry))
                .update();
    }

    RemakeView change(long id, RemakeEntry entry) {
        return jdbc.sql("update link_remake set remade_on = ?, as_found_microohms = ?, as_left_microohms = ?, note = ?"
                        + " where id = ? returning " + COLUMNS)
                .params(Arrays.asList(
                        entry.remadeOn(), entry.asFoundMicroohms(), entry.asLeftMicroohms(), entry.note(), id))
                .query(Remakes::remake)
                .single();
    }

    void delete(long id) {
        jdbc.sql("delete from link_remake where id = ?").param(id).update();
    }

    private static List<Object> values(long stringId, RemakeEntry entry) {
        return Arrays.asList(
                stringId,
                entry.ordinal(),
                entry.remadeOn(),
                entry.asFoundMicroohms(),
                entry.asLeftMicroohms(),
                entry.note());
    }

    private static RemakeView remake(ResultSet row, int n) throws SQLException {
        return new RemakeView(
                row.getLong("id"),
                row.getLong("string_id"),
                row.getInt("ordinal"),
                row.getObject("remade_on", LocalDate.class),
                row.getObject("as_found_microohms", Double.class),
                row.getObject("as_left_microohms", Double.class),
                row.getString("note"));
    }
}
