package org.ohmstead.worklist;

import static org.ohmstead.access.Permission.DO_WORK;
import static org.ohmstead.access.Permission.OVERRULE;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.access.Permission;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.worklist.WorkPlaces.Place;
import org.ohmstead.worklist.model.Step;
import org.ohmstead.worklist.model.WorkItem;
import org.ohmstead.worklist.model.WorkState;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The work list: what is to be done, and what became of it. Findings raise items by themselves, persons plan, do and dismiss
 * them, and only a later reading proves them.
 *
 * <p>Every act throws {@link NotFound} outside the reach, {@link Refused} when the entry breaks a rule, and {@link Conflict}
 * when the item's state does not allow it, with what to do instead. Acts on several items happen all or not at all.
 */
@Service
@Transactional
public class WorkList {

    private static final int MOST_PER_PAGE = 500;
    private static final int MOST_AT_ONCE = 500;

    private final WorkTable table;
    private final WorkReader reader;
    private final WorkPlaces places;
    private final WorkEntries entries;
    private final Demands demands;
    private final FleetRegister register;
    private final Access access;
    private final AuditTrail audit;

    WorkList(
            WorkTable table,
            WorkReader reader,
            WorkPlaces places,
            WorkEntries entries,
            Demands demands,
            FleetRegister register,
            Access access,
            AuditTrail audit) {
        this.table = table;
        this.reader = reader;
        this.places = places;
        this.entries = entries;
        this.demands = demands;
        this.register = register;
        this.access = access;
        this.audit = audit;
    }

    /**
     * Some of the items in reach, the most urgent first, then by their days.
     *
     * @param page from 0
     * @param size at most 500
     */
    @Transactional(readOnly = true)
    public WorkPage items(WorkFilter filter, int page, int size) {
        access.require(SEE_ESTATE);
        if (page < 0 || size < 1 || size > MOST_PER_PAGE) {
            throw new Refused("Pages count from 0 and hold 1 to " + MOST_PER_PAGE + " items.");
        }
        long total = counts(filter).values().stream().mapToLong(Long::longValue).sum();
        return new WorkPage(
                reader.items(filter, access.reach(), Math.multiplyExact(page, size), size), page, size, total);
    }

    /** All of them in the same order, however many; the consumer runs inside the transaction. */
    @Transactional(readOnly = true)
    public void each(WorkFilter filter, Consumer<WorkItemView> consumer) {
        access.require(SEE_ESTATE);
        reader.each(filter, access.reach(), consumer);
    }

    /** How many items the filter lets through, by state; every state is named. */
    @Transactional(readOnly = true)
    public Map<WorkState, Long> counts(WorkFilter filter) {
        access.require(SEE_ESTATE);
        return reader.counts(filter, access.reach());
    }

    /** @throws NotFound when there is none within reach */
    @Transactional(readOnly = true)
    public WorkItemLife item(long id) {
        access.require(SEE_ESTATE);
        return new WorkItemLife(view(id), reader.events(id));
    }

    /** The open ones of a string, the most urgent first. */
    @Transactional(readOnly = true)
    public List<WorkItemView> openOf(long stringId) {
        access.require(SEE_ESTATE);
        register.requireString(stringId);
        return reader.items(WorkFilter.OPEN.at(stringId), access.reach(), 0, Integer.MAX_VALUE);
    }

    /** All that ever were on the list of a string, the most urgent first. */
    @Transactional(readOnly = true)
    public List<WorkItemView> of(long stringId) {
        access.require(SEE_ESTATE);
        register.requireString(stringId);
        return reader.items(WorkFilter.EVERYTHING.at(stringId), access.reach(), 0, Integer.MAX_VALUE);
    }

    /**
     * What was open at the end of a day, by the calendar of each site, as it stood then, with what had been done about it:
     * what an auditor asks for at the end of a quarter.
     *
     * @param area code; null for all in reach
     */
    @Transactional(readOnly = true)
    public List<UnresolvedWork> unresolved(LocalDate asOf, @Nullable String area) {
        access.require(SEE_ESTATE);
        return reader.unresolved(asOf, area, access.reach());
    }

    /** @throws Conflict when the same work is on the list already */
    public WorkItemView raise(NewWork wanted) {
        StringView string = register.string(wanted.stringId());
        access.require(DO_WORK, string.areaId());
        table.lock(List.of(string.id()));
        Step step = entries.raise(wanted);
        long id = store(List.of(step)).get(0);
        note("work raised", id, string.areaId(), step.after(), wanted.reason());
        return view(id);
    }

    public List<WorkItemView> plan(Collection<Long> ids, WorkPlan wanted) {
        access.require(DO_WORK);
        return act("work planned", DO_WORK, ids, wanted.note(), entries.plan(wanted));
    }

    public WorkItemView plan(long id, WorkPlan wanted) {
        return plan(List.of(id), wanted).get(0);
    }

    /** @param assignee empty to name nobody */
    public List<WorkItemView> assign(Collection<Long> ids, String assignee) {
        access.require(DO_WORK);
        return act("work assigned", DO_WORK, ids, assignee, entries.assign(assignee));
    }

    /** Of a link its remake goes into the register, so that its new baseline starts on that day. */
    public WorkItemView done(long id, WorkReport report) {
        return act("work reported done", DO_WORK, List.of(id), report.note(), item -> entries.done(item, report))
                .get(0);
    }

    /**
     * Decides that it is not to be done.
     *
     * @param quietUntil the last day on which it is not raised anew, at most two years ahead; null: until a later survey
     *     asks for it again
     */
    public List<WorkItemView> dismiss(Collection<Long> ids, String reason, @Nullable LocalDate quietUntil) {
        access.require(OVERRULE);
        return act("work dismissed", OVERRULE, ids, reason, entries.dismiss(reason, quietUntil));
    }

    public WorkItemView dismiss(long id, String reason, @Nullable LocalDate quietUntil) {
        return dismiss(List.of(id), reason, quietUntil).get(0);
    }

    /** Takes back the last thing a person did to it; of a link's report the remake in the register as well. */
    public WorkItemView undo(long id, String note) {
        WorkState before = view(id).state();
        Permission needed = before == WorkState.DISMISSED ? OVERRULE : DO_WORK;
        return act("work taken back", needed, List.of(id), note, item -> entries.undo(item, note))
                .get(0);
    }

    /** Locks the strings, looks at the items as they are then, and stores every step or none. */
    private List<WorkItemView> act(
            String action, Permission permission, Collection<Long> wanted, String words, Function<WorkItem, Step> act) {
        access.require(permission);
        Set<Long> ids = new TreeSet<>(wanted);
        if (ids.isEmpty() || ids.size() > MOST_AT_ONCE) {
            throw new Refused("Choose 1 to " + MOST_AT_ONCE + " items.");
        }
        Map<Long, WorkItem> items = locked(permission, ids);
        List<Step> steps = items.values().stream().map(act).toList();
        store(steps);
        for (Step step : steps) {
            long area = place(step.after().stringId()).areaId();
            note(action, step.after().id(), area, step.after(), words);
        }
        return ids.stream().map(this::view).toList();
    }

    private Map<Long, WorkItem> locked(Permission permission, Set<Long> ids) {
        List<WorkItem> found = table.of(ids);
        Map<Long, Place> around =
                places.of(found.stream().map(WorkItem::stringId).toList());
        found.forEach(item -> requireInReach(permission, item, Objects.requireNonNull(around.get(item.stringId()))));
        if (found.size() < ids.size()) {
            Set<Long> missing = new TreeSet<>(ids);
            found.forEach(item -> missing.remove(item.id()));
            throw NotFound.of("work item", missing.iterator().next());
        }
        table.lock(found.stream().map(WorkItem::stringId).distinct().toList());
        return table.of(ids).stream()
                .collect(Collectors.toMap(WorkItem::id, Function.identity(), (one, other) -> one, LinkedHashMap::new));
    }

    private void requireInReach(Permission permission, WorkItem item, Place place) {
        if (!access.reach().covers(place.areaId())) {
            throw NotFound.of("work item", item.id());
        }
        access.require(permission, place.areaId());
    }

    private List<Long> store(List<Step> steps) {
        List<Long> ids = table.store(steps, access.current().username(), false);
        demands.settle(steps.stream()
                .map(Step::after)
                .filter(Demands::isReading)
                .map(WorkItem::stringId)
                .distinct()
                .toList());
        return ids;
    }

    private WorkItemView view(long id) {
        access.require(SEE_ESTATE);
        return reader.find(id, access.reach()).orElseThrow(() -> NotFound.of("work item", id));
    }

    private Place place(long stringId) {
        return Objects.requireNonNull(places.of(List.of(stringId)).get(stringId));
    }

    private void note(String action, long id, long areaId, WorkItem item, String words) {
        Map<String, Object> detail = new LinkedHashMap<>();
        detail.put("string", item.stringId());
        detail.put("kind", item.key().kind().name());
        detail.put("state", item.state().name());
        if (!words.isBlank()) {
            detail.put("words", words.strip());
        }
        audit.record(action, "work item", String.valueOf(id), areaId, detail);
    }
}
