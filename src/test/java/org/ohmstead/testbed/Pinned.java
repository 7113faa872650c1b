package org.ohmstead.testbed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Judge;
import org.ohmstead.assessment.model.Limits;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringJudgement;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.assessment.model.forecast.EstateReplay;
import org.ohmstead.assessment.model.forecast.ForecastParameters;
import org.ohmstead.assessment.model.forecast.Forecaster;
import org.ohmstead.assessment.model.forecast.StringForecast;
import org.ohmstead.assessment.model.forecast.UnitForecast;
import org.ohmstead.assessment.model.prospect.Prospects;
import org.ohmstead.kernel.Urgency;

/**
 * What this version of the parameters says of some invented strings, as lines of text. The main method writes the files
 * that {@link PinnedTest} holds against; whoever changes what is said writes them anew, with a new parameter version when
 * the forecast is concerned, and reads the difference.
 */
final class Pinned {
    static final Path FORECASTS = Path.of("src/test/resources/pinned/forecasts.csv");
    static final Path JUDGEMENTS = Path.of("src/test/resources/pinned/judgements.txt");
    private static final int STRINGS_PER_LAW = 6;
    private static final int MOST_JARS = 60;
    private static final int LEAST_SURVEYS = 8;
    private static final int MOST_SURVEYS = 26;

    private Pinned() {}

    public static void main(String[] arguments) throws IOException {
        Files.createDirectories(FORECASTS.getParent());
        Files.write(FORECASTS, forecasts());
        Files.write(JUDGEMENTS, judgements());
    }

    /** Short strings of three laws of ageing, with all that befalls them: replaced, remade, misread, shorted, worn. */
    private static final List<StringHistory> STRINGS = strings();

    private static List<StringHistory> strings() {
        return Stream.of(Laws.ordinary(), Laws.jumpy(), Laws.drifting())
                .flatMap(laws -> new EstateGenerator(laws, 14)
                        .first(STRINGS_PER_LAW, MOST_JARS, LEAST_SURVEYS, MOST_SURVEYS).stream()
                                .map(SimulatedString::history))
                .toList();
    }

    /** One line per survey and kind of unit; numbers are summed over the units. */
    static List<String> forecasts() {
        List<String> lines = new ArrayList<>();
        lines.add("string,kind,as_of,next,governs,doubts,common_rise,common_rate,survey_error,survey_error_sd,noise,"
                + "probability,score,beyond,rise,rate,going,short,pending,early,median,late,flagged,stepped,readings");
        new EstateReplay(STRINGS, ForecastParameters.standard()).run((string, survey, forecast) -> {
            lines.add(line(string, "jars", forecast, forecast.jars()));
            lines.add(line(string, "links", forecast, forecast.links()));
        });
        return lines;
    }

    private static String line(int string, String kind, StringForecast said, List<UnitForecast> units) {
        String doubts = String.join(
                " ", new TreeSet<>(said.doubts().stream().map(Enum::name).toList()));
        String ofUnits = String.join(
                " ",
                units.stream()
                        .flatMap(unit -> unit.doubts().stream().map(doubt -> doubt + "@" + unit.number()))
                        .sorted()
                        .toList());
        Stream<String> words = Stream.of(
                string + "," + kind + "," + said.asOf() + "," + said.next().on(),
                said.next().governs().name(),
                (doubts + " " + ofUnits).trim());
        DoubleStream numbers = DoubleStream.concat(
                DoubleStream.of(
                        said.commonRise(),
                        said.commonRatePerYear(),
                        said.surveyError(),
                        said.surveyErrorDeviation(),
                        said.readingNoise()),
                Stream.<ToDoubleFunction<UnitForecast>>of(
                                UnitForecast::probability,
                                UnitForecast::score,
                                UnitForecast::beyondLimit,
                                UnitForecast::riseOverNew,
                                UnitForecast::ratePerYear,
                                UnitForecast::goingWeight,
                                UnitForecast::shortWeight,
                                unit -> Double.isNaN(unit.pendingChange()) ? 0 : unit.pendingChange(),
                                unit -> days(said.asOf(), unit.early()),
                                unit -> days(said.asOf(), unit.median()),
                                unit -> days(said.asOf(), unit.late()),
                                unit -> unit.flagged() ? 1 : 0,
                                unit -> unit.stepped() ? 1 : 0,
                                UnitForecast::readings)
                        .mapToDouble(value -> units.stream().mapToDouble(value).sum()));
        return String.join(
                ",",
                Stream.concat(words, numbers.mapToObj(number -> String.format(Locale.ROOT, "%.11e", number)))
                        .toList());
    }

    private static double days(LocalDate from, @Nullable LocalDate until) {
        return until == null ? 10_000 : ChronoUnit.DAYS.between(from, until);
    }

    /** What the rules and the forecast together say of each string after a third, two thirds and all of its surveys. */
    static List<String> judgements() {
        List<String> lines = new ArrayList<>();
        for (StringHistory history : STRINGS) {
            int all = history.surveys().size();
            for (int until : new int[] {1, all / 3, 2 * all / 3, all}) {
                say(judged(history, history.surveys().subList(0, until)), lines);
            }
        }
        return lines;
    }

    private static StringJudgement judged(StringHistory history, List<SurveyReadings> surveys) {
        StringHistory so = new StringHistory(history.plan(), history.spells(), history.remakes(), surveys);
        Forecaster forecaster = Forecaster.of(so, ForecastParameters.standard());
        StringForecast forecast = forecaster.forecast(forecaster.follow(surveys));
        return new Prospects(so.plan(), Limits.standard()).join(new Judge(Limits.standard()).judge(so), forecast);
    }

    private static void say(StringJudgement said, List<String> lines) {
        lines.add("== " + said.asOf() + " " + said.urgency() + ": " + said.headline());
        lines.add("recheck by " + said.recheckBy() + ", risk " + said.riskDate());
        lines.add("figures " + said.figures());
        lines.addAll(words("string", said.urgency(), said.reasons()));
        said.doubts().forEach(doubt -> lines.add("doubt " + doubt.kind() + ": " + doubt.words()));
        said.advice().forEach(advice -> lines.add("advice " + advice.kind() + ": " + advice.words()));
        said.jars().forEach(jar -> lines.addAll(words("jar " + jar.position(), jar.urgency(), jar.reasons())));
        said.links().forEach(link -> lines.addAll(words("link " + link.ordinal(), link.urgency(), link.reasons())));
    }

    private static List<String> words(String of, Urgency urgency, List<Reason> reasons) {
        return reasons.stream()
                .map(reason -> of + " " + urgency + " " + reason.rule() + ": " + reason.words())
                .toList();
    }
}
