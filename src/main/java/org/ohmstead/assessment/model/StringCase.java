package org.ohmstead.assessment.model;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import org.ohmstead.statistics.Quantiles;

/** All that the rules look at for the string as a whole; NaN where nothing was read. */
record StringCase(
        Panel panel,
        List<JarCase> jars,
        List<LinkCase> links,
        double floatPerCell,
        double expectedFloatPerCell,
        double floatOff,
        double floatOffBefore,
        double celsiusSpread,
        double ripplePer100Ah,
        double ripplePer100AhBefore,
        double medianRise,
        double medianRiseBefore,
        double usualCelsius,
        double ageYears,
        double expectedYears) {

    private static final double NAN = Double.NaN;

    static StringCase of(Panel panel, List<JarCase> jars, List<LinkCase> links, Limits limits) {
        StringPlan plan = panel.history().plan();
        SurveyReadings now = latest(panel, panel.last(), survey -> true);
        SurveyReadings floating = latest(panel, panel.last(), survey -> !Double.isNaN(floatOff(plan, survey)));
        SurveyReadings rippling = latest(panel, panel.last(), survey -> survey.rippleAmps() >= 0);
        double usual = usualCelsius(panel);
        return new StringCase(
                panel,
                jars,
                links,
                floating == null ? NAN : perCell(plan, floating),
                floating == null ? NAN : expectedPerCell(plan, floating),
                floating == null ? NAN : floatOff(plan, floating),
                before(panel, floating, survey -> floatOff(plan, survey)),
                now == null ? NAN : spread(now.celsius()),
                rippling == null ? NAN : ripple(plan, rippling),
                before(panel, rippling, survey -> ripple(plan, survey)),
                ownMedian(jars, OhmicEvidence::rise),
                ownMedian(jars, OhmicEvidence::riseBefore),
                usual,
                Panel.years(plan.inServiceOn(), asOf(panel)),
                ServiceLife.expectedYears(plan.jarType(), usual, limits.of(Limit.LIFE_HALVING)));
    }

    /** The day of the last survey, else the day the string began. */
    static LocalDate asOf(Panel panel) {
        return panel.last() < 0
                ? panel.history().plan().inServiceOn()
                : panel.survey(panel.last()).takenOn();
    }

    private static @Nullable SurveyReadings latest(Panel panel, int from, Predicate<SurveyReadings> wanted) {
        for (int s = from; s >= 0; s--) {
            if (wanted.test(panel.survey(s))) {
                return panel.survey(s);
            }
        }
        return null;
    }

    private static double before(
            Panel panel, @Nullable SurveyReadings latest, ToDoubleFunction<SurveyReadings> figure) {
        int at = latest == null ? -1 : panel.history().surveys().indexOf(latest);
        for (int s = at - 1; s >= 0; s--) {
            double value = figure.applyAsDouble(panel.survey(s));
            if (!Double.isNaN(value)) {
                return value;
            }
        }
        return NAN;
    }

    private static double perCell(StringPlan plan, SurveyReadings survey) {
        int cells = plan.jarType().cellsPerJar();
        double measured = Numbers.positive(survey.stringVolts()) / (plan.positions() * cells);
        double fromJars = VoltsEvidence.median(survey.volts()) / cells;
        return survey.onFloat() ? Numbers.either(measured, fromJars) : NAN;
    }

    private static double expectedPerCell(StringPlan plan, SurveyReadings survey) {
        double set =
                Numbers.either(plan.floatSetpointVoltsPerCell(), plan.jarType().floatVoltsPerCell());
        return FloatVoltage.perCell(plan.jarType().technology(), set, Panel.celsius(survey));
    }

    private static double floatOff(StringPlan plan, SurveyReadings survey) {
        return perCell(plan, survey) - expectedPerCell(plan, survey);
    }

    private static double ripple(StringPlan plan, SurveyReadings survey) {
        return survey.rippleAmps() / plan.jarType().ratedAmpereHours() * 100;
    }

    private static double spread(double[] celsius) {
        return Numbers.count(celsius) < 2 ? NAN : Quantiles.quantile(celsius, 1) - Quantiles.quantile(celsius, 0);
    }

    private static double usualCelsius(Panel panel) {
        return Quantiles.median(panel.history().surveys().stream()
                .mapToDouble(survey ->
                        Double.isNaN(survey.ambientCelsius()) ? Panel.celsius(survey) : survey.ambientCelsius())
                .toArray());
    }

    /** Only of jars with a baseline of their own: a type's reference says nothing of a string's change. */
    private static double ownMedian(List<JarCase> jars, ToDoubleFunction<OhmicEvidence> figure) {
        return Quantiles.median(jars.stream()
                .map(JarCase::ohmic)
                .filter(ohmic -> ohmic.baseline() != null && !ohmic.baseline().isOfType())
                .mapToDouble(figure)
                .toArray());
    }

    double lifeUsed() {
        return ageYears / expectedYears;
    }
}
