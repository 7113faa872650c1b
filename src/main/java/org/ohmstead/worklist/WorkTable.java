package org.ohmstead.worklist;

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
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.WorkItem;
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
                .param(stringIds.toArray(Long[]::new))
                .query(Long.class)
                .list();
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
                    WorkItem item = WorkRows.item(row);
                    found.computeIfAbsent(item.stringId(), id -> new ArrayList<>())
                            .add(item);
                });
        return found;
    }

    /** Those whose proof is that survey. */
    List<WorkItem> provenBy(long surveyId) {
        return jdbc.sql("select * from work_item where proof_kind = 'SURVEY' and proof_id = ? order by id")
                .param(surveyId)
                .query((row, n) -> WorkRows.item(row))
                .list();
    }

    /** Those of the string whose capacity test was voided. */
    List<WorkItem> provenByVoidedTests(long stringId) {
        return jdbc.sql("""
                        select * from work_item w
                        where string_id = ? and proof_kind = 'CAPACITY_TEST'
                          and not exists (select from standing_capacity_test t where t.id = w.proof_id)
                        order by id""")
                .param(stringId)
                .query((row, n) -> WorkRows.item(row))
                .list();
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

    List<WorkItem> of(Collection<Long> ids) {
        return jdbc.sql("select * from work_item where id = any (?) order by string_id, id")
                .param(ids.toArray(Long[]::new))
                .query((row, n) -> WorkRows.item(row))
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
                added.add(WorkRows.added(step.after(), ids.get(i), now));
            } else {
                changed.put(step.after().id(), step.after());
            }
            noted.add(WorkRows.noted(step, ids.get(i), now, by, byService));
        }
        // what closes makes room for what is raised
        batches.batchUpdate(
                CHANGE,
                changed.values().stream()
                        .map(item -> WorkRows.changed(item, now))
                        .toList());
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
}
