package org.ohmstead.fleet;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.fleet.csv.StringEntry;
import org.ohmstead.kernel.Conductor;
import org.ohmstead.kernel.LinkKind;
import org.springframework.jdbc.core.BatchPreparedStatementSetter;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The links of all strings. */
@Repository
class Links {

    private static final String COLUMNS = "string_id, ordinal, kind, straps, conductor_size, conductor_flexibility,"
            + " conductor_metres, conductors_in_parallel";

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;

    Links(JdbcClient jdbc, JdbcTemplate batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    List<LinkView> ofStrings(Long[] stringIds) {
        return jdbc.sql("select " + COLUMNS + " from link where string_id = any (?) order by string_id, ordinal")
                .param(stringIds)
                .query(Links::link)
                .list();
    }

    Optional<LinkView> find(long stringId, int ordinal) {
        return jdbc.sql("select " + COLUMNS + " from link where string_id = ? and ordinal = ?")
                .params(stringId, ordinal)
                .query(Links::link)
                .optional();
    }

    /** The highest link with a remake on record, or -1. */
    int lastRemade(long stringId) {
        return jdbc.sql("select coalesce(max(ordinal), -1) from link_remake where string_id = ?")
                .param(stringId)
                .query(Integer.class)
                .single();
    }

    void add(Collection<LinkView> links) {
        List<LinkView> rows = List.copyOf(links);
        batches.batchUpdate(
                "insert into link (" + COLUMNS + ") values (?, ?, ?, ?, ?, ?, ?, ?)"
                        + " on conflict (string_id, ordinal) do update set kind = excluded.kind,"
                        + " straps = excluded.straps, conductor_size = excluded.conductor_size,"
                        + " conductor_flexibility = excluded.conductor_flexibility,"
                        + " conductor_metres = excluded.conductor_metres,"
                        + " conductors_in_parallel = excluded.conductors_in_parallel",
                new BatchPreparedStatementSetter() {
                    @Override
                    public void setValues(java.sql.PreparedStatement row, int i) throws SQLException {
                        bind(row, rows.get(i));
                    }

                    @Override
                    public int getBatchSize() {
                        return rows.size();
                    }
                });
    }

    /** Links whose planned form did not change keep what was entered for them. */
    void replan(long stringId, StringEntry before, StringEntry after) {
        List<LinkView> old = LinkPlan.of(stringId, before.tiers(), before.strapsPerLink());
        List<LinkView> planned = LinkPlan.of(stringId, after.tiers(), after.strapsPerLink());
        jdbc.sql("delete from link where string_id = ? and ordinal > ?")
                .params(stringId, after.positions())
                .update();
        add(planned.stream()
                .filter(link ->
                        link.ordinal() >= old.size() || !old.get(link.ordinal()).equals(link))
                .toList());
    }

    private static void bind(java.sql.PreparedStatement row, LinkView link) throws SQLException {
        Conductor cable = link.conductor();
        row.setLong(1, link.stringId());
        row.setInt(2, link.ordinal());
        row.setString(3, link.kind().name());
        row.setInt(4, link.straps());
        row.setString(5, cable == null ? null : cable.size());
        row.setString(6, cable == null ? null : cable.flexibility().name());
        row.setObject(7, cable == null ? null : cable.lengthMetres(), java.sql.Types.DOUBLE);
        row.setObject(8, cable == null ? null : cable.inParallel(), java.sql.Types.INTEGER);
    }

    private static LinkView link(ResultSet row, int n) throws SQLException {
        return new LinkView(
                row.getLong("string_id"),
                row.getInt("ordinal"),
                LinkKind.valueOf(row.getString("kind")),
                row.getInt("straps"),
                conductor(row));
    }

    private static @Nullable Conductor conductor(ResultSet row) throws SQLException {
        String size = row.getString("conductor_size");
        return size == null
                ? null
                : new Conductor(
                        size,
                        Conductor.Flexibility.valueOf(row.getString("conductor_flexibility")),
                        row.getDouble("conductor_metres"),
                        row.getInt("conductors_in_parallel"));
    }
}
