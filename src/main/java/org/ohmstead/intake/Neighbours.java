package org.ohmstead.intake;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.ohmstead.fleet.FleetRegister;
import org.ohmstead.fleet.StringView;
import org.ohmstead.intake.check.EarlierSurvey;
import org.ohmstead.intake.check.ForensicThresholds;
import org.ohmstead.ledger.SurveyLedger;
import org.ohmstead.ledger.SurveyRecord;
import org.springframework.stereotype.Component;

/** The strings for which another of the same site could be mistaken: those of as many jars. */
@Component
class Neighbours {

    /** Enough to know a string by; a site with more such strings than this offers the first ones only. */
    private static final int MOST_STRINGS = 12;

    private static final int SURVEYS_EACH = 4;

    private final FleetRegister register;
    private final SurveyLedger ledger;

    Neighbours(FleetRegister register, SurveyLedger ledger) {
        this.register = register;
        this.ledger = ledger;
    }

    /** Their last surveys, oldest first, by the string's title; nothing for strings too short to be recognised. */
    Map<String, List<EarlierSurvey>> of(StringView string) {
        if (string.positions() < ForensicThresholds.defaults().fewestJars()) {
            return Map.of();
        }
        Map<Long, String> titles = register.stringsOf(string.siteCode()).stream()
                .filter(other -> other.id() != string.id() && other.positions() == string.positions())
                .limit(MOST_STRINGS)
                .collect(Collectors.toMap(StringView::id, StringView::title));
        Map<String, List<EarlierSurvey>> surveys = new HashMap<>();
        for (SurveyRecord survey : ledger.latestOf(List.copyOf(titles.keySet()), SURVEYS_EACH)) {
            String title = titles.getOrDefault(survey.facts().stringId(), "");
            surveys.computeIfAbsent(title, name -> new java.util.ArrayList<>()).add(Expectations.earlier(survey));
        }
        return surveys;
    }
}
