package org.ohmstead.intake.check;

import java.util.Optional;
import java.util.stream.DoubleStream;
import org.ohmstead.statistics.Quantiles;

/** Whether the survey was taken warm or cold enough to be compared. */
final class Temperatures {

    private Temperatures() {}

    static Optional<Remark> missing(SurveyUnderCheck survey) {
        return Double.isNaN(ofSurvey(survey))
                ? Optional.of(Remark.of(
                        RemarkCode.TEMPERATURE_MISSING, survey.fact("ambient"), "none", "an ambient temperature"))
                : Optional.empty();
    }

    static Optional<Remark> odd(SurveyUnderCheck survey) {
        Thresholds limits = survey.limits();
        return DoubleStream.concat(
                        DoubleStream.of(survey.facts().ambientCelsius()),
                        DoubleStream.of(survey.laidOut().celsius()))
                .filter(celsius -> celsius < limits.coldestCelsius() || celsius > limits.warmestCelsius())
                .mapToObj(celsius -> Remark.of(
                        RemarkCode.TEMPERATURE_ODD,
                        survey.fact(celsius == survey.facts().ambientCelsius() ? "ambient" : "jar temperatures"),
                        Figures.of(celsius, "°C"),
                        Figures.of(limits.coldestCelsius(), "°C") + " to " + Figures.of(limits.warmestCelsius(), "°C")))
                .findFirst();
    }

    /** Ohmic values rise as it gets colder; there is no hidden correction, so a far survey is marked (from memory). */
    static Optional<Remark> farFromBaseline(SurveyUnderCheck survey) {
        EarlierSurvey baseline = survey.expected().baseline();
        double before = baseline == null ? Double.NaN : baseline.ambientCelsius();
        double now = ofSurvey(survey);
        return Math.abs(now - before) > survey.limits().baselineKelvin()
                ? Optional.of(Remark.of(
                        RemarkCode.TEMPERATURE_FAR,
                        survey.fact("ambient"),
                        Figures.of(now, "°C"),
                        Figures.of(before, "°C") + " at the baseline survey"))
                : Optional.empty();
    }

    /** Ambient, and where that is missing the jars' median. */
    private static double ofSurvey(SurveyUnderCheck survey) {
        double ambient = survey.facts().ambientCelsius();
        return Double.isNaN(ambient) ? Quantiles.median(survey.laidOut().celsius()) : ambient;
    }
}
