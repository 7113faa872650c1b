package org.ohmstead.worklist.web;

import java.net.URI;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.worklist.NewWork;
import org.ohmstead.worklist.UnresolvedWork;
import org.ohmstead.worklist.WorkFilter;
import org.ohmstead.worklist.WorkItemLife;
import org.ohmstead.worklist.WorkItemView;
import org.ohmstead.worklist.WorkList;
import org.ohmstead.worklist.WorkPage;
import org.ohmstead.worklist.WorkPlan;
import org.ohmstead.worklist.WorkReport;
import org.ohmstead.worklist.model.Subject;
import org.ohmstead.worklist.model.WorkKind;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.http.ResponseEntity;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** The work list for programs. A step that an item's state does not allow is answered 409 with what to do instead. */
@RestController
class WorkResource {

    private static final String DEFAULT_SIZE = "100";

    private final WorkList work;
    private final WorkCsv csv;
    private final Access access;

    WorkResource(WorkList work, WorkCsv csv, Access access) {
        this.work = work;
        this.csv = csv;
        this.access = access;
    }

    /** @param unit position of a jar, ordinal of a link; left out for the string */
    record Raising(
            @Nullable Long stringId,
            @Nullable WorkKind kind,
            Subject.@Nullable Kind subject,
            @Nullable Integer unit,
            @Nullable Urgency urgency,
            @Nullable LocalDate by,
            @Nullable String reason) {

        NewWork work() {
            return new NewWork(
                    required(stringId, "stringId"),
                    required(kind, "kind"),
                    required(subject, "subject"),
                    unit,
                    required(urgency, "urgency"),
                    by,
                    said(reason));
        }
    }

    /** One of day, round and assignee at least. */
    record Planning(
            @Nullable LocalDate on,
            @Nullable Long roundId,
            @Nullable String assignee,
            @Nullable String note) {

        WorkPlan plan() {
            return new WorkPlan(on, roundId, said(assignee), said(note));
        }
    }

    record Reporting(
            @Nullable LocalDate on,
            @Nullable String by,
            @Nullable String note,
            @Nullable Double asFoundMicroohms,
            @Nullable Double asLeftMicroohms) {

        WorkReport report() {
            return new WorkReport(required(on, "on"), said(by), said(note), asFoundMicroohms, asLeftMicroohms);
        }
    }

    /** @param quietUntil left out: until a later survey asks again */
    record Dismissing(@Nullable String reason, @Nullable LocalDate quietUntil) {}

    record Reopening(@Nullable String note) {}

    /** What is to be done with several items at once. */
    enum BulkAct {
        PLAN,
        ASSIGN,
        DISMISS
    }

    /** What the act does not need is left out; it happens to all of the items or to none. */
    record Bulk(
            @Nullable BulkAct act,
            @Nullable List<Long> ids,
            @Nullable Planning plan,
            @Nullable String assignee,
            @Nullable Dismissing dismissal) {}

    /** The most urgent first. Whatever is left out leaves nothing out; without a state the open ones are given. */
    @GetMapping("/api/work")
    WorkPage list(
            @RequestParam(required = false) @Nullable Set<WorkState> state,
            @RequestParam(required = false) @Nullable String area,
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable Long string,
            @RequestParam(required = false) @Nullable Set<WorkKind> kind,
            @RequestParam(required = false) @Nullable Set<Urgency> urgency,
            @RequestParam(defaultValue = "false") boolean overdue,
            @RequestParam(required = false) @Nullable String assignee,
            @RequestParam(defaultValue = "0") int page,
            @RequestParam(defaultValue = DEFAULT_SIZE) int size) {
        return work.items(filter(state, area, site, string, kind, urgency, overdue, assignee), page, size);
    }

    /** The same as CSV (RFC 4180), all of it. */
    @GetMapping("/api/work.csv")
    ResponseEntity<byte[]> file(
            @RequestParam(required = false) @Nullable Set<WorkState> state,
            @RequestParam(required = false) @Nullable String area,
            @RequestParam(required = false) @Nullable String site,
            @RequestParam(required = false) @Nullable Long string,
            @RequestParam(required = false) @Nullable Set<WorkKind> kind,
            @RequestParam(required = false) @Nullable Set<Urgency> urgency,
            @RequestParam(defaultValue = "false") boolean overdue,
            @RequestParam(required = false) @Nullable String assignee) {
        return csv.of(filter(state, area, site, string, kind, urgency, overdue, assignee));
    }

    private static WorkFilter filter(
            @Nullable Set<WorkState> state,
            @Nullable String area,
            @Nullable String site,
            @Nullable Long string,
            @Nullable Set<WorkKind> kind,
            @Nullable Set<Urgency> urgency,
            boolean overdue,
            @Nullable String assignee) {
        return new WorkFilter(
                state == null || state.isEmpty() ? WorkFilter.OPEN_STATES : state,
                area,
                site,
                string,
                kind == null ? Set.of() : kind,
                urgency == null ? Set.of() : urgency,
                overdue,
                assignee);
    }

    @GetMapping("/api/work/counts")
    Map<WorkState, Long> counts(@RequestParam(required = false) @Nullable String area) {
        return work.counts(WorkFilter.EVERYTHING.ofArea(area));
    }

    /** What was open at the end of that day, by each site's calendar, with the evidence of effort. */
    @GetMapping("/api/work/unresolved")
    List<UnresolvedWork> unresolved(
            @RequestParam LocalDate asOf, @RequestParam(required = false) @Nullable String area) {
        return work.unresolved(asOf, area);
    }

    @GetMapping("/api/work/{id}")
    WorkItemLife one(@PathVariable long id) {
        return work.item(id);
    }

    @GetMapping("/api/strings/{stringId}/work")
    List<WorkItemView> ofString(@PathVariable long stringId) {
        return work.of(stringId);
    }

    @PostMapping("/api/work")
    ResponseEntity<WorkItemView> raise(@RequestBody Raising wanted) {
        access.require(Permission.DO_WORK);
        WorkItemView raised = work.raise(wanted.work());
        return ResponseEntity.created(URI.create("/api/work/" + raised.id())).body(raised);
    }

    @PostMapping("/api/work/{id}/plan")
    WorkItemView plan(@PathVariable long id, @RequestBody Planning plan) {
        return work.plan(id, plan.plan());
    }

    @PostMapping("/api/work/{id}/done")
    WorkItemView done(@PathVariable long id, @RequestBody Reporting report) {
        access.require(Permission.DO_WORK);
        return work.done(id, report.report());
    }

    @PostMapping("/api/work/{id}/dismiss")
    WorkItemView dismiss(@PathVariable long id, @RequestBody Dismissing dismissal) {
        return work.dismiss(id, said(dismissal.reason()), dismissal.quietUntil());
    }

    /** Takes back the last plan, report or dismissal. */
    @PostMapping("/api/work/{id}/reopen")
    WorkItemView reopen(@PathVariable long id, @RequestBody Reopening reopening) {
        return work.undo(id, said(reopening.note()));
    }

    @PostMapping("/api/work/bulk")
    List<WorkItemView> bulk(@RequestBody Bulk bulk) {
        access.require(Permission.DO_WORK);
        List<Long> ids = required(bulk.ids(), "ids");
        return switch (required(bulk.act(), "act")) {
            case PLAN -> work.plan(ids, required(bulk.plan(), "plan").plan());
            case ASSIGN -> work.assign(ids, said(bulk.assignee()));
            case DISMISS -> {
                Dismissing dismissal = required(bulk.dismissal(), "dismissal");
                yield work.dismiss(ids, said(dismissal.reason()), dismissal.quietUntil());
            }
        };
    }

    private static <T> T required(@Nullable T value, String name) {
        if (value == null) {
            throw new Refused("Give \"" + name + "\".");
        }
        return value;
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }
}
