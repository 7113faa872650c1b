package org.ohmstead.assessment;

import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.access.Access;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringBlueprint;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The judgement of every string as of its last survey: kept up to date on arrival, stored append-only. */
@Service
public class Assessments {

    static final String ACTOR = "assessment";

    private final FleetRegister register;
    private final SurveyLedger ledger;
    private final AssessmentReader reader;
    private final AssessmentWriter writer;
    private final EstateRun estateRun;
    private final Overruling overruling;
    private final Access access;
    private final ApplicationEventPublisher events;
    private final Clock clock;
    private final Judging judging;
    private final Instruments instruments;

    Assessments(
            FleetRegister register,
            SurveyLedger ledger,
            AssessmentReader reader,
            AssessmentWriter writer,
            EstateRun estateRun,
            Overruling overruling,
            Access access,
            ApplicationEventPublisher events,
            Clock clock,
            Judging judging,
            Instruments instruments) {
        this.register = register;
        this.ledger = ledger;
        this.reader = reader;
        this.writer = writer;
        this.estateRun = estateRun;
        this.overruling = overruling;
        this.access = access;
        this.events = events;
        this.clock = clock;
        this.judging = judging;
        this.instruments = instruments;
    }

    /**
     * The assessment in force.
     *
     * @throws NotFound when there is no such string within reach, or it was never assessed
     */
    @Transactional(readOnly = true)
    public AssessmentView latest(long stringId) {
        return find(stringId).orElseThrow(() -> NotFound.of("assessment of string", stringId));
    }

    /**
     * The assessment in force, if the string has one.
     *
     * @throws NotFound when there is no such string within reach
     */
    @Transactional(readOnly = true)
    public Optional<AssessmentView> find(long stringId) {
        access.require(SEE_ESTATE);
        register.requireString(stringId);
        return reader.latest(stringId).map(instruments::doubted);
    }

    /** The judgements in force of the strings in reach among those, in three queries however many; those never judged are left out. */
    @Transactional(readOnly = true)
    public List<StringJudgement> judgements(Collection<Long> stringIds) {
        access.require(SEE_ESTATE);
        return reader.judgements(stringIds, access.reach());
    }

    /** Where the lines are drawn: the defaults with what the owner set instead. */
    public Limits limits() {
        access.require(SEE_ESTATE);
        return judging.limits();
    }

    /** How the strings in reach stand, what people overruled included, the most urgent first; those never assessed are left out. */
    @Transactional(readOnly = true)
    public List<StringStanding> standings() {
        access.require(SEE_ESTATE);
        Map<Long, Asked> overruled = overruling.asked();
        return reader.standings(access.reach()).stream()
                .map(standing -> standing.heard(overruled.get(standing.stringId())))
                .sorted(Comparator.comparing(StringStanding::urgency).reversed())
                .toList();
    }

    /** Judges a string again; the same inputs change nothing. */
    @Transactional
    public AssessmentView assess(long stringId) {
        access.require(SEE_ESTATE);
        register.string(stringId);
        access.asSystem(ACTOR, () -> judge(stringId));
        return latest(stringId);
    }

    /**
     * Walks the whole estate now and judges every string with news; see {@link EstateRun}.
     *
     * @return the finished walk
     */
    public RunView reassessEstate() {
        access.require(SETTLE_SURVEYS);
        return estateRun.walk(access.current().username());
    }

    /** Asks for such a walk in the background; while one is under way that one is returned. */
    @Transactional
    public RunView requestEstateRun() {
        access.require(SETTLE_SURVEYS);
        return estateRun.request(access.current().username());
    }

    /** The walk asked for last, with its progress. */
    @Transactional(readOnly = true)
    public Optional<RunView> lastRun() {
        access.require(SEE_ESTATE);
        return estateRun.last();
    }

    /** In the transaction of whatever made it necessary. */
    void judge(long stringId) {
        writer.lock(stringId);
        StringBlueprint blueprint = register.blueprint(stringId);
        List<SurveyRecord> surveys = ledger.surveysOf(stringId);
        LocalDate today = LocalDate.ofInstant(clock.instant(), blueprint.site().timeZone());
        StringHistory history = Histories.of(blueprint, surveys, today);
        Judged judged = judging.judgeAnew(history);
        if (!writer.isInForce(stringId, judged.fingerprint())) {
            writer.store(List.of(judged));
        }
        events.publishEvent(announcement(judged.judgement()));
    }

    static StringAssessed announcement(StringJudgement judgement) {
        LocalDate surveyedOn = judgement.surveyId() == null ? null : judgement.asOf();
        LocalDate riskOn =
                judgement.riskDate() == null ? null : judgement.riskDate().on();
        return new StringAssessed(judgement.stringId(), surveyedOn, judgement.recheckBy(), riskOn, judgement);
    }
}
