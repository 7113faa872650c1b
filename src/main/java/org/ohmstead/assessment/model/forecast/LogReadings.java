package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;
import org.ohmstead.assessment.model.JarTypeFacts;
import org.ohmstead.assessment.model.StringPlan;
import org.ohmstead.assessment.model.SurveyReadings;
import org.ohmstead.statistics.Quantiles;

/** A survey's readings as logarithms that rise with age; what cannot be a reading is missing. */
final class LogReadings {
    private static final double CLOSE_TO_A_POWER = .2;
    private static final double REFERENCE_CELSIUS = 25;

    private LogReadings() {}

    /** Jars: power-of-ten slips undone, corrected to 25 °C by the type's own coefficient if it has one. */
    static double[] ofJars(StringPlan plan, SurveyReadings survey) {
        double[] logs = new double[plan.positions()];
        double middle = middleCelsius(survey);
        for (int i = 0; i < logs.length; i++) {
            double own = at(survey.celsius(), i);
            double factor = temperatureFactor(plan.jarType(), Double.isFinite(own) ? own : middle);
            logs[i] = log(at(survey.ohmic(), i)) - Math.log(factor);
        }
        undoSlips(logs, 1);
        if (!survey.ohmicKind().risesWithAge()) {
            Arrays.setAll(logs, i -> -logs[i]);
        }
        return logs;
    }

    private static double temperatureFactor(JarTypeFacts type, double celsius) {
        double factor = 1 + type.ohmicPerKelvin() * (celsius - REFERENCE_CELSIUS);
        return factor > .3 && factor < 3 ? factor : 1;
    }

    /** Of a jar whose temperature was not read. */
    private static double middleCelsius(SurveyReadings survey) {
        double middle = Quantiles.median(survey.celsius());
        return Double.isFinite(middle) ? middle : survey.ambientCelsius();
    }

    /** Links: parallel straps as one conductor. */
    static double[] ofLinks(StringPlan plan, SurveyReadings survey) {
        double[] logs = new double[plan.links().size()];
        for (int i = 0; i < logs.length; i++) {
            logs[i] = i < survey.linkMicroohms().length ? log(together(survey.linkMicroohms()[i])) : Double.NaN;
        }
        undoSlips(logs, 3);
        return logs;
    }

    /** Mean conductance of the straps that were read, as a resistance. */
    private static double together(double[] straps) {
        double conductance = 0;
        int read = 0;
        for (double strap : straps) {
            if (strap > 0) {
                conductance += 1 / strap;
                read++;
            }
        }
        return read / conductance;
    }

    static double log(double value) {
        return value > 0 && value < Double.POSITIVE_INFINITY ? Math.log(value) : Double.NaN;
    }

    private static double at(double[] values, int i) {
        return i < values.length ? values[i] : Double.NaN;
    }

    /**
     * Takes powers of ten out that lie between a reading and the string's median.
     *
     * @param leastUp upward slips of fewer decades stay: a loose joint may well read ten times as much
     */
    private static void undoSlips(double[] logs, int leastUp) {
        double middle = Quantiles.median(logs);
        for (int i = 0; i < logs.length; i++) {
            double decades = (logs[i] - middle) / Math.log(10);
            long slip = Math.round(decades);
            if ((slip >= leastUp || slip <= -1) && Math.abs(decades - slip) < CLOSE_TO_A_POWER) {
                logs[i] -= slip * Math.log(10);
            }
        }
    }

    /** A whole survey in another unit: taken out against what is expected of its middle. */
    static void undoSurveySlip(double[] logs, double expected) {
        double decades = (Quantiles.median(logs) - expected) / Math.log(10);
        long slip = Math.round(decades);
        if (slip != 0 && Math.abs(decades - slip) < CLOSE_TO_A_POWER) {
            Arrays.setAll(logs, i -> logs[i] - slip * Math.log(10));
        }
    }

    static double[] voltsPerCell(StringPlan plan, SurveyReadings survey) {
        double[] volts = new double[plan.positions()];
        for (int i = 0; i < volts.length; i++) {
            double read = at(survey.volts(), i);
            boolean tells = survey.onFloat() && read > 0 && read < 1000;
            volts[i] = tells ? read / Math.max(1, plan.jarType().cellsPerJar()) : Double.NaN;
        }
        return volts;
    }
}
