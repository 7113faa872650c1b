package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.EDIT_REGISTER;
import static org.ohmstead.access.Permission.SEE_ESTATE;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.assessment.model.estate.CapacityLimit;
import org.ohmstead.assessment.model.estate.ReferenceLevel;
import org.ohmstead.assessment.model.estate.TestedJar;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.UnitConstants;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.JarTypeView;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.Refused;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What the estate's own jars teach of their type: what new ones read, how they differ, and at which rise they lose their
 * capacity. Shown first, applied by a person, versioned; nothing is learned by itself.
 */
@Service
@Transactional
public class JarTypeLessons {

    /** How far the standard limit is believed, and how far jars are believed to differ, before any test of the type. */
    private static final double LIMIT_BELIEF = 0.12;

    private static final double DIFFERING_BELIEF = 0.4;

    private final FleetRegister register;
    private final LessonTable table;
    private final LearnedValues values;
    private final List<TestedJars> tests;
    private final EstateRun estateRun;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    JarTypeLessons(
            FleetRegister register,
            LessonTable table,
            LearnedValues values,
            List<TestedJars> tests,
            EstateRun estateRun,
            Access access,
            AuditTrail audit,
            Clock clock) {
        this.register = register;
        this.table = table;
        this.values = values;
        this.tests = tests;
        this.estateRun = estateRun;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    /** Of every jar type, over the whole estate: jar types belong to no area. */
    @Transactional(readOnly = true)
    public List<Lesson> all() {
        access.require(SEE_ESTATE);
        Map<String, Lesson.Learned> inForce = table.inForce();
        Map<String, List<TestedJar>> tested = tested();
        return register.jarTypes().stream()
                .filter(type -> type.retiredOn() == null)
                .map(type -> lesson(type, tested.getOrDefault(type.code(), List.of()), inForce.get(type.code())))
                .toList();
    }

    @Transactional(readOnly = true)
    public Lesson of(String jarTypeCode) {
        access.require(SEE_ESTATE);
        return lesson(
                register.jarType(jarTypeCode),
                tested().getOrDefault(jarTypeCode, List.of()),
                table.inForce().get(jarTypeCode));
    }

    /** The rise at which a jar of the string's type is taken to fail its purpose: the learned one, else the standard one. */
    @Transactional(readOnly = true)
    public double limitRise(long stringId) {
        access.require(SEE_ESTATE);
        Lesson.Learned learned = table.inForce().get(register.string(stringId).jarTypeCode());
        CapacityLimit limit = learned == null ? null : learned.limit();
        return Math.expm1(limit == null ? ForecastParameters.standard().jars().logLimit() : limit.logLimit());
    }

    private Map<String, List<TestedJar>> tested() {
        return tests.stream()
                .flatMap(source -> source.byJarType().entrySet().stream())
                .collect(Collectors.toMap(
                        Map.Entry::getKey,
                        Map.Entry::getValue,
                        (some, more) ->
                                Stream.concat(some.stream(), more.stream()).toList()));
    }

    private Lesson lesson(JarTypeView type, List<TestedJar> tested, Lesson.@Nullable Learned inForce) {
        UnitConstants standard = ForecastParameters.standard().jars();
        CapacityLimit.Belief before = new CapacityLimit.Belief(
                standard.logLimit(), LIMIT_BELIEF, standard.logLimitSpread(), DIFFERING_BELIEF);
        return new Lesson(
                type.code(),
                ReferenceLevel.learn(table.settled(type.code())),
                type.entry().referenceOhmic() == null,
                CapacityLimit.learn(tested, before),
                tested.size(),
                (int) tested.stream().filter(TestedJar::failed).count(),
                inForce);
    }

    /**
     * Applies what was shown; the strings of the type are judged anew by a walk.
     *
     * @param key of the lesson as it was shown
     * @throws Conflict when the estate teaches something else by now
     */
    public Lesson apply(String jarTypeCode, String key) {
        access.require(EDIT_REGISTER);
        Lesson lesson = of(jarTypeCode);
        if (!lesson.key().equals(key)) {
            throw new Conflict("The estate has taught something else of " + jarTypeCode
                    + " since this was shown. Look at it again before you apply it.");
        }
        if (!lesson.teaches()) {
            throw new Refused("The estate teaches nothing of " + jarTypeCode + " yet.");
        }
        add(register.jarType(jarTypeCode), lesson.reference(), lesson.limit(), "lesson of jar type applied");
        return of(jarTypeCode);
    }

    /** Lets the standard values hold again; nothing changes when nothing was applied. */
    public Lesson takeBack(String jarTypeCode) {
        access.require(EDIT_REGISTER);
        if (of(jarTypeCode).inForce() != null) {
            add(register.jarType(jarTypeCode), null, null, "lesson of jar type taken back");
        }
        return of(jarTypeCode);
    }

    private void add(
            JarTypeView type, @Nullable ReferenceLevel reference, @Nullable CapacityLimit limit, String action) {
        int version = table.lastVersion(type.id()) + 1;
        String by = access.current().username();
        table.add(type.id(), version, clock.instant(), by, reference, limit);
        values.refresh();
        Map<String, Object> detail = new LinkedHashMap<>();
        detail.put("version", version);
        detail.put("reference", reference == null ? null : reference.value());
        detail.put("logLimit", limit == null ? null : limit.logLimit());
        audit.record(action, "jar type", type.code(), null, detail);
        estateRun.request(by);
    }
}
