package org.ohmstead.assessment;

import java.sql.Timestamp;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.StringJudgement;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.RowCallbackHandler;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;
import tools.jackson.databind.json.JsonMapper;

/** Stores judgements: the history append-only, the units of the one in force as a whole. */
@Component
class AssessmentWriter {

    private static final String KEEP = """
            insert into string_assessment (string_id, survey_id, as_of, engine_version, input_fingerprint, assessed_at,
                                           urgency, headline, detail, recheck_by)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?::jsonb, ?)
            on conflict (string_id, engine_version, input_fingerprint) do nothing""";
    private static final String PUT_IN_FORCE = """
            insert into current_assessment (string_id, assessment_id)
            select string_id, id from string_assessment
            where string_id = ? and engine_version = ? and input_fingerprint = ?
            on conflict (string_id) do update set assessment_id = excluded.assessment_id""";

    private final JdbcTemplate jdbc;
    private final UnitRows units;
    private final ForecastStates states;
    private final JsonMapper json;
    private final Clock clock;

    AssessmentWriter(JdbcTemplate jdbc, UnitRows units, ForecastStates states, JsonMapper json, Clock clock) {
        this.jdbc = jdbc;
        this.units = units;
        this.states = states;
        this.json = json;
        this.clock = clock;
    }

    /** One after the other judges a string: whoever holds this sees all that was committed before. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void lock(long stringId) {
        jdbc.queryForList("select id from battery_string where id = ? for no key update", stringId);
    }

    /** What is in force of every string: engine and fingerprint in one word. */
    Map<Long, String> inForce() {
        return inForce("");
    }

    private Map<Long, String> inForce(String where, Object... parameters) {
        Map<Long, String> found = new HashMap<>();
        RowCallbackHandler word = row -> found.put(row.getLong(1), row.getString(2) + word(row.getBytes(3)));
        jdbc.query("""
                select c.string_id, a.engine_version, a.input_fingerprint
                from current_assessment c join string_assessment a on a.id = c.assessment_id\s""" + where, word, parameters);
        return found;
    }

    /** The same word for what has just been looked at. */
    static String word(byte[] fingerprint) {
        return HexFormat.of().formatHex(fingerprint);
    }

    static String inForceWord(byte[] fingerprint) {
        return Judge.ENGINE_VERSION + word(fingerprint);
    }

    boolean isInForce(long stringId, byte[] fingerprint) {
        return Boolean.TRUE.equals(
                jdbc.queryForObject("""
                select exists (select from current_assessment c join string_assessment a on a.id = c.assessment_id
                               where c.string_id = ? and a.engine_version = ? and a.input_fingerprint = ?)""", Boolean.class, stringId, Judge.ENGINE_VERSION, fingerprint));
    }

    /** Stores them in the order of their strings, so that two writers never wait for each other in a circle. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void store(List<Judged> judged) {
        Timestamp now = Timestamp.from(clock.instant());
        List<Object[]> kept = new ArrayList<>();
        List<Object[]> current = new ArrayList<>();
        for (Judged one : judged) {
            kept.add(row(one, now));
            current.add(new Object[] {one.stringId(), Judge.ENGINE_VERSION, one.fingerprint()});
        }
        jdbc.batchUpdate(KEEP, kept);
        jdbc.batchUpdate(PUT_IN_FORCE, current);
        units.replace(judged.stream().map(Judged::judgement).toList());
        states.store(judged);
    }

    private Object[] row(Judged one, Timestamp now) {
        StringJudgement judgement = one.judgement();
        return new Object[] {
            judgement.stringId(),
            judgement.surveyId(),
            judgement.asOf(),
            Judge.ENGINE_VERSION,
            one.fingerprint(),
            now,
            judgement.urgency().name(),
            judgement.headline(),
            json.writeValueAsString(StringDetail.of(judgement)),
            judgement.recheckBy()
        };
    }

    /** Which of these strings are still judged as they were then: the others have had news since. */
    @Transactional(propagation = Propagation.MANDATORY)
    public List<Judged> withoutNews(List<Judged> judged, Map<Long, String> inForceThen) {
        Long[] strings = judged.stream().map(Judged::stringId).toArray(Long[]::new);
        jdbc.queryForList(
                "select id from battery_string where id = any (?) order by id for no key update", (Object) strings);
        Map<Long, String> inForceNow = inForce("where c.string_id = any (?)", (Object) strings);
        return judged.stream()
                .filter(one -> Objects.equals(inForceThen.get(one.stringId()), inForceNow.get(one.stringId())))
                .toList();
    }
}
