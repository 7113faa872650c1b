package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.OVERRULE;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.assessment.OverruleView.Subject;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.fleet.StringView;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Urgency;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Where people know better than the engine: with a reason, for a time, beside what the engine says. */
@Service
@Transactional
public class Overruling {

    private record Judged(Urgency urgency, @Nullable LocalDate since) {}

    private final FleetRegister register;
    private final AssessmentReader reader;
    private final OverruleTable table;
    private final Access access;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final Clock clock;

    Overruling(
            FleetRegister register,
            AssessmentReader reader,
            OverruleTable table,
            Access access,
            AuditTrail audit,
            ApplicationEventPublisher events,
            Clock clock) {
        this.register = register;
        this.reader = reader;
        this.table = table;
        this.access = access;
        this.audit = audit;
        this.events = events;
        this.clock = clock;
    }

    /**
     * Puts a person's urgency in place of the engine's; one that stands for the same thing ends.
     *
     * @throws Refused without a reason, with a last day that is past or too far, or when the engine says the same
     */
    public OverruleView overrule(long stringId, NewOverrule wanted) {
        StringView string = register.string(stringId);
        access.require(OVERRULE, string.areaId());
        wanted.check(today(stringId));
        Judged judged = judged(judgement(stringId), wanted);
        if (judged.urgency() == wanted.urgency()) {
            throw new Refused("The engine says " + judged.urgency().word() + " itself: there is nothing to overrule.");
        }
        String by = access.current().username();
        table.of(stringId).stream()
                .filter(one -> one.endedAt() == null && one.isAbout(wanted.subject(), wanted.unit()))
                .forEach(one -> table.end(one.id(), by));
        OverruleView made = table.find(table.add(stringId, wanted, judged.since(), judged.urgency(), by))
                .orElseThrow();
        note("judgement overruled", string, made);
        events.publishEvent(new OverrulesChanged(stringId));
        return made;
    }

    /** Ends it before its day; nothing changes when it was ended already. */
    public OverruleView end(long id) {
        access.require(SEE_ESTATE);
        OverruleView found = table.find(id).orElseThrow(() -> NotFound.of("overruled judgement", id));
        StringView string = register.string(found.stringId());
        access.require(OVERRULE, string.areaId());
        if (found.endedAt() == null) {
            table.end(id, access.current().username());
            note("overruling ended", string, found);
            events.publishEvent(new OverrulesChanged(found.stringId()));
        }
        return table.find(id).orElseThrow();
    }

    /** All of a string, the ended ones too, newest first. */
    @Transactional(readOnly = true)
    public List<OverruleView> of(long stringId) {
        access.require(SEE_ESTATE);
        register.string(stringId);
        return table.of(stringId);
    }

    /** What a string asks with what is overruled today. */
    @Transactional(readOnly = true)
    public Asked asked(StringJudgement judgement) {
        access.require(SEE_ESTATE);
        return Asked.of(judgement, of(judgement.stringId()), today(judgement.stringId()));
    }

    /** The same of many strings in one query; those for which nothing is overruled are left out. */
    @Transactional(readOnly = true)
    public Map<Long, Asked> asked(Collection<StringJudgement> judgements, Function<Long, LocalDate> today) {
        access.require(SEE_ESTATE);
        Map<Long, List<OverruleView>> standing =
                table
                        .standing(judgements.stream()
                                .map(StringJudgement::stringId)
                                .toList())
                        .stream()
                        .collect(Collectors.groupingBy(OverruleView::stringId));
        return judgements.stream()
                .filter(judgement -> standing.containsKey(judgement.stringId()))
                .map(judgement -> Asked.of(
                        judgement,
                        standing.getOrDefault(judgement.stringId(), List.of()),
                        today.apply(judgement.stringId())))
                .filter(asked -> !asked.inForce().isEmpty())
                .collect(Collectors.toMap(asked -> asked.judgement().stringId(), Function.identity()));
    }

    /** Of the strings in reach for which something is overruled today. */
    @Transactional(readOnly = true)
    public Map<Long, Asked> asked() {
        access.require(SEE_ESTATE);
        Map<Long, List<OverruleView>> standing =
                table.standing().stream().collect(Collectors.groupingBy(OverruleView::stringId));
        if (standing.isEmpty()) {
            return Map.of();
        }
        Map<Long, Asked> found = new LinkedHashMap<>();
        register.blueprints(List.copyOf(standing.keySet()))
                .forEach((stringId, blueprint) -> reader.latest(stringId)
                        .map(view -> Asked.of(
                                view.judgement(), standing.getOrDefault(stringId, List.of()), today(blueprint)))
                        .filter(asked -> !asked.inForce().isEmpty())
                        .ifPresent(asked -> found.put(stringId, asked)));
        return found;
    }

    private StringJudgement judgement(long stringId) {
        return reader.latest(stringId)
                .orElseThrow(() -> NotFound.of("assessment of string", stringId))
                .judgement();
    }

    private static Judged judged(StringJudgement judgement, NewOverrule wanted) {
        Integer unit = wanted.unit();
        if (wanted.subject() == Subject.STRING || unit == null) {
            return new Judged(judgement.urgency(), null);
        }
        return wanted.subject() == Subject.JAR
                ? judgement.jars().stream()
                        .filter(jar -> jar.position() == unit)
                        .findFirst()
                        .map((JarJudgement jar) -> new Judged(jar.urgency(), jar.sittingSince()))
                        .orElseThrow(() -> NotFound.of("jar", unit))
                : judgement.links().stream()
                        .filter(link -> link.ordinal() == unit)
                        .findFirst()
                        .map((LinkJudgement link) -> new Judged(link.urgency(), link.madeOn()))
                        .orElseThrow(() -> NotFound.of("link", unit));
    }

    private LocalDate today(long stringId) {
        return today(register.blueprint(stringId));
    }

    private LocalDate today(StringBlueprint blueprint) {
        return LocalDate.ofInstant(clock.instant(), blueprint.site().timeZone());
    }

    private void note(String action, StringView string, OverruleView one) {
        Map<String, Object> detail = new LinkedHashMap<>();
        detail.put("subject", one.subject().name());
        detail.put("unit", one.unit());
        detail.put("urgency", one.urgency().name());
        detail.put("insteadOf", one.insteadOf().name());
        detail.put("lastDay", one.lastDay().toString());
        detail.put("reason", one.reason());
        audit.record(action, "string", String.valueOf(string.id()), string.areaId(), detail);
    }
}
