package org.ohmstead.assessment.model;

import org.ohmstead.statistics.Quantiles;

/**
 * What a jar's float voltage says, from the last two surveys on float in which the jar that sits there now was read. NaN
 * where nothing was read.
 *
 * @param volts of the jar
 * @param perCell of its cells on average
 * @param offMedian share off the string's median in the same survey: -0.04 is 4 % low
 */
record VoltsEvidence(
        double volts,
        double perCell,
        double medianPerCell,
        double offMedian,
        double perCellBefore,
        double offMedianBefore) {

    private static final double NAN = Double.NaN;

    static VoltsEvidence of(Panel panel, int position) {
        int last = lastRead(panel, position, panel.last());
        if (last < 0) {
            return new VoltsEvidence(NAN, NAN, NAN, NAN, NAN, NAN);
        }
        int before = lastRead(panel, position, last - 1);
        int cells = panel.history().plan().jarType().cellsPerJar();
        double volts = panel.survey(last).volts()[position - 1];
        double median = panel.medianVolts(last);
        return new VoltsEvidence(
                volts,
                volts / cells,
                median / cells,
                volts / median - 1,
                before < 0 ? NAN : panel.survey(before).volts()[position - 1] / cells,
                before < 0 ? NAN : panel.survey(before).volts()[position - 1] / panel.medianVolts(before) - 1);
    }

    private static int lastRead(Panel panel, int position, int from) {
        JarSpell spell = panel.seats().at(position);
        for (int s = from; s >= 0; s--) {
            SurveyReadings survey = panel.survey(s);
            boolean read = !Double.isNaN(Numbers.positive(Numbers.at(survey.volts(), position - 1)));
            if (read && survey.onFloat() && spell.during().contains(survey.takenOn())) {
                return s;
            }
        }
        return -1;
    }

    /** Median of the jars' volts, NaN when fewer than three were read. */
    static double median(double[] volts) {
        return Numbers.count(volts) < 3 ? NAN : Quantiles.median(volts);
    }
}
