package org.ohmstead.worklist;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.model.Evidence;
import org.ohmstead.worklist.model.Source;
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkEvent;
import org.ohmstead.worklist.model.WorkItem;
import org.ohmstead.worklist.model.WorkKey;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** The stored items and their events. */
@Component
class WorkTable {

    private static final String ADD = """
            insert into work_item (string_id, kind, subject, unit, requirement, raised_on, raised_at, changed_at, state, since,
                                   urgency, by_on, reason, source, asked_survey, asked_on, assignee, planned_on, round_id,
                                   done_on, done_by, done_note, done_by_record, proof_kind, proof_id, closed_reason,
                                   closed_by_service, quiet_until, id)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

    private static final String CHANGE = """
            update work_item
            set changed_at = ?, state = ?, since = ?, urgency = ?, by_on = ?, reason = ?, source = ?, asked_survey = ?,
                asked_on = ?, assignee = ?, planned_on = ?, round_id = ?, done_on = ?, done_by = ?, done_note = ?,
                done_by_record = ?, proof_kind = ?, proof_id = ?, closed_reason = ?, closed_by_service = ?, quiet_until = ?
            where id = ?""";

    private static final String NOTE = """
            insert into work_event (item_id, at, by, by_service, kind, day, note, evidence_kind, evidence_id, state, urgency,
                                    by_on, reason, assignee)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""";

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;
    private final Clock clock;

    WorkTable(JdbcClient jdbc, JdbcTemplate batches, Clock clock) {
        this.jdbc = jdbc;
        this.batches = batches;
        this.clock = clock;
    }

    /** One after the other writes to the items of a string. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lock(Collection<Long> stringIds) {
        jdbc.sql("select id from battery_string where id = any (?) order by id for no key update")
                .params(array(stringIds))
                .query(Long.class)
                .list();
    }

    private static List<Object> array(Collection<Long> ids) {
        return Arrays.asList((Object) ids.toArray(Long[]::new));
    }

    /** Of each string the open items, and those whose dismissal by a person may still hold; oldest first. */
    Map<Long, List<WorkItem>> lively(Collection<Long> stringIds) {
        Map<Long, List<WorkItem>> found = new HashMap<>();
        jdbc.sql("""
                        select * from work_item
                        where string_id = any (?)
                          and (state in ('RAISED', 'PLANNED', 'DONE')
                               or state = 'DISMISSED' and not closed_by_service
                                  and (quiet_until is null or quiet_until >= ?))
                        order by id""")
                .params(Arrays.asList(
                        stringIds.toArray(Long[]::new),
                        LocalDate.ofInstant(clock.instant(), java.time.ZoneOffset.UTC)
                                .minusDays(1)))
                .query(row -> {
                    WorkItem item = item(row);
                    found.computeIfAbsent(item.stringId(), id -> new ArrayList<>())
                            .add(item);
                });
        return found;
    }

    /** Those whose proof is that survey. */
    List<WorkItem> provenBy(long surveyId) {
        return jdbc.sql("select * from work_item where proof_kind = 'SURVEY' and proof_id = ? order by id")
                .param(surveyId)
                .query((row, n) -> item(row))
                .list();
    }

    /** Those of the string whose capacity test was voided. */
    List<WorkItem> provenByVoidedTests(long stringId) {
        return jdbc.sql("""
                        select * from work_item w
                        where string_id = ? and proof_kind = 'CAPACITY_TEST'
                          and not exists (select from standing_capacity_test t where t.id = w.proof_id)
                        order by id""").param(stringId).query((row, n) -> item(row)).list();
    }

    /** Whether the same work is open at that string as another item. */
    boolean isOpenElsewhere(WorkItem item) {
        return jdbc.sql("""
                        select exists (select from work_item
                          where string_id = ? and kind = ? and subject = ? and unit is not distinct from ?
                            and requirement is not distinct from ? and id <> ?
                            and state in ('RAISED', 'PLANNED', 'DONE'))""")
                .params(Arrays.asList(
                        item.stringId(),
                        item.key().kind().name(),
                        item.key().subject().kind().name(),
                        item.key().subject().unit(),
                        item.key().subject().requirement(),
                        item.id()))
                .query(Boolean.class)
                .single();
    }

    Optional<WorkItem> find(long id) {
        return jdbc.sql("select * from work_item where id = ?")
                .param(id)
                .query((row, n) -> item(row))
                .optional();
    }

    List<WorkItem> of(Collection<Long> ids) {
        return jdbc.sql("select * from work_item where id = any (?) order by string_id, id")
                .params(array(ids))
                .query((row, n) -> item(row))
                .list();
    }

    /**
     * Stores the items after their last step and every event; whoever calls holds the strings' locks.
     *
     * @return the ids of the items, by step
     */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<Long> store(List<Step> steps, String by, boolean byService) {
        Timestamp now = Timestamp.from(clock.instant());
        List<Long> ids = ids(steps);
        Map<Long, WorkItem> changed = new LinkedHashMap<>();
        List<Object[]> added = new ArrayList<>();
        List<Object[]> noted = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            if (step.after().id() == 0) {
                added.add(added(step.after(), ids.get(i), now));
            } else {
                changed.put(step.after().id(), step.after());
            }
            noted.add(noted(step, ids.get(i), now, by, byService));
        }
        // what closes makes room for what is raised
        batches.batchUpdate(
                CHANGE,
                changed.values().stream().map(item -> changed(item, now)).toList());
        batches.batchUpdate(ADD, added);
        batches.batchUpdate(NOTE, noted);
        return ids;
    }

    private List<Long> ids(List<Step> steps) {
        long missing = steps.stream().filter(step -> step.after().id() == 0).count();
        List<Long> fresh = missing == 0
                ? List.of()
                : jdbc.sql("select nextval('work_item_id') from generate_series(1, ?)")
                        .param(missing)
                        .query(Long.class)
                        .list();
        List<Long> ids = new ArrayList<>();
        int used = 0;
        for (Step step : steps) {
            ids.add(
                    step.after().id() == 0
                            ? fresh.get(used++)
                            : (Long) step.after().id());
        }
        return ids;
    }

    private static Object[] added(WorkItem item, long id, Timestamp now) {
        Subject subject = item.key().subject();
        List<@Nullable Object> row = new ArrayList<>(Arrays.asList(
                item.stringId(),
                item.key().kind().name(),
                subject.kind().name(),
                subject.unit(),
                subject.requirement(),
                item.raisedOn(),
                now));
        row.addAll(Arrays.asList(changed(item, now)));
        row.set(row.size() - 1, id);
        return row.toArray();
    }

    private static @Nullable Object[] changed(WorkItem item, Timestamp now) {
        WorkItem.Asked asked = item.asked();
        WorkItem.Plan plan = item.plan();
        WorkItem.Done done = item.done();
        WorkItem.Closing closing = item.closing();
        Evidence proof = item.proof();
        return new @Nullable Object[] {
            now,
            item.state().name(),
            asked.since(),
            asked.urgency().name(),
            asked.by(),
            asked.reason(),
            asked.source().name(),
            asked.surveyId(),
            asked.on(),
            plan.assignee(),
            plan.on(),
            plan.roundId(),
            done == null ? null : done.on(),
            done == null ? null : done.by(),
            done == null ? null : done.note(),
            done == null ? null : done.byRecord(),
            proof == null ? null : proof.kind().name(),
            proof == null ? null : proof.id(),
            closing == null ? null : closing.reason(),
            closing == null ? null : closing.byService(),
            closing == null ? null : closing.quietUntil(),
            item.id()
        };
    }

    private static @Nullable Object[] noted(Step step, long id, Timestamp now, String by, boolean byService) {
        WorkEvent event = step.event();
        WorkItem after = step.after();
        Evidence evidence = event.evidence();
        return new @Nullable Object[] {
            id,
            now,
            by,
            byService,
            event.kind().name(),
            event.day(),
            event.note(),
            evidence == null ? null : evidence.kind().name(),
            evidence == null ? null : evidence.id(),
            after.state().name(),
            after.asked().urgency().name(),
            after.asked().by(),
            after.asked().reason(),
            after.plan().assignee()
        };
    }

    static WorkItem item(ResultSet row) throws SQLException {
        return new WorkItem(
                row.getLong("id"),
                row.getLong("string_id"),
                key(row),
                row.getObject("raised_on", LocalDate.class),
                WorkState.valueOf(row.getString("state")),
                new WorkItem.Asked(
                        day(row, "since"),
                        Urgency.valueOf(row.getString("urgency")),
                        day(row, "by_on"),
                        row.getString("reason"),
                        Source.valueOf(row.getString("source")),
                        row.getObject("asked_survey", Long.class),
                        day(row, "asked_on")),
                new WorkItem.Plan(
                        row.getString("assignee"), day(row, "planned_on"), row.getObject("round_id", Long.class)),
                done(row),
                evidence(row, "proof_kind", "proof_id"),
                closing(row));
    }

    private static WorkKey key(ResultSet row) throws SQLException {
        Subject subject = new Subject(
                Subject.Kind.valueOf(row.getString("subject")),
                row.getObject("unit", Integer.class),
                row.getString("requirement"));
        return new WorkKey(WorkKind.valueOf(row.getString("kind")), subject);
    }

    private static WorkItem.@Nullable Done done(ResultSet row) throws SQLException {
        LocalDate on = day(row, "done_on");
        return on == null
                ? null
                : new WorkItem.Done(
                        on, row.getString("done_by"), row.getString("done_note"), row.getBoolean("done_by_record"));
    }

    private static WorkItem.@Nullable Closing closing(ResultSet row) throws SQLException {
        String reason = row.getString("closed_reason");
        return reason == null
                ? null
                : new WorkItem.Closing(reason, row.getBoolean("closed_by_service"), day(row, "quiet_until"));
    }

    static @Nullable Evidence evidence(ResultSet row, String kind, String id) throws SQLException {
        String found = row.getString(kind);
        return found == null ? null : new Evidence(Evidence.Kind.valueOf(found), row.getLong(id));
    }

    private static @Nullable LocalDate day(ResultSet row, String column) throws SQLException {
        return row.getObject(column, LocalDate.class);
    }
}
