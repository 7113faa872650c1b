package org.ohmstead.ledger;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;
import static org.ohmstead.access.Permission.SEE_ESTATE;
import static org.ohmstead.access.Permission.SETTLE_SURVEYS;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.ohmstead.access.Access;
import org.ohmstead.access.Permission;
import org.ohmstead.kernel.Conflict;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The accepted surveys of all strings. A survey is never changed: it is withdrawn, and a corrected one takes its place.
 * Every question and every act is limited to the areas in reach.
 */
@Service
public class SurveyLedger {

    private final SurveyReader reader;
    private final SurveyEntries entries;
    private final SurveyWriter writer;
    private final StringPlaces places;
    private final Access access;
    private final ApplicationEventPublisher events;
    private final Announcer announcer;

    SurveyLedger(
            SurveyReader reader,
            SurveyEntries entries,
            SurveyWriter writer,
            StringPlaces places,
            Access access,
            ApplicationEventPublisher events,
            Announcer announcer) {
        this.reader = reader;
        this.entries = entries;
        this.writer = writer;
        this.places = places;
        this.access = access;
        this.events = events;
        this.announcer = announcer;
    }

    /**
     * Adds a survey and announces {@link SurveyAccepted}, both in the caller's transaction if there is one.
     *
     * @return the survey's id
     * @throws NotFound when there is no such string within reach
     * @throws Refused when the survey has not as many positions as the string
     */
    @Transactional
    public long accept(NewSurvey survey) {
        StringPlace place = places.of(survey.facts().stringId());
        access.require(HAND_IN_SURVEYS, place.areaId());
        place.requireLengthOf(survey);
        long id = writer.insert(survey);
        writer.audit("accepted", id, place, Map.of("string", place.name()));
        announcer.accepted(place.stringId(), id);
        return id;
    }

    /**
     * Voids a survey that should not have been accepted.
     *
     * @throws Conflict when it is withdrawn already
     */
    @Transactional
    public void withdraw(long surveyId, String reason) {
        SurveyRecord survey = toSettle(surveyId, reason);
        requireStanding(survey);
        writer.withdraw(survey, null, reason);
        auditWithdrawal("voided", survey, Map.of("reason", reason));
        events.publishEvent(new SurveyWithdrawn(survey.facts().stringId(), surveyId));
    }

    /**
     * Lets another, standing survey of the same string take the place of this one.
     *
     * @throws Conflict when one of them is withdrawn already
     */
    @Transactional
    public void supersede(long surveyId, long supersededBy, String reason) {
        SurveyRecord survey = toSettle(surveyId, reason);
        SurveyRecord successor = toSettle(supersededBy, reason);
        requireStanding(survey);
        requireStanding(successor);
        requireSuccessor(survey, successor);
        writer.withdraw(survey, successor, reason);
        auditWithdrawal("superseded", survey, Map.of("reason", reason, "by", supersededBy));
        events.publishEvent(new SurveyWithdrawn(survey.facts().stringId(), surveyId));
    }

    /**
     * Lets a withdrawn survey count again.
     *
     * @throws Conflict when it is not withdrawn
     */
    @Transactional
    public void restore(long surveyId, String reason) {
        SurveyRecord survey = toSettle(surveyId, reason);
        if (survey.stands()) {
            throw new Conflict("Survey " + surveyId + " is not withdrawn; there is nothing to restore.");
        }
        writer.restore(survey, reason);
        auditWithdrawal("restored", survey, Map.of("reason", reason));
        announcer.accepted(survey.facts().stringId(), surveyId);
    }

    /**
     * Lets a superseded survey count again in place of the one that took its place, which is voided.
     *
     * @throws Conflict when it is not superseded by a survey that stands
     */
    @Transactional
    public void exchangeBack(long surveyId, String reason) {
        Withdrawal withdrawal = toSettle(surveyId, reason).withdrawal();
        Long successor = withdrawal == null ? null : withdrawal.supersededBy();
        if (successor == null) {
            throw new Conflict("No other survey took the place of survey " + surveyId + ".");
        }
        withdraw(successor, reason);
        restore(surveyId, reason);
    }

    /** The standing surveys of a string, oldest first. */
    @Transactional(readOnly = true)
    public List<SurveyRecord> surveysOf(long stringId) {
        requireInReach(SEE_ESTATE, stringId);
        return reader.standing(stringId);
    }

    /**
     * The latest standing surveys of several strings, oldest first, in one question.
     *
     * @throws NotFound when one of the strings does not exist or lies out of reach
     */
    @Transactional(readOnly = true)
    public List<SurveyRecord> latestOf(List<Long> stringIds, int each) {
        access.require(SEE_ESTATE);
        places.of(stringIds).values().forEach(place -> access.require(SEE_ESTATE, place.areaId()));
        return stringIds.isEmpty() ? List.of() : reader.latest(stringIds, each);
    }

    /** The surveys of a string, oldest first, with the withdrawn ones among them. */
    @Transactional(readOnly = true)
    public List<SurveyRecord> allSurveysOf(long stringId) {
        requireInReach(SEE_ESTATE, stringId);
        return reader.standingAndWithdrawn(stringId);
    }

    /** @throws NotFound when there is no such survey within reach */
    @Transactional(readOnly = true)
    public SurveyRecord survey(long surveyId) {
        return inReach(SEE_ESTATE, surveyId);
    }

    /** The surveys recorded last, latest first, over all areas in reach. */
    @Transactional(readOnly = true)
    public List<SurveyEntry> recent(int limit) {
        access.require(SEE_ESTATE);
        return entries.recorded(access.reach(), limit);
    }

    /** The surveys taken last at a site, latest first; none when the site is out of reach. */
    @Transactional(readOnly = true)
    public List<SurveyEntry> recentAt(long siteId, int limit) {
        access.require(SEE_ESTATE);
        return entries.takenAt(siteId, access.reach(), limit);
    }

    /**
     * Every standing survey in reach, string by string, each string's oldest first. Holds one string at a time in
     * memory. The consumer runs inside the transaction.
     */
    @Transactional(readOnly = true)
    public void streamAll(Consumer<StringSurveys> consumer) {
        access.require(SEE_ESTATE);
        StringGrouping grouping = new StringGrouping(consumer);
        reader.stream(access.reach(), grouping::add);
        grouping.finish();
    }

    private void requireInReach(Permission permission, long stringId) {
        access.require(permission, places.of(stringId).areaId());
    }

    private SurveyRecord inReach(Permission permission, long surveyId) {
        SurveyRecord survey = reader.find(surveyId).orElseThrow(() -> NotFound.of("survey", surveyId));
        requireInReach(permission, survey.facts().stringId());
        return survey;
    }

    /** Locks the survey first, so that two people settling it do so one after the other. */
    private SurveyRecord toSettle(long surveyId, String reason) {
        if (reason.isBlank()) {
            throw new Refused("Give the reason, so that others understand it later.");
        }
        writer.lock(surveyId);
        return inReach(SETTLE_SURVEYS, surveyId);
    }

    private void auditWithdrawal(String action, SurveyRecord survey, Map<String, ?> detail) {
        writer.audit(action, survey.id(), places.of(survey.facts().stringId()), detail);
    }

    private static void requireStanding(SurveyRecord survey) {
        if (!survey.stands()) {
            throw new Conflict("Survey " + survey.id() + " is withdrawn already; restore it first.");
        }
    }

    private static void requireSuccessor(SurveyRecord survey, SurveyRecord successor) {
        if (successor.id() == survey.id()
                || successor.facts().stringId() != survey.facts().stringId()) {
            throw new Conflict("A survey can only be superseded by another survey of its own string.");
        }
    }
}
