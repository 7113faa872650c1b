package org.ohmstead.assessment.model.forecast;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.ohmstead.assessment.model.JarSpell;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.LinkPlan;
import org.ohmstead.assessment.model.LinkRemake;
import org.ohmstead.assessment.model.StringHistory;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.kernel.DateRange;
import org.ohmstead.kernel.LinkKind;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/** A string whose readings a test writes down as a sentence. */
final class StringOf {
    static final LocalDate IN_SERVICE = LocalDate.of(2015, 3, 1);
    private final int jars;
    private final List<JarSpell> spells = new ArrayList<>();
    private final List<LinkRemake> remakes = new ArrayList<>();
    private final List<SurveyReadings> surveys = new ArrayList<>();
    private Random random = new Random(7);
    private double ohmicPerKelvin = Double.NaN;
    OhmicKind kind = OhmicKind.IMPEDANCE;
    String instrument = "A-1";
    double repeatability = .01;

    private StringOf(int jars) {
        this.jars = jars;
        for (int p = 1; p <= jars; p++) {
            spells.add(new JarSpell(p, "S" + p, DateRange.startingOn(IN_SERVICE), Double.NaN));
        }
    }

    static StringOf jars(int jars) {
        return new StringOf(jars);
    }

    StringOf scatteredBy(Random chance) {
        random = chance;
        return this;
    }

    StringOf withTemperatureCoefficient(double perKelvin) {
        ohmicPerKelvin = perKelvin;
        return this;
    }

    StringOf withJarReplacedOn(int position, LocalDate day) {
        spells.set(position - 1, new JarSpell(position, "S" + position, new DateRange(IN_SERVICE, day), Double.NaN));
        spells.add(new JarSpell(position, "N" + position, DateRange.startingOn(day), Double.NaN));
        return this;
    }

    StringOf withLinkRemadeOn(int ordinal, LocalDate day) {
        remakes.add(new LinkRemake(ordinal, day));
        return this;
    }

    /** Sound readings with scatter, changed by the test. */
    interface Change {
        void apply(double[] ohmic, double[] volts, double[][] links);
    }

    StringOf surveyedOn(LocalDate day) {
        return surveyedOn(day, (ohmic, volts, links) -> {});
    }

    StringOf surveyedOn(LocalDate day, Change change) {
        double[] ohmic = new double[jars];
        double[] volts = new double[jars];
        double[] celsius = new double[jars];
        double[][] links = new double[jars + 1][];
        Arrays.setAll(ohmic, i -> (kind.risesWithAge() ? .40 : 2500) * scatter(repeatability));
        Arrays.setAll(volts, i -> 2.25 + .004 * random.nextGaussian());
        Arrays.setAll(links, i -> new double[] {25 * scatter(.04)});
        Arrays.fill(celsius, 25);
        change.apply(ohmic, volts, links);
        add(day, ohmic, volts, celsius, links);
        return this;
    }

    private double scatter(double deviation) {
        return Math.exp(deviation * random.nextGaussian());
    }

    void add(LocalDate day, double[] ohmic, double[] volts, double[] celsius, double[][] links) {
        surveys.add(new SurveyReadings(
                surveys.size() + 1,
                day.atTime(9, 0).toInstant(ZoneOffset.UTC),
                day,
                kind,
                instrument,
                25,
                2.25 * jars,
                Double.NaN,
                true,
                ohmic,
                volts,
                celsius,
                links));
    }

    StringPlan plan() {
        List<LinkPlan> links = new ArrayList<>();
        for (int k = 0; k <= jars; k++) {
            LinkKind linkKind = k == 0 || k == jars ? LinkKind.TERMINAL : LinkKind.STRAP;
            links.add(new LinkPlan(k, linkKind, 1, null));
        }
        JarTypeFacts type = new JarTypeFacts(
                "T",
                Technology.VENTED_LEAD_ACID,
                1,
                2,
                400,
                2.25,
                Double.NaN,
                OhmicKind.IMPEDANCE,
                ohmicPerKelvin,
                15,
                25);
        return new StringPlan(1, type, jars, links, 2.25, 100, 60, IN_SERVICE);
    }

    StringHistory history() {
        return new StringHistory(plan(), spells, remakes, surveys);
    }

    Forecaster forecaster() {
        return Forecaster.of(history(), ForecastParameters.standard());
    }

    StringForecast forecast() {
        Forecaster forecaster = forecaster();
        return forecaster.forecast(forecaster.follow(surveys));
    }
}
