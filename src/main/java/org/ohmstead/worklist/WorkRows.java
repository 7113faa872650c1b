package org.ohmstead.worklist;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
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

/** Items and events as they stand in the columns of their tables, in the order of the statements of {@link WorkTable}. */
final class WorkRows {

    private WorkRows() {}

    static Object[] added(WorkItem item, long id, Timestamp now) {
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

    static @Nullable Object[] changed(WorkItem item, Timestamp now) {
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

    static @Nullable Object[] noted(Step step, long id, Timestamp now, String by, boolean byService) {
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
        return new WorkKey(WorkKind.valueOf(row.getString("kind")), subject(row));
    }

    static Subject subject(ResultSet row) throws SQLException {
        return new Subject(
                Subject.Kind.valueOf(row.getString("subject")),
                row.getObject("unit", Integer.class),
                row.getString("requirement"));
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
