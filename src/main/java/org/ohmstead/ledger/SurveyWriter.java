package org.ohmstead.ledger;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Access;
import org.ohmstead.access.AuditTrail;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;

/** Adds the ledger's rows, in the name of the person who asks. */
@Component
class SurveyWriter {

    private static final String WITHDRAWAL = """
            insert into survey_withdrawal
              (string_id, taken_at, survey_id, kind, superseded_by, superseded_by_taken_at, at, by, reason)
            select string_id, taken_at, id, ?, ?, ?, ?, ?, ? from survey where id = ?""";

    private final JdbcTemplate jdbc;
    private final Access access;
    private final AuditTrail audit;
    private final Clock clock;

    SurveyWriter(JdbcTemplate jdbc, Access access, AuditTrail audit, Clock clock) {
        this.jdbc = jdbc;
        this.access = access;
        this.audit = audit;
        this.clock = clock;
    }

    long insert(NewSurvey survey) {
        Instant now = clock.instant();
        String by = access.current().username();
        Long id = jdbc.query(SurveyInsert.SQL, statement -> SurveyInsert.bind(statement, survey, now, by), row -> {
            row.next();
            return row.getLong(1);
        });
        return Objects.requireNonNull(id, "the insert returns the id");
    }

    void withdraw(SurveyRecord survey, @Nullable SurveyRecord successor, String reason) {
        if (successor == null) {
            say(survey, "VOIDED", null, reason);
        } else {
            say(survey, "SUPERSEDED", successor, reason);
        }
    }

    void restore(SurveyRecord survey, String reason) {
        say(survey, "RESTORED", null, reason);
    }

    void lock(long surveyId) {
        jdbc.query("select 1 from survey where id = ? for no key update", row -> {}, surveyId);
    }

    void audit(String action, long surveyId, StringPlace place, Map<String, ?> detail) {
        audit.record("survey " + action, "survey", Long.toString(surveyId), place.areaId(), detail);
    }

    private void say(SurveyRecord survey, String kind, @Nullable SurveyRecord successor, String reason) {
        jdbc.update(
                WITHDRAWAL,
                kind,
                successor == null ? null : successor.id(),
                successor == null ? null : successor.facts().takenAt().atOffset(ZoneOffset.UTC),
                clock.instant().atOffset(ZoneOffset.UTC),
                access.current().username(),
                reason,
                survey.id());
    }
}
