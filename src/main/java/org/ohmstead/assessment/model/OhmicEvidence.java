package org.ohmstead.assessment.model;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a jar's ohmic readings say. Shares: 0.41 is 41 % up; NaN where there is nothing to compare with.
 *
 * @param rise last reading against the baseline
 * @param riseBefore the reading before it against the same baseline
 * @param lotRise last reading against the median of its lot in the same survey
 * @param z the same in robust standard deviations
 * @param step ln of the last reading over the one before, beyond what the whole string did; nearer 0 of the steps from
 *     the last two readings, so that coming back from one bad reading is no step
 */
record OhmicEvidence(
        @Nullable Reading last,
        @Nullable Reading before,
        @Nullable JarBaseline baseline,
        double rise,
        double riseBefore,
        double lotRise,
        double lotRiseBefore,
        double z,
        double step,
        @Nullable Trend trend) {

    private static final double NAN = Double.NaN;
    private static final OhmicEvidence NONE = new OhmicEvidence(null, null, null, NAN, NAN, NAN, NAN, NAN, NAN, null);

    static OhmicEvidence of(Panel panel, int position, Limits limits) {
        List<Reading> readings = panel.readings(position);
        if (readings.isEmpty()) {
            return NONE;
        }
        Reading last = readings.get(readings.size() - 1);
        Reading before = readings.size() > 1 ? readings.get(readings.size() - 2) : null;
        JarBaseline baseline = JarBaseline.pick(panel, panel.seats().at(position), readings, limits);
        return new OhmicEvidence(
                last,
                before,
                baseline,
                baseline == null ? NAN : baseline.rise(last.burden()),
                baseline == null || before == null ? NAN : baseline.rise(before.burden()),
                lotRise(panel, position, last),
                before == null ? NAN : lotRise(panel, position, before),
                z(panel, position, last, limits),
                step(panel, readings),
                trend(panel, readings, baseline, limits));
    }

    private static double lotRise(Panel panel, int position, Reading reading) {
        return Math.exp(Math.log(reading.burden())
                        - panel.lot(reading.survey(), position).logMedian())
                - 1;
    }

    private static double z(Panel panel, int position, Reading reading, Limits limits) {
        Panel.Lot lot = panel.lot(reading.survey(), position);
        double spread = Math.max(lot.logSpread(), limits.of(Limit.LEAST_SPREAD));
        return (Math.log(reading.burden()) - lot.logMedian()) / spread;
    }

    private static double step(Panel panel, List<Reading> readings) {
        int n = readings.size();
        if (n < 2) {
            return NAN;
        }
        double fromBefore = stepFrom(panel, readings.get(n - 2), readings.get(n - 1));
        double fromEarlier = n < 3 ? fromBefore : stepFrom(panel, readings.get(n - 3), readings.get(n - 1));
        return Math.abs(fromEarlier) < Math.abs(fromBefore) ? fromEarlier : fromBefore;
    }

    private static double stepFrom(Panel panel, Reading then, Reading now) {
        return Math.log(now.burden() / then.burden()) - panel.shift(then.survey(), now.survey());
    }

    private static @Nullable Trend trend(
            Panel panel, List<Reading> readings, @Nullable JarBaseline baseline, Limits limits) {
        int skip = Math.max(0, readings.size() - limits.countOf(Limit.TREND_MOST));
        int first = readings.get(skip).survey();
        double yardstick = baseline == null ? readings.get(0).burden() : baseline.burden();
        double[] years = new double[readings.size() - skip];
        double[] shares = new double[years.length];
        for (int i = 0; i < years.length; i++) {
            Reading reading = readings.get(skip + i);
            years[i] = panel.years(first, reading.survey());
            shares[i] = reading.burden() / yardstick;
        }
        return Trend.of(years, shares, limits);
    }
}
