package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Timestamp;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.ohmstead.access.Reach;
import org.ohmstead.assessment.model.estate.InstrumentOff;
import org.ohmstead.assessment.model.estate.SurveyError;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/** What is stored of instruments, and the surveys it is made of. */
@Component
class InstrumentTable {

    // a survey's error stands in the state of its string, at the same place in three arrays
    private static final String ERRORS = """
            from forecast_state f
            cross join unnest(f.survey_ids, f.innovations, f.variances) as u (survey_id, innovation, variance)
            join standing_survey s on s.string_id = f.string_id and s.id = u.survey_id
            """;
    private static final String USES = """
            select s.instrument, count(*) as surveys, array_agg(distinct site.area_id) as area_ids,
                   array_agg(distinct s.string_id) as string_ids, min(s.taken_on) as first_on, max(s.taken_on) as last_on,
                   (array_agg(s.instrument_calibration_due order by s.taken_on desc)
                    filter (where s.instrument_calibration_due is not null))[1] as calibration_due
            from standing_survey s join battery_string b on b.id = s.string_id join site on site.id = b.site_id
            where s.instrument is not null group by s.instrument order by s.instrument""";
    private static final String IN_REACH = "(:everywhere or area_ids && :areaIds)";

    /** An instrument and where it was used. */
    record Use(
            String serial,
            int surveys,
            Long[] areaIds,
            Long[] stringIds,
            LocalDate firstOn,
            LocalDate lastOn,
            @Nullable LocalDate calibrationDue) {}

    private final JdbcClient jdbc;

    InstrumentTable(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Of the whole estate. */
    List<SurveyError> errors() {
        return jdbc.sql("select s.id, s.string_id, s.taken_on, s.instrument, u.innovation, u.variance " + ERRORS
                        + " where s.instrument is not null")
                .query((row, n) -> new SurveyError(
                        row.getLong("id"),
                        row.getLong("string_id"),
                        row.getObject("taken_on", LocalDate.class),
                        row.getString("instrument"),
                        orNaN(row, "innovation"),
                        orNaN(row, "variance")))
                .list();
    }

    private static double orNaN(ResultSet row, String column) throws SQLException {
        Double value = row.getObject(column, Double.class);
        return value == null ? Double.NaN : value;
    }

    List<Use> uses() {
        return jdbc.sql(USES)
                .query((row, n) -> new Use(
                        row.getString("instrument"),
                        row.getInt("surveys"),
                        longs(row, "area_ids"),
                        longs(row, "string_ids"),
                        row.getObject("first_on", LocalDate.class),
                        row.getObject("last_on", LocalDate.class),
                        row.getObject("calibration_due", LocalDate.class)))
                .list();
    }

    private static Long[] longs(ResultSet row, String column) throws SQLException {
        return (Long[]) row.getArray(column).getArray();
    }

    /** Two walks at once wait for each other: the table is small and soon written. */
    void clear() {
        jdbc.sql("lock table instrument_record in share row exclusive mode").update();
        jdbc.sql("delete from instrument_record").update();
    }

    void store(Use use, @Nullable InstrumentOff off, Instant now) {
        Long[] evidence = off == null
                ? new Long[0]
                : off.evidence().stream().map(SurveyError::surveyId).toArray(Long[]::new);
        jdbc.sql("""
                        insert into instrument_record (serial, surveys, area_ids, string_ids, first_on, last_on,
                          calibration_due, reads_off, reads_off_low, reads_off_high, since, evidence, evidence_days, looked_at)
                        values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)""")
                .params(Arrays.asList(
                        use.serial(),
                        use.surveys(),
                        use.areaIds(),
                        use.stringIds(),
                        use.firstOn(),
                        use.lastOn(),
                        use.calibrationDue(),
                        off == null ? null : off.offset(),
                        off == null ? null : off.low(),
                        off == null ? null : off.high(),
                        off == null ? null : off.since(),
                        evidence,
                        off == null ? 0 : off.days(),
                        Timestamp.from(now)))
                .update();
    }

    List<InstrumentView> all(Reach reach, double threshold) {
        return jdbc.sql("select * from instrument_record where " + IN_REACH + " order by serial")
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> view(row, threshold))
                .list();
    }

    Optional<InstrumentView> find(String serial, Reach reach, double threshold) {
        return jdbc.sql("select * from instrument_record where serial = :serial and " + IN_REACH)
                .param("serial", serial)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> view(row, threshold))
                .optional();
    }

    /** The instrument of that survey, if it was looked at and reads off since the survey or earlier. */
    Optional<InstrumentView> ofSurvey(long stringId, long surveyId, double threshold) {
        return jdbc.sql("""
                        select i.* from survey s join instrument_record i on i.serial = s.instrument
                        where s.string_id = :stringId and s.id = :surveyId and i.since <= s.taken_on""")
                .param("stringId", stringId)
                .param("surveyId", surveyId)
                .query((row, n) -> view(row, threshold))
                .optional();
    }

    /** Newest first. */
    List<InstrumentSurvey> surveys(String serial, Reach reach, int limit) {
        return jdbc.sql("""
                        select s.id, s.string_id, site.code || ' / ' || b.name as string, s.taken_on, u.innovation,
                               s.id = any (i.evidence) as evidence
                        from instrument_record i
                        join forecast_state f on f.string_id = any (i.string_ids)
                        cross join unnest(f.survey_ids, f.innovations) as u (survey_id, innovation)
                        join standing_survey s on s.string_id = f.string_id and s.id = u.survey_id and s.instrument = i.serial
                        join battery_string b on b.id = s.string_id join site on site.id = b.site_id
                        where i.serial = :serial and (:everywhere or site.area_id = any (:areaIds))
                        order by s.taken_on desc, s.id desc limit :limit""")
                .param("serial", serial)
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .param("limit", limit)
                .query((row, n) -> new InstrumentSurvey(
                        row.getLong("id"),
                        row.getLong("string_id"),
                        row.getString("string"),
                        row.getObject("taken_on", LocalDate.class),
                        relative(row),
                        row.getBoolean("evidence")))
                .list();
    }

    private static @Nullable Double relative(ResultSet row) throws SQLException {
        Double logarithmic = row.getObject("innovation", Double.class);
        return logarithmic == null ? null : Math.expm1(logarithmic);
    }

    private static InstrumentView view(ResultSet row, double threshold) throws SQLException {
        Double offset = row.getObject("reads_off", Double.class);
        InstrumentView.Finding finding = offset == null
                ? null
                : new InstrumentView.Finding(
                        offset,
                        row.getDouble("reads_off_low"),
                        row.getDouble("reads_off_high"),
                        row.getObject("since", LocalDate.class),
                        longs(row, "evidence").length,
                        row.getInt("evidence_days"));
        return new InstrumentView(
                row.getString("serial"),
                row.getInt("surveys"),
                longs(row, "string_ids").length,
                row.getObject("first_on", LocalDate.class),
                row.getObject("last_on", LocalDate.class),
                row.getObject("calibration_due", LocalDate.class),
                finding,
                finding != null && InstrumentOff.isOff(finding.offset(), finding.low(), finding.high(), threshold),
                row.getTimestamp("looked_at").toInstant());
    }
}
