package org.ohmstead.programme;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** The stored rounds. */
@Component
class RoundTable {

    private static final String SELECT = """
            select r.*, s.code as site_code, s.name as site_name, a.code as area_code, a.name as area_name
            from round r join site s on s.id = r.site_id join area a on a.id = s.area_id
            where (:everywhere or s.area_id = any (:areaIds))
            """;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final Clock clock;

    RoundTable(JdbcClient jdbc, JdbcTemplate batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    long insert(long siteId, LocalDate on, String crew, String note, List<RoundTask> tasks, String by) {
        Timestamp now = Timestamp.from(clock.instant());
        long id = jdbc.sql("""
                        insert into round (site_id, planned_on, crew, note, made_at, made_by, changed_at)
                        values (?, ?, ?, ?, ?, ?, ?) returning id""")
                .params(siteId, on, crew, note, now, by, now)
                .query(Long.class)
                .single();
        batches.batchUpdate(
                "insert into round_duty (round_id, string_id, requirement, due_on) values (?, ?, ?, ?)",
                tasks.stream()
                        .map(task -> new Object[] {id, task.stringId(), task.requirement(), task.dueOn()})
                        .toList());
        return id;
    }

    /** @return false when somebody else changed it since that sequence, or it was cancelled */
    boolean change(long id, int sequence, LocalDate on, String crew, String note) {
        return jdbc.sql("""
                                update round set planned_on = ?, crew = ?, note = ?, sequence = sequence + 1, changed_at = ?
                                where id = ? and sequence = ? and cancelled_at is null""")
                        .params(on, crew, note, Timestamp.from(clock.instant()), id, sequence)
                        .update()
                == 1;
    }

    boolean cancel(long id, String reason) {
        Timestamp now = Timestamp.from(clock.instant());
        return jdbc.sql("""
                                update round set cancelled_at = ?, cancelled_because = ?, sequence = sequence + 1, changed_at = ?
                                where id = ? and cancelled_at is null""").params(now, reason, now, id).update() == 1;
    }

    Optional<RoundView> find(long id, Reach reach) {
        return read(SELECT + "and r.id = :id", reach, Map.of("id", id)).stream().findFirst();
    }

    /** By day, then site. */
    List<RoundView> between(LocalDate first, LocalDate last, Reach reach) {
        return read(
                SELECT + "and r.planned_on between :first and :last order by r.planned_on, s.code, r.id",
                reach,
                Map.of("first", first, "last", last));
    }

    /** Every day from {@code first} on that a standing round does each duty, by the task's key. */
    Map<String, NavigableSet<LocalDate>> standing(LocalDate first) {
        Map<String, NavigableSet<LocalDate>> standing = new HashMap<>();
        jdbc.sql("""
                        select d.string_id, d.requirement, r.planned_on
                        from round_duty d join round r on r.id = d.round_id
                        where r.cancelled_at is null and r.planned_on >= ?""").param(first).query(row -> {
            standing.computeIfAbsent(
                            row.getLong("string_id") + "/" + row.getString("requirement"), key -> new TreeSet<>())
                    .add(row.getObject("planned_on", LocalDate.class));
        });
        return standing;
    }

    /** How many standing rounds each area's crew has on each day from {@code first} on. */
    Map<String, Map<LocalDate, Integer>> visits(LocalDate first) {
        Map<String, Map<LocalDate, Integer>> visits = new HashMap<>();
        jdbc.sql("""
                        select a.code, r.planned_on, count(*) as visits
                        from round r join site s on s.id = r.site_id join area a on a.id = s.area_id
                        where r.cancelled_at is null and r.planned_on >= ? group by a.code, r.planned_on""").param(first).query(row -> {
            visits.computeIfAbsent(row.getString("code"), area -> new HashMap<>())
                    .put(row.getObject("planned_on", LocalDate.class), row.getInt("visits"));
        });
        return visits;
    }

    private record Planned(long roundId, RoundTask task) {}

    private List<RoundView> read(String sql, Reach reach, Map<String, ?> params) {
        List<RoundView> heads = jdbc.sql(sql)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .params(params)
                .query((row, n) -> head(row))
                .list();
        Long[] ids = heads.stream().map(RoundView::id).toArray(Long[]::new);
        Map<Long, List<RoundTask>> tasks =
                jdbc
                        .sql("""
                        select d.*, b.name from round_duty d join battery_string b on b.id = d.string_id
                        where d.round_id = any (?) order by b.name, d.due_on, d.requirement""")
                        .param(ids)
                        .query((row, n) -> new Planned(row.getLong("round_id"), task(row)))
                        .list()
                        .stream()
                        .collect(Collectors.groupingBy(
                                Planned::roundId, Collectors.mapping(Planned::task, Collectors.toList())));
        return heads.stream()
                .map(head -> head.with(tasks.getOrDefault(head.id(), List.of())))
                .toList();
    }

    private static RoundTask task(ResultSet row) throws SQLException {
        String requirement = row.getString("requirement");
        return new RoundTask(
                row.getLong("string_id"),
                row.getString("name"),
                requirement,
                requirement,
                row.getObject("due_on", LocalDate.class),
                false);
    }

    private static RoundView head(ResultSet row) throws SQLException {
        @Nullable String cancelled = row.getString("cancelled_because");
        return new RoundView(
                row.getLong("id"),
                row.getString("site_code"),
                row.getString("site_name"),
                row.getString("area_code"),
                row.getString("area_name"),
                row.getObject("planned_on", LocalDate.class),
                row.getString("crew"),
                row.getString("note"),
                row.getInt("sequence"),
                row.getTimestamp("made_at").toInstant(),
                row.getTimestamp("changed_at").toInstant(),
                cancelled,
                List.of());
    }
}
