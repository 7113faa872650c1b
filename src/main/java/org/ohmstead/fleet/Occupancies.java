package org.ohmstead.fleet;

import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.OccupancyEntry;
import org.ohmstead.kernel.DateRange;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** Which jar sat where and when, in all strings. */
@Repository
class Occupancies {

    private static final String COLUMNS = "o.id, o.string_id, o.position, o.jar_type_id, t.code as jar_type, o.serial,"
            + " o.from_on, o.until_on, o.reason, o.left_reason, o.baseline_ohmic, o.baseline_source";
    private static final String FROM = " from occupancy o join jar_type t on t.id = o.jar_type_id ";

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;

    Occupancies(JdbcClient jdbc, JdbcTemplate batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    /** An occupancy on its way into the table. */
    record Placing(long stringId, long jarTypeId, OccupancyEntry entry) {}

    List<OccupancyView> ofStrings(Long[] stringIds) {
        return jdbc.sql("select " + COLUMNS + FROM + "where o.string_id = any (?)"
                        + " order by o.string_id, o.position, o.from_on")
                .param(stringIds)
                .query(Occupancies::occupancy)
                .list();
    }

    Optional<OccupancyView> find(long id) {
        return jdbc.sql("select " + COLUMNS + FROM + "where o.id = ?")
                .param(id)
                .query(Occupancies::occupancy)
                .optional();
    }

    /** Who sits at the position on any day of the range, oldest first. */
    List<OccupancyView> at(long stringId, int position, DateRange range) {
        return jdbc.sql("select " + COLUMNS + FROM + "where o.string_id = ? and o.position = ?"
                        + " and o.during && daterange(?::date, ?::date) order by o.from_on")
                .params(Arrays.asList(stringId, position, range.from(), range.until()))
                .query(Occupancies::occupancy)
                .list();
    }

    /** Where the jar sits on any day of the range. */
    List<OccupancyView> ofSerial(long jarTypeId, String serial, DateRange range) {
        return jdbc.sql("select " + COLUMNS + FROM + "where o.jar_type_id = ? and o.serial = ?"
                        + " and o.during && daterange(?::date, ?::date) order by o.from_on")
                .params(Arrays.asList(jarTypeId, serial, range.from(), range.until()))
                .query(Occupancies::occupancy)
                .list();
    }

    /** The highest position with a jar on record, or 0. */
    int lastPosition(long stringId) {
        return jdbc.sql("select coalesce(max(position), 0) from occupancy where string_id = ?")
                .param(stringId)
                .query(Integer.class)
                .single();
    }

    void add(List<Placing> placings) {
        batches.batchUpdate(
                "insert into occupancy (jar_type_id, serial, until_on, reason, left_reason, baseline_ohmic,"
                        + " baseline_source, string_id, position, from_on) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                placings,
                500,
                Occupancies::bind);
    }

    /** Known by string, position and first day. */
    void change(List<Placing> placings) {
        batches.batchUpdate(
                "update occupancy set jar_type_id = ?, serial = ?, until_on = ?, reason = ?, left_reason = ?,"
                        + " baseline_ohmic = ?, baseline_source = ?"
                        + " where string_id = ? and position = ? and from_on = ?",
                placings,
                500,
                Occupancies::bind);
    }

    void change(long id, Placing placing) {
        batches.update(
                "update occupancy set jar_type_id = ?, serial = ?, until_on = ?, reason = ?, left_reason = ?,"
                        + " baseline_ohmic = ?, baseline_source = ?, string_id = ?, position = ?, from_on = ?"
                        + " where id = ?",
                row -> {
                    bind(row, placing);
                    row.setLong(11, id);
                });
    }

    /** Until {@link #refuseCollisions}, jars may pass through places that are not free yet. */
    void deferCollisions() {
        jdbc.sql("set constraints one_jar_per_position, one_place_per_serial deferred")
                .update();
    }

    void refuseCollisions() {
        jdbc.sql("set constraints one_jar_per_position, one_place_per_serial immediate")
                .update();
    }

    /** Two occupancies of which at most one can be right, seen from the first. */
    record Collision(
            long stringId,
            int position,
            LocalDate from,
            @Nullable String serial,
            boolean samePosition,
            String otherPlace,
            String otherStay) {}

    List<Collision> collisions(Long[] stringIds) {
        return jdbc.sql("""
                        select a.string_id, a.position, a.from_on, a.serial,
                               a.string_id = b.string_id and a.position = b.position as same_position,
                               format('position %s of %s / %s', b.position, site.code, s.name) as other_place,
                               b.from_on as other_from, b.until_on as other_until
                        from occupancy a
                        join lateral (
                          select * from occupancy o
                          where o.string_id = a.string_id and o.position = a.position and o.during && a.during
                          union
                          select * from occupancy o
                          where o.jar_type_id = a.jar_type_id and o.serial = a.serial and o.during && a.during
                        ) b on b.id <> a.id
                        join battery_string s on s.id = b.string_id join site on site.id = s.site_id
                        where a.string_id = any (?)
                        order by a.string_id, a.position, a.from_on
                        """)
                .param(stringIds)
                .query((row, n) -> new Collision(
                        row.getLong("string_id"),
                        row.getInt("position"),
                        row.getObject("from_on", LocalDate.class),
                        row.getString("serial"),
                        row.getBoolean("same_position"),
                        row.getString("other_place"),
                        Seats.words(new DateRange(
                                row.getObject("other_from", LocalDate.class),
                                row.getObject("other_until", LocalDate.class)))))
                .list();
    }

    void delete(long id) {
        jdbc.sql("delete from occupancy where id = ?").param(id).update();
    }

    private static void bind(PreparedStatement row, Placing placing) throws SQLException {
        OccupancyEntry entry = placing.entry();
        row.setLong(1, placing.jarTypeId());
        row.setString(2, entry.serial());
        row.setObject(3, entry.until(), Types.DATE);
        row.setString(4, entry.reason());
        row.setString(5, entry.leftReason());
        row.setObject(6, entry.baselineOhmic(), Types.DOUBLE);
        row.setString(7, entry.baselineSource());
        row.setLong(8, placing.stringId());
        row.setInt(9, entry.position());
        row.setObject(10, entry.from(), Types.DATE);
    }

    private static OccupancyView occupancy(ResultSet row, int n) throws SQLException {
        DateRange during =
                new DateRange(row.getObject("from_on", LocalDate.class), row.getObject("until_on", LocalDate.class));
        return new OccupancyView(
                row.getLong("id"),
                row.getLong("string_id"),
                row.getInt("position"),
                row.getLong("jar_type_id"),
                row.getString("jar_type"),
                row.getString("serial"),
                during,
                row.getString("reason"),
                row.getString("left_reason"),
                row.getObject("baseline_ohmic", Double.class),
                row.getString("baseline_source"));
    }
}
