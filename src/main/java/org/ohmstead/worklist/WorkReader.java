package org.ohmstead.worklist;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.Source;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkEvent;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** Reads the list as people look at it. */
@Component
class WorkReader {

    private static final String FROM = """
             from work_item w join battery_string b on b.id = w.string_id join site s on s.id = b.site_id
             join area a on a.id = s.area_id
            """;

    private static final String TODAY = "(cast(:now as timestamptz) at time zone s.time_zone)::date";

    private static final String WHERE = """
             where (:everywhere or s.area_id = any (:areaIds))
               and (cardinality(cast(:states as text[])) = 0 or w.state = any (:states))
               and (cast(:area as text) is null or a.code = :area)
               and (cast(:site as text) is null or s.code = :site)
               and (cast(:string as bigint) is null or w.string_id = :string)
               and (cardinality(cast(:kinds as text[])) = 0 or w.kind = any (:kinds))
               and (cardinality(cast(:urgencies as text[])) = 0 or w.urgency = any (:urgencies))
               and (cast(:assignee as text) is null or lower(w.assignee) = lower(:assignee))
               and (not :overdue or w.state in ('RAISED', 'PLANNED', 'DONE') and w.by_on <\s""" + TODAY + ")";

    private static final String ITEMS = "select w.*, b.name as string_name, b.positions, s.code as site_code,"
            + " a.code as area_code, w.state in ('RAISED', 'PLANNED', 'DONE') and coalesce(w.by_on < " + TODAY
            + ", false) as overdue" + FROM;

    private static final String ORDER = """
             order by case w.urgency when 'ACT' then 0 when 'PLAN' then 1 else 2 end, w.by_on nulls last, w.id""";

    private static final String EVENTS = """
            select e.*, s.time_zone from work_event e join work_item w on w.id = e.item_id
            join battery_string b on b.id = w.string_id join site s on s.id = b.site_id
            """;

    private static final String END_OF_DAY = "(cast(:day as date) + 1)::timestamp at time zone s.time_zone";

    /** The last word on each item by the end of a day. */
    private static final String UNRESOLVED = """
            select w.*, e.state as then_state, e.urgency as then_urgency, e.by_on as then_by, e.reason as then_reason,
                   e.assignee as then_assignee, b.name as string_name, b.positions, s.code as site_code, a.code as area_code
            """ + FROM + """
            join lateral (select * from work_event x where x.item_id = w.id and x.at <\s""" + END_OF_DAY + """
                          order by x.id desc limit 1) e on true
            where (:everywhere or s.area_id = any (:areaIds)) and (cast(:area as text) is null or a.code = :area)
              and w.raised_at <\s""" + END_OF_DAY + """
              and e.state in ('RAISED', 'PLANNED', 'DONE')
            order by case e.urgency when 'ACT' then 0 when 'PLAN' then 1 else 2 end, e.by_on nulls last, w.id""";

    private final JdbcClient jdbc;
    private final Clock clock;

    WorkReader(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    List<WorkItemView> items(WorkFilter filter, Reach reach, int from, int most) {
        return filtered(ITEMS + WHERE + ORDER + " limit :most offset :from", filter, reach)
                .param("most", most)
                .param("from", from)
                .query((row, n) -> view(row))
                .list();
    }

    void each(WorkFilter filter, Reach reach, Consumer<WorkItemView> consumer) {
        filtered(ITEMS + WHERE + ORDER, filter, reach).query(row -> {
            consumer.accept(view(row));
        });
    }

    Map<WorkState, Long> counts(WorkFilter filter, Reach reach) {
        Map<WorkState, Long> counts = new EnumMap<>(WorkState.class);
        for (WorkState state : WorkState.values()) {
            counts.put(state, 0L);
        }
        filtered("select w.state, count(*) as items" + FROM + WHERE + " group by w.state", filter, reach)
                .query(row -> {
                    counts.put(WorkState.valueOf(row.getString("state")), row.getLong("items"));
                });
        return counts;
    }

    private JdbcClient.StatementSpec filtered(String sql, WorkFilter filter, Reach reach) {
        return jdbc.sql(sql)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .param("states", names(filter.states()))
                .param("area", filter.area())
                .param("site", filter.site())
                .param("string", filter.stringId())
                .param("kinds", names(filter.kinds()))
                .param("urgencies", names(filter.urgencies()))
                .param("assignee", filter.assignee())
                .param("overdue", filter.overdue())
                .param("now", Timestamp.from(clock.instant()));
    }

    private static String[] names(java.util.Set<? extends Enum<?>> some) {
        return some.stream().map(Enum::name).toArray(String[]::new);
    }

    Optional<WorkItemView> find(long id, Reach reach) {
        return jdbc.sql(ITEMS + " where w.id = :id and (:everywhere or s.area_id = any (:areaIds))")
                .param("id", id)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .param("now", Timestamp.from(clock.instant()))
                .query((row, n) -> view(row))
                .optional();
    }

    /** Of one item, oldest first. */
    List<WorkEventView> events(long itemId) {
        return jdbc.sql(EVENTS + "where e.item_id = ? order by e.id")
                .param(itemId)
                .query((row, n) -> event(row))
                .list();
    }

    List<UnresolvedWork> unresolved(LocalDate day, @Nullable String area, Reach reach) {
        Map<Long, List<WorkEventView>> effort = new HashMap<>();
        Map<Long, UnresolvedWork> found = new LinkedHashMap<>();
        asOf(UNRESOLVED, day, area, reach).query(row -> {
            List<WorkEventView> events = new ArrayList<>();
            effort.put(row.getLong("id"), events);
            found.put(row.getLong("id"), unresolved(row));
        });
        jdbc.sql(EVENTS + "where e.item_id = any (:ids) and e.at < " + END_OF_DAY + " order by e.item_id, e.id")
                .param("ids", found.keySet().toArray(Long[]::new))
                .param("day", day)
                .query(row -> {
                    effort.getOrDefault(row.getLong("item_id"), new ArrayList<>())
                            .add(event(row));
                });
        return found.values().stream()
                .map(one -> withEffort(one, effort.getOrDefault(one.id(), List.of())))
                .toList();
    }

    private JdbcClient.StatementSpec asOf(String sql, LocalDate day, @Nullable String area, Reach reach) {
        return jdbc.sql(sql)
                .param("day", day)
                .param("area", area)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray());
    }

    private static UnresolvedWork withEffort(UnresolvedWork one, List<WorkEventView> effort) {
        return new UnresolvedWork(
                one.id(),
                one.stringId(),
                one.areaCode(),
                one.siteCode(),
                one.stringName(),
                one.kind(),
                one.what(),
                one.raisedOn(),
                one.state(),
                one.urgency(),
                one.by(),
                one.reason(),
                one.assignee(),
                effort);
    }

    private static UnresolvedWork unresolved(ResultSet row) throws SQLException {
        return new UnresolvedWork(
                row.getLong("id"),
                row.getLong("string_id"),
                row.getString("area_code"),
                row.getString("site_code"),
                row.getString("string_name"),
                WorkKind.valueOf(row.getString("kind")),
                WorkRows.subject(row).words(row.getInt("positions")),
                row.getObject("raised_on", LocalDate.class),
                WorkState.valueOf(row.getString("then_state")),
                Urgency.valueOf(row.getString("then_urgency")),
                row.getObject("then_by", LocalDate.class),
                row.getString("then_reason"),
                row.getString("then_assignee"),
                List.of());
    }

    private static WorkItemView view(ResultSet row) throws SQLException {
        Subject subject = WorkRows.subject(row);
        return new WorkItemView(
                row.getLong("id"),
                row.getLong("string_id"),
                row.getString("area_code"),
                row.getString("site_code"),
                row.getString("string_name"),
                WorkKind.valueOf(row.getString("kind")),
                subject.kind(),
                subject.unit(),
                subject.requirement(),
                subject.words(row.getInt("positions")),
                row.getObject("since", LocalDate.class),
                WorkState.valueOf(row.getString("state")),
                Urgency.valueOf(row.getString("urgency")),
                row.getObject("by_on", LocalDate.class),
                row.getBoolean("overdue"),
                row.getString("reason"),
                Source.valueOf(row.getString("source")),
                row.getObject("raised_on", LocalDate.class),
                row.getTimestamp("raised_at").toInstant(),
                row.getTimestamp("changed_at").toInstant(),
                row.getObject("asked_survey", Long.class),
                row.getObject("asked_on", LocalDate.class),
                row.getString("assignee"),
                row.getObject("planned_on", LocalDate.class),
                row.getObject("round_id", Long.class),
                row.getObject("done_on", LocalDate.class),
                row.getString("done_by"),
                row.getString("done_note"),
                WorkRows.evidence(row, "proof_kind", "proof_id"),
                row.getString("closed_reason"),
                row.getBoolean("closed_by_service"),
                row.getObject("quiet_until", LocalDate.class));
    }

    private static WorkEventView event(ResultSet row) throws SQLException {
        java.time.Instant at = row.getTimestamp("at").toInstant();
        return new WorkEventView(
                at,
                LocalDate.ofInstant(at, ZoneId.of(row.getString("time_zone"))),
                row.getString("by"),
                row.getBoolean("by_service"),
                WorkEvent.Kind.valueOf(row.getString("kind")),
                row.getObject("day", LocalDate.class),
                row.getString("note"),
                WorkRows.evidence(row, "evidence_kind", "evidence_id"),
                WorkState.valueOf(row.getString("state")),
                Urgency.valueOf(row.getString("urgency")),
                row.getObject("by_on", LocalDate.class),
                row.getString("reason"),
                row.getString("assignee"));
    }
}
