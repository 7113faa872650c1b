package org.ohmstead.ledger;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import org.ohmstead.access.Access;
import org.ohmstead.copy.BinaryCopy;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Writes surveys straight into their table by binary COPY; the table's constraints hold as for any insert. */
@Component
class SurveyCopy {

    private static final String TABLE = "survey (" + SurveyWire.COLUMNS + ")";
    /** Names the lock under which bulk loads queue: "ledger" in letters of a telephone's keys. */
    private static final long BULK_LOCK = 533437L;

    private final JdbcTemplate jdbc;
    private final SurveyReader reader;
    private final Access access;
    private final Clock clock;

    SurveyCopy(JdbcTemplate jdbc, SurveyReader reader, Access access, Clock clock) {
        this.jdbc = jdbc;
        this.reader = reader;
        this.access = access;
        this.clock = clock;
    }

    /** One load at a time: two loads of the same history would not see each other's rows. */
    void waitForOtherLoads() {
        jdbc.query("select pg_advisory_xact_lock(?)", row -> {}, BULK_LOCK);
    }

    /** A string without any survey, as at its first load, is asked for once and not for each of its instants. */
    List<SurveyRecord> recorded(List<NewSurvey> batch) {
        Set<Long> surveyed = reader.surveyed(batch.stream()
                .map(survey -> survey.facts().stringId())
                .distinct()
                .toList());
        List<SurveyFacts> doubtful = batch.stream()
                .map(NewSurvey::facts)
                .filter(facts -> surveyed.contains(facts.stringId()))
                .toList();
        return doubtful.isEmpty() ? List.of() : reader.recordedAt(doubtful);
    }

    void write(List<NewSurvey> surveys) {
        if (surveys.isEmpty()) {
            return;
        }
        String by = access.current().username();
        Instant now = clock.instant();
        BinaryCopy.write(jdbc, TABLE, surveys, (survey, out) -> SurveyWire.row(survey, now, by, out));
    }
}
