package org.ohmstead.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Decides which surveys of a bulk load are new, and counts. */
final class BulkTally {

    private long stored;
    private long alreadyThere;
    private final List<SurveyFacts> contradicting = new ArrayList<>();
    private final Set<Long> stringIds = new HashSet<>();

    private record Moment(long stringId, Instant takenAt) {
        static Moment of(SurveyFacts facts) {
            return new Moment(facts.stringId(), facts.takenAt());
        }
    }

    private record Content(SurveyFacts facts, Readings readings) {
        byte[] fingerprint() {
            return SurveyWire.fingerprint(facts, readings);
        }
    }

    /** The surveys of the batch to be stored; recorded: what the ledger holds of the same strings and instants. */
    List<NewSurvey> sort(List<NewSurvey> batch, List<SurveyRecord> recorded) {
        Map<Moment, List<Content>> known = new HashMap<>();
        recorded.forEach(survey -> remember(known, survey.facts(), survey.readings()));
        List<NewSurvey> fresh = new ArrayList<>(batch.size());
        for (NewSurvey survey : batch) {
            if (isNew(survey, known.get(Moment.of(survey.facts())))) {
                remember(known, survey.facts(), survey.readings());
                stringIds.add(survey.facts().stringId());
                fresh.add(survey);
            }
        }
        stored += fresh.size();
        return fresh;
    }

    Set<Long> stringIds() {
        return Set.copyOf(stringIds);
    }

    BulkOutcome outcome() {
        return new BulkOutcome(stored, alreadyThere, contradicting);
    }

    private boolean isNew(NewSurvey survey, @Nullable List<Content> sameMoment) {
        if (sameMoment == null) {
            return true;
        }
        byte[] fingerprint = SurveyWire.fingerprint(survey.facts(), survey.readings());
        if (sameMoment.stream().anyMatch(known -> Arrays.equals(known.fingerprint(), fingerprint))) {
            alreadyThere++;
        } else {
            contradicting.add(survey.facts());
        }
        return false;
    }

    private static void remember(Map<Moment, List<Content>> known, SurveyFacts facts, Readings readings) {
        known.computeIfAbsent(Moment.of(facts), moment -> new ArrayList<>()).add(new Content(facts, readings));
    }
}
