package org.ohmstead.ledger;

import static org.ohmstead.access.Permission.HAND_IN_SURVEYS;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.ohmstead.kernel.NotFound;
import org.ohmstead.kernel.Refused;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Takes whole histories into the ledger, fast and as often as one likes: what is there already is not doubled. */
@Service
public class BulkLedger {

    /** Surveys held in memory at a time. */
    private static final int BATCH = 1_000;

    private final SurveyCopy copy;
    private final StringPlaces places;
    private final Access access;
    private final AuditTrail audit;
    private final ApplicationEventPublisher events;
    private final Announcer announcer;

    BulkLedger(
            SurveyCopy copy,
            StringPlaces places,
            Access access,
            AuditTrail audit,
            ApplicationEventPublisher events,
            Announcer announcer) {
        this.copy = copy;
        this.places = places;
        this.access = access;
        this.audit = audit;
        this.events = events;
        this.announcer = announcer;
    }

    /**
     * Stores the surveys in one transaction: all of them or, when one is refused, none. A survey whose string, instant
     * and content are in the ledger already, standing or withdrawn, is left out; one that contradicts a recorded survey
     * of the same string and instant is left out and returned. Announces {@link HistoryLoaded} at the end.
     *
     * @throws NotFound when a string does not exist or lies out of reach
     * @throws Refused when a survey has not as many positions as its string
     */
    @Transactional
    public BulkOutcome copyIn(Stream<NewSurvey> surveys) {
        access.require(HAND_IN_SURVEYS);
        copy.waitForOtherLoads();
        BulkTally tally = new BulkTally();
        Iterator<NewSurvey> all = surveys.iterator();
        while (all.hasNext()) {
            load(nextBatch(all), tally);
        }
        announce(tally);
        return tally.outcome();
    }

    /**
     * Does work that accepts surveys of a history one by one: they are not announced each, because {@link #announce(Set)}
     * does it once for all of them.
     */
    public <T> T quietly(Supplier<T> work) {
        access.require(HAND_IN_SURVEYS);
        return announcer.quietly(work);
    }

    /** Announces {@link HistoryLoaded} for surveys that were accepted quietly. */
    @Transactional
    public void announce(Set<Long> stringIds) {
        access.require(HAND_IN_SURVEYS);
        audit.record("survey history loaded", "ledger", "", null, Map.of("strings", stringIds.size()));
        events.publishEvent(new HistoryLoaded(Set.copyOf(stringIds)));
    }

    private void load(List<NewSurvey> batch, BulkTally tally) {
        Map<Long, StringPlace> where = places.of(batch.stream()
                .map(survey -> survey.facts().stringId())
                .distinct()
                .toList());
        where.values().forEach(place -> access.require(HAND_IN_SURVEYS, place.areaId()));
        for (NewSurvey survey : batch) {
            Objects.requireNonNull(where.get(survey.facts().stringId())).requireLengthOf(survey);
        }
        List<NewSurvey> fresh = tally.sort(batch, copy.recorded(batch));
        copy.write(fresh);
    }

    private void announce(BulkTally tally) {
        BulkOutcome outcome = tally.outcome();
        if (outcome.stored() > 0) {
            Map<String, Long> detail = Map.of("stored", outcome.stored(), "already there", outcome.alreadyThere());
            audit.record("survey history loaded", "ledger", "", null, detail);
            events.publishEvent(new HistoryLoaded(tally.stringIds()));
        }
    }

    private static List<NewSurvey> nextBatch(Iterator<NewSurvey> all) {
        List<NewSurvey> batch = new ArrayList<>(BATCH);
        while (batch.size() < BATCH && all.hasNext()) {
            batch.add(all.next());
        }
        return batch;
    }
}
