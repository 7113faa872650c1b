package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmstead.access.Reach;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.kernel.Urgency;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** Reads the assessments in force. */
@Component
class AssessmentReader {

    private static final String IN_FORCE =
            " from current_assessment c join string_assessment a on a.id = c.assessment_id ";

    private final JdbcClient jdbc;
    private final JsonMapper json;
    private final UnitReader units;

    AssessmentReader(JdbcClient jdbc, JsonMapper json, UnitReader units) {
        this.jdbc = jdbc;
        this.json = json;
        this.units = units;
    }

    Optional<AssessmentView> latest(long stringId) {
        return jdbc.sql("select a.*" + IN_FORCE + "where c.string_id = ?")
                .param(stringId)
                .query((row, n) -> view(row))
                .optional();
    }

    List<StringJudgement> judgements(Collection<Long> stringIds, Reach reach) {
        Map<Long, List<JarJudgement>> jars = units.jars(stringIds);
        Map<Long, List<LinkJudgement>> links = units.links(stringIds);
        return jdbc.sql("select a.*" + IN_FORCE + """
                        join battery_string b on b.id = c.string_id join site s on s.id = b.site_id
                        where c.string_id = any (:ids) and (:everywhere or s.area_id = any (:areaIds))
                        order by c.string_id""")
                .param("ids", stringIds.toArray(Long[]::new))
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> judgement(
                        row,
                        jars.getOrDefault(row.getLong("string_id"), List.of()),
                        links.getOrDefault(row.getLong("string_id"), List.of())))
                .list();
    }

    private AssessmentView view(ResultSet row) throws SQLException {
        long stringId = row.getLong("string_id");
        return new AssessmentView(
                row.getLong("id"),
                row.getTimestamp("assessed_at").toInstant(),
                row.getString("engine_version"),
                HexFormat.of().formatHex(row.getBytes("input_fingerprint")),
                judgement(row, units.jars(stringId), units.links(stringId)));
    }

    private StringJudgement judgement(ResultSet row, List<JarJudgement> jars, List<LinkJudgement> links)
            throws SQLException {
        StringDetail detail = json.readValue(row.getString("detail"), StringDetail.class);
        return new StringJudgement(
                row.getLong("string_id"),
                row.getObject("as_of", LocalDate.class),
                row.getObject("survey_id", Long.class),
                detail.limitsVersion(),
                Urgency.valueOf(row.getString("urgency")),
                row.getString("headline"),
                row.getObject("recheck_by", LocalDate.class),
                detail.riskDate(),
                detail.figures(),
                detail.reasons(),
                detail.doubts(),
                detail.advice(),
                jars,
                links);
    }

    List<StringStanding> standings(Reach reach) {
        return jdbc.sql("select a.string_id, a.urgency, a.headline, a.as_of, a.recheck_by" + IN_FORCE + """
                        join battery_string b on b.id = c.string_id join site s on s.id = b.site_id
                        where b.retired_on is null and (:everywhere or s.area_id = any (:areaIds))
                        order by case a.urgency when 'ACT' then 0 when 'PLAN' then 1 when 'RECHECK' then 2 else 3 end,
                                 a.recheck_by nulls last, a.string_id""")
                .param("everywhere", reach.everywhere())
                .param("areaIds", reach.areaIdArray())
                .query((row, n) -> new StringStanding(
                        row.getLong("string_id"),
                        Urgency.valueOf(row.getString("urgency")),
                        row.getString("headline"),
                        row.getObject("as_of", LocalDate.class),
                        row.getObject("recheck_by", LocalDate.class)))
                .list();
    }
}
