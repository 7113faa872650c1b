package org.ohmstead.assessment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.Trend;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/** The narrow rows, one a jar and one a link, of the assessments in force. */
@Component
class UnitRows {

    private static final String JAR = """
            insert into jar_assessment (string_id, position, serial, sitting_since, urgency, read_on, ohmic_kind, ohmic,
              baseline_ohmic, baseline_from, baseline_taken_on, change_on_baseline, change_on_median, robust_z,
              trend_per_year, trend_low_per_year, trend_high_per_year, trend_readings, volts, volts_per_cell,
              volts_off_median, celsius, reasons)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?::jsonb)""";
    private static final String LINK = """
            insert into link_assessment (string_id, ordinal, kind, made_on, urgency, read_on, combined_microohms,
              conductor_microohms, net_microohms, baseline_microohms, baseline_taken_on, change_on_baseline,
              kind_average_microohms, change_on_kind, trend_per_year, trend_low_per_year, trend_high_per_year,
              trend_readings, drop_millivolts, heat_watts, reasons)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?::jsonb)""";

    private final JdbcTemplate jdbc;
    private final JsonMapper json;

    UnitRows(JdbcTemplate jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    void replace(List<StringJudgement> judgements) {
        Long[] strings = judgements.stream().map(StringJudgement::stringId).toArray(Long[]::new);
        jdbc.update("delete from jar_assessment where string_id = any (?)", (Object) strings);
        jdbc.update("delete from link_assessment where string_id = any (?)", (Object) strings);
        List<Object[]> jars = new ArrayList<>();
        List<Object[]> links = new ArrayList<>();
        for (StringJudgement judgement : judgements) {
            judgement.jars().forEach(jar -> jars.add(row(judgement.stringId(), jar)));
            judgement.links().forEach(link -> links.add(row(judgement.stringId(), link)));
        }
        jdbc.batchUpdate(JAR, jars);
        jdbc.batchUpdate(LINK, links);
    }

    private Object[] row(long stringId, JarJudgement jar) {
        Baseline baseline = jar.baseline();
        Trend trend = jar.trend();
        return values(
                stringId,
                jar.position(),
                jar.serial(),
                jar.sittingSince(),
                jar.urgency().name(),
                jar.readOn(),
                jar.ohmicKind() == null ? null : jar.ohmicKind().name(),
                jar.ohmic(),
                baseline == null ? null : baseline.value(),
                baseline == null ? null : baseline.origin().name(),
                baseline == null ? null : baseline.takenOn(),
                jar.changeOnBaseline(),
                jar.changeOnMedian(),
                jar.robustZ(),
                trend == null ? null : trend.perYear(),
                trend == null ? null : trend.lowPerYear(),
                trend == null ? null : trend.highPerYear(),
                trend == null ? null : trend.readings(),
                jar.volts(),
                jar.voltsPerCell(),
                jar.voltsOffMedian(),
                jar.celsius(),
                reasons(jar.reasons()));
    }

    private Object[] row(long stringId, LinkJudgement link) {
        Baseline baseline = link.baseline();
        Trend trend = link.trend();
        return values(
                stringId,
                link.ordinal(),
                link.kind().name(),
                link.madeOn(),
                link.urgency().name(),
                link.readOn(),
                link.combinedMicroohms(),
                link.conductorMicroohms(),
                link.netMicroohms(),
                baseline == null ? null : baseline.value(),
                baseline == null ? null : baseline.takenOn(),
                link.changeOnBaseline(),
                link.kindAverageMicroohms(),
                link.changeOnKind(),
                trend == null ? null : trend.perYear(),
                trend == null ? null : trend.lowPerYear(),
                trend == null ? null : trend.highPerYear(),
                trend == null ? null : trend.readings(),
                link.dropMillivolts(),
                link.heatWatts(),
                reasons(link.reasons()));
    }

    private String reasons(List<Reason> reasons) {
        return reasons.isEmpty() ? "[]" : json.writeValueAsString(reasons);
    }

    @SuppressWarnings("NullAway") // JDBC parameters may be null
    private static Object[] values(@Nullable Object... values) {
        return values;
    }
}
