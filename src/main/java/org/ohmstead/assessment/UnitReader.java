package org.ohmstead.assessment;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.Trend;
import org.ohmstead.assessment.model.Trouble;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads the jars and links of an assessment in force. */
@Component
class UnitReader {

    private static final TypeReference<List<Reason>> REASONS = new TypeReference<>() {};

    private final JdbcClient jdbc;
    private final JsonMapper json;

    UnitReader(JdbcClient jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    List<JarJudgement> jars(long stringId) {
        return jdbc.sql("select * from jar_assessment where string_id = ? order by position")
                .param(stringId)
                .query((row, n) -> jar(row))
                .list();
    }

    List<LinkJudgement> links(long stringId) {
        return jdbc.sql("select * from link_assessment where string_id = ? order by ordinal")
                .param(stringId)
                .query((row, n) -> link(row))
                .list();
    }

    Map<Long, List<JarJudgement>> jars(Collection<Long> stringIds) {
        Map<Long, List<JarJudgement>> found = new HashMap<>();
        jdbc.sql("select * from jar_assessment where string_id = any (?) order by string_id, position")
                .params(Arrays.asList((Object) stringIds.toArray(Long[]::new)))
                .query(row -> {
                    found.computeIfAbsent(row.getLong("string_id"), id -> new ArrayList<>())
                            .add(jar(row));
                });
        return found;
    }

    Map<Long, List<LinkJudgement>> links(Collection<Long> stringIds) {
        Map<Long, List<LinkJudgement>> found = new HashMap<>();
        jdbc.sql("select * from link_assessment where string_id = any (?) order by string_id, ordinal")
                .params(Arrays.asList((Object) stringIds.toArray(Long[]::new)))
                .query(row -> {
                    found.computeIfAbsent(row.getLong("string_id"), id -> new ArrayList<>())
                            .add(link(row));
                });
        return found;
    }

    private JarJudgement jar(ResultSet row) throws SQLException {
        String kind = row.getString("ohmic_kind");
        String origin = row.getString("baseline_from");
        return new JarJudgement(
                row.getInt("position"),
                row.getString("serial"),
                row.getObject("sitting_since", LocalDate.class),
                Urgency.valueOf(row.getString("urgency")),
                row.getObject("read_on", LocalDate.class),
                kind == null ? null : OhmicKind.valueOf(kind),
                number(row, "ohmic"),
                origin == null ? null : baseline(row, Baseline.Origin.valueOf(origin), row.getDouble("baseline_ohmic")),
                number(row, "change_on_baseline"),
                number(row, "change_on_median"),
                number(row, "robust_z"),
                trend(row),
                number(row, "volts"),
                number(row, "volts_per_cell"),
                number(row, "volts_off_median"),
                number(row, "celsius"),
                reasons(row),
                forecast(row));
    }

    private LinkJudgement link(ResultSet row) throws SQLException {
        Double net = number(row, "net_microohms");
        Double baseline = number(row, "baseline_microohms");
        return new LinkJudgement(
                row.getInt("ordinal"),
                LinkKind.valueOf(row.getString("kind")),
                row.getObject("made_on", LocalDate.class),
                Urgency.valueOf(row.getString("urgency")),
                row.getObject("read_on", LocalDate.class),
                number(row, "combined_microohms"),
                number(row, "conductor_microohms"),
                net,
                net != null && net <= 0,
                baseline == null ? null : baseline(row, Baseline.Origin.FIRST_READING, baseline),
                number(row, "change_on_baseline"),
                number(row, "kind_average_microohms"),
                number(row, "change_on_kind"),
                trend(row),
                number(row, "drop_millivolts"),
                number(row, "heat_watts"),
                reasons(row),
                forecast(row));
    }

    private static Baseline baseline(ResultSet row, Baseline.Origin origin, double value) throws SQLException {
        return new Baseline(value, origin, row.getObject("baseline_taken_on", LocalDate.class));
    }

    private static @Nullable Trend trend(ResultSet row) throws SQLException {
        Double perYear = number(row, "trend_per_year");
        return perYear == null
                ? null
                : new Trend(
                        perYear,
                        number(row, "trend_low_per_year"),
                        number(row, "trend_high_per_year"),
                        row.getInt("trend_readings"));
    }

    private static @Nullable UnitForecast forecast(ResultSet row) throws SQLException {
        Double chance = number(row, "chance_within_year");
        String trouble = row.getString("trouble");
        return chance == null
                ? null
                : new UnitForecast(
                        chance,
                        row.getDouble("risk"),
                        row.getDouble("beyond_limit"),
                        row.getObject("crosses_early", LocalDate.class),
                        row.getObject("crosses_middle", LocalDate.class),
                        row.getObject("crosses_late", LocalDate.class),
                        row.getDouble("rise_over_new"),
                        row.getDouble("rate_per_year"),
                        trouble == null ? null : Trouble.valueOf(trouble));
    }

    private static @Nullable Double number(ResultSet row, String column) throws SQLException {
        return row.getObject(column, Double.class);
    }

    private List<Reason> reasons(ResultSet row) throws SQLException {
        String reasons = row.getString("reasons");
        return reasons.equals("[]") ? List.of() : json.readValue(reasons, REASONS);
    }
}
