package org.ohmstead.assessment;

import static org.ohmstead.copy.CopyColumn.bigint;
import static org.ohmstead.copy.CopyColumn.date;
import static org.ohmstead.copy.CopyColumn.doublePrecision;
import static org.ohmstead.copy.CopyColumn.integer;
import static org.ohmstead.copy.CopyColumn.integerOrNull;
import static org.ohmstead.copy.CopyColumn.jsonb;
import static org.ohmstead.copy.CopyColumn.text;
import static org.ohmstead.copy.CopyColumn.word;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Baseline;
import org.ohmstead.assessment.model.JarJudgement;
import org.ohmstead.assessment.model.LinkJudgement;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.Trend;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.copy.CopyColumn;
import org.ohmstead.copy.CopyTable;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Component;
import tools.jackson.databind.json.JsonMapper;

/**
 * The jars and links of the assessments in force: two rows a string, with an array a column and an element a unit. The two
 * lists of columns are the one place that says what is stored; {@link UnitReader} reads it back unit by unit.
 */
@Component
class UnitRows {

    private final JdbcTemplate jdbc;
    private final JsonMapper json;
    private final CopyTable<StringJudgement> jarTable = table("assessed_jars", jarColumns(), StringJudgement::jars);
    private final CopyTable<StringJudgement> linkTable = table("assessed_links", linkColumns(), StringJudgement::links);

    UnitRows(JdbcTemplate jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    void replace(List<StringJudgement> judgements) {
        Long[] strings = judgements.stream().map(StringJudgement::stringId).toArray(Long[]::new);
        jdbc.update("delete from assessed_jars where string_id = any (?)", (Object) strings);
        jdbc.update("delete from assessed_links where string_id = any (?)", (Object) strings);
        jarTable.append(jdbc, judgements);
        linkTable.append(jdbc, judgements);
    }

    private static <J> CopyTable<StringJudgement> table(
            String name, List<CopyColumn<J>> columns, Function<StringJudgement, List<J>> units) {
        Stream<CopyColumn<StringJudgement>> arrays = columns.stream().map(column -> CopyColumn.array(column, units));
        return new CopyTable<>(
                name,
                Stream.concat(Stream.of(bigint("string_id", StringJudgement::stringId)), arrays)
                        .toList());
    }

    /** Of a part that may be missing as a whole. */
    private static <J, P, R> Function<J, @Nullable R> in(Function<J, @Nullable P> part, Function<P, @Nullable R> what) {
        return unit -> {
            P found = part.apply(unit);
            return found == null ? null : what.apply(found);
        };
    }

    private List<CopyColumn<JarJudgement>> jarColumns() {
        List<CopyColumn<JarJudgement>> own = List.of(
                integer("position", JarJudgement::position),
                text("serial", JarJudgement::serial),
                date("sitting_since", JarJudgement::sittingSince),
                word("urgency", JarJudgement::urgency),
                date("read_on", JarJudgement::readOn),
                word("ohmic_kind", JarJudgement::ohmicKind),
                doublePrecision("ohmic", JarJudgement::ohmic),
                doublePrecision("baseline_ohmic", in(JarJudgement::baseline, Baseline::value)),
                word("baseline_from", in(JarJudgement::baseline, Baseline::origin)),
                date("baseline_taken_on", in(JarJudgement::baseline, Baseline::takenOn)),
                doublePrecision("change_on_baseline", JarJudgement::changeOnBaseline),
                doublePrecision("change_on_median", JarJudgement::changeOnMedian),
                doublePrecision("robust_z", JarJudgement::robustZ),
                doublePrecision("volts", JarJudgement::volts),
                doublePrecision("volts_per_cell", JarJudgement::voltsPerCell),
                doublePrecision("volts_off_median", JarJudgement::voltsOffMedian),
                doublePrecision("celsius", JarJudgement::celsius),
                jsonb("reasons", jar -> reasons(jar.reasons())));
        return joined(joined(own, trendColumns(JarJudgement::trend)), forecastColumns(JarJudgement::forecast));
    }

    private List<CopyColumn<LinkJudgement>> linkColumns() {
        List<CopyColumn<LinkJudgement>> own = List.of(
                integer("ordinal", LinkJudgement::ordinal),
                word("kind", LinkJudgement::kind),
                date("made_on", LinkJudgement::madeOn),
                word("urgency", LinkJudgement::urgency),
                date("read_on", LinkJudgement::readOn),
                doublePrecision("combined_microohms", LinkJudgement::combinedMicroohms),
                doublePrecision("conductor_microohms", LinkJudgement::conductorMicroohms),
                doublePrecision("net_microohms", LinkJudgement::netMicroohms),
                doublePrecision("baseline_microohms", in(LinkJudgement::baseline, Baseline::value)),
                date("baseline_taken_on", in(LinkJudgement::baseline, Baseline::takenOn)),
                doublePrecision("change_on_baseline", LinkJudgement::changeOnBaseline),
                doublePrecision("kind_average_microohms", LinkJudgement::kindAverageMicroohms),
                doublePrecision("change_on_kind", LinkJudgement::changeOnKind),
                doublePrecision("drop_millivolts", LinkJudgement::dropMillivolts),
                doublePrecision("heat_watts", LinkJudgement::heatWatts),
                jsonb("reasons", link -> reasons(link.reasons())));
        return joined(joined(own, trendColumns(LinkJudgement::trend)), forecastColumns(LinkJudgement::forecast));
    }

    private static <J> List<CopyColumn<J>> trendColumns(Function<J, @Nullable Trend> trend) {
        return List.of(
                doublePrecision("trend_per_year", in(trend, Trend::perYear)),
                doublePrecision("trend_low_per_year", in(trend, Trend::lowPerYear)),
                doublePrecision("trend_high_per_year", in(trend, Trend::highPerYear)),
                integerOrNull("trend_readings", in(trend, Trend::readings)));
    }

    private static <J> List<CopyColumn<J>> forecastColumns(Function<J, @Nullable UnitForecast> forecast) {
        return List.of(
                doublePrecision("chance_within_year", in(forecast, UnitForecast::chanceWithinYear)),
                doublePrecision("risk", in(forecast, UnitForecast::risk)),
                doublePrecision("beyond_limit", in(forecast, UnitForecast::beyondLimit)),
                date("crosses_early", in(forecast, UnitForecast::early)),
                date("crosses_middle", in(forecast, UnitForecast::middle)),
                date("crosses_late", in(forecast, UnitForecast::late)),
                doublePrecision("rise_over_new", in(forecast, UnitForecast::riseOverNew)),
                doublePrecision("rate_per_year", in(forecast, UnitForecast::ratePerYear)),
                word("trouble", in(forecast, UnitForecast::trouble)));
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private String reasons(List<Reason> reasons) {
        return reasons.isEmpty() ? "[]" : json.writeValueAsString(reasons);
    }
}
