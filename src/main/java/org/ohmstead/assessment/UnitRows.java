package org.ohmstead.assessment;

import static org.ohmstead.copy.CopyColumn.bigint;
import static org.ohmstead.copy.CopyColumn.date;
import static org.ohmstead.copy.CopyColumn.doublePrecision;
import static org.ohmstead.copy.CopyColumn.integer;
import static org.ohmstead.copy.CopyColumn.integerOrNull;
import static org.ohmstead.copy.CopyColumn.jsonb;
import static org.ohmstead.copy.CopyColumn.text;
import static org.ohmstead.copy.CopyColumn.word;

import java.util.ArrayList;
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
 * The narrow rows, one a jar and one a link, of the assessments in force. The two lists of columns are the one place that
 * says what is stored; {@link UnitReader} reads it back.
 */
@Component
class UnitRows {

    private final JdbcTemplate jdbc;
    private final JsonMapper json;
    private final CopyTable<Unit<JarJudgement>> jarTable = new CopyTable<>("jar_assessment", jarColumns());
    private final CopyTable<Unit<LinkJudgement>> linkTable = new CopyTable<>("link_assessment", linkColumns());

    UnitRows(JdbcTemplate jdbc, JsonMapper json) {
        this.jdbc = jdbc;
        this.json = json;
    }

    private record Unit<J>(long stringId, J of) {

        static <J, R> Function<Unit<J>, R> get(Function<J, R> what) {
            return unit -> what.apply(unit.of());
        }

        /** Of a part that may be missing as a whole. */
        static <J, P, R> Function<Unit<J>, @Nullable R> get(
                Function<J, @Nullable P> part, Function<P, @Nullable R> what) {
            return unit -> {
                P found = part.apply(unit.of());
                return found == null ? null : what.apply(found);
            };
        }
    }

    void replace(List<StringJudgement> judgements) {
        Long[] strings = judgements.stream().map(StringJudgement::stringId).toArray(Long[]::new);
        jdbc.update("delete from jar_assessment where string_id = any (?)", (Object) strings);
        jdbc.update("delete from link_assessment where string_id = any (?)", (Object) strings);
        jarTable.append(jdbc, units(judgements, StringJudgement::jars));
        linkTable.append(jdbc, units(judgements, StringJudgement::links));
    }

    private static <J> List<Unit<J>> units(List<StringJudgement> judgements, Function<StringJudgement, List<J>> units) {
        List<Unit<J>> all = new ArrayList<>();
        judgements.forEach(judgement ->
                units.apply(judgement).forEach(unit -> all.add(new Unit<>(judgement.stringId(), unit))));
        return all;
    }

    private List<CopyColumn<Unit<JarJudgement>>> jarColumns() {
        List<CopyColumn<Unit<JarJudgement>>> own = List.of(
                bigint("string_id", Unit::stringId),
                integer("position", jar -> jar.of().position()),
                text("serial", Unit.get(JarJudgement::serial)),
                date("sitting_since", Unit.get(JarJudgement::sittingSince)),
                word("urgency", Unit.get(JarJudgement::urgency)),
                date("read_on", Unit.get(JarJudgement::readOn)),
                word("ohmic_kind", Unit.get(JarJudgement::ohmicKind)),
                doublePrecision("ohmic", Unit.get(JarJudgement::ohmic)),
                doublePrecision("baseline_ohmic", Unit.get(JarJudgement::baseline, Baseline::value)),
                word("baseline_from", Unit.get(JarJudgement::baseline, Baseline::origin)),
                date("baseline_taken_on", Unit.get(JarJudgement::baseline, Baseline::takenOn)),
                doublePrecision("change_on_baseline", Unit.get(JarJudgement::changeOnBaseline)),
                doublePrecision("change_on_median", Unit.get(JarJudgement::changeOnMedian)),
                doublePrecision("robust_z", Unit.get(JarJudgement::robustZ)),
                doublePrecision("volts", Unit.get(JarJudgement::volts)),
                doublePrecision("volts_per_cell", Unit.get(JarJudgement::voltsPerCell)),
                doublePrecision("volts_off_median", Unit.get(JarJudgement::voltsOffMedian)),
                doublePrecision("celsius", Unit.get(JarJudgement::celsius)),
                jsonb("reasons", jar -> reasons(jar.of().reasons())));
        return joined(joined(own, trendColumns(JarJudgement::trend)), forecastColumns(JarJudgement::forecast));
    }

    private List<CopyColumn<Unit<LinkJudgement>>> linkColumns() {
        List<CopyColumn<Unit<LinkJudgement>>> own = List.of(
                bigint("string_id", Unit::stringId),
                integer("ordinal", link -> link.of().ordinal()),
                word("kind", Unit.get(LinkJudgement::kind)),
                date("made_on", Unit.get(LinkJudgement::madeOn)),
                word("urgency", Unit.get(LinkJudgement::urgency)),
                date("read_on", Unit.get(LinkJudgement::readOn)),
                doublePrecision("combined_microohms", Unit.get(LinkJudgement::combinedMicroohms)),
                doublePrecision("conductor_microohms", Unit.get(LinkJudgement::conductorMicroohms)),
                doublePrecision("net_microohms", Unit.get(LinkJudgement::netMicroohms)),
                doublePrecision("baseline_microohms", Unit.get(LinkJudgement::baseline, Baseline::value)),
                date("baseline_taken_on", Unit.get(LinkJudgement::baseline, Baseline::takenOn)),
                doublePrecision("change_on_baseline", Unit.get(LinkJudgement::changeOnBaseline)),
                doublePrecision("kind_average_microohms", Unit.get(LinkJudgement::kindAverageMicroohms)),
                doublePrecision("change_on_kind", Unit.get(LinkJudgement::changeOnKind)),
                doublePrecision("drop_millivolts", Unit.get(LinkJudgement::dropMillivolts)),
                doublePrecision("heat_watts", Unit.get(LinkJudgement::heatWatts)),
                jsonb("reasons", link -> reasons(link.of().reasons())));
        return joined(joined(own, trendColumns(LinkJudgement::trend)), forecastColumns(LinkJudgement::forecast));
    }

    private static <J> List<CopyColumn<Unit<J>>> trendColumns(Function<J, @Nullable Trend> trend) {
        return List.of(
                doublePrecision("trend_per_year", Unit.get(trend, Trend::perYear)),
                doublePrecision("trend_low_per_year", Unit.get(trend, Trend::lowPerYear)),
                doublePrecision("trend_high_per_year", Unit.get(trend, Trend::highPerYear)),
                integerOrNull("trend_readings", Unit.get(trend, Trend::readings)));
    }

    private static <J> List<CopyColumn<Unit<J>>> forecastColumns(Function<J, @Nullable UnitForecast> forecast) {
        return List.of(
                doublePrecision("chance_within_year", Unit.get(forecast, UnitForecast::chanceWithinYear)),
                doublePrecision("risk", Unit.get(forecast, UnitForecast::risk)),
                doublePrecision("beyond_limit", Unit.get(forecast, UnitForecast::beyondLimit)),
                date("crosses_early", Unit.get(forecast, UnitForecast::early)),
                date("crosses_middle", Unit.get(forecast, UnitForecast::middle)),
                date("crosses_late", Unit.get(forecast, UnitForecast::late)),
                doublePrecision("rise_over_new", Unit.get(forecast, UnitForecast::riseOverNew)),
                doublePrecision("rate_per_year", Unit.get(forecast, UnitForecast::ratePerYear)),
                word("trouble", Unit.get(forecast, UnitForecast::trouble)));
    }

    private static <T> List<T> joined(List<T> some, List<T> others) {
        return Stream.concat(some.stream(), others.stream()).toList();
    }

    private String reasons(List<Reason> reasons) {
        return reasons.isEmpty() ? "[]" : json.writeValueAsString(reasons);
    }
}
