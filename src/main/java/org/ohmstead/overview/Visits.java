package org.ohmstead.overview;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.ohmstead.ledger.SurveyEntry;
import org.ohmstead.ledger.SurveyLedger;
import org.springframework.stereotype.Component;

/** What came in lately. */
@Component
class Visits {

    private static final int MOST = 400;
    private static final int SHOWN = 6;

    private final SurveyLedger ledger;
    private final Clock clock;

    Visits(SurveyLedger ledger, Clock clock) {
        this.ledger = ledger;
        this.clock = clock;
    }

    EstateView.Week lastWeek() {
        Instant weekAgo = clock.instant().minus(Duration.ofDays(7));
        List<SurveyEntry> week = ledger.recent(MOST).stream()
                .filter(entry -> entry.stands() && !entry.takenAt().isBefore(weekAgo))
                .toList();
        int strings = (int) week.stream().map(SurveyEntry::stringId).distinct().count();
        return new EstateView.Week(
                week.size(),
                strings,
                week.stream().limit(SHOWN).map(Visits::visit).toList());
    }

    List<EstateView.Visit> at(long siteId) {
        return ledger.recentAt(siteId, 2 * SHOWN).stream()
                .filter(SurveyEntry::stands)
                .limit(SHOWN)
                .map(Visits::visit)
                .toList();
    }

    private static EstateView.Visit visit(SurveyEntry entry) {
        return new EstateView.Visit(
                entry.surveyId(),
                entry.stringId(),
                entry.siteName() + " · " + entry.stringName(),
                entry.takenOn(),
                entry.takenBy());
    }
}
