package org.ohmstead.assessment.model.forecast;

import java.util.Arrays;
import org.ohmstead.statistics.Quantiles;

/**
 * Watches each jar's volts for a shorted cell: its difference to the string's median against its own mean difference. The
 * spread between jars says little; a jar's own scatter is about a third of it.
 */
final class VoltWatch {
    private static final double START_DEVIATION = .004;
    private static final double FLOOR_DEVIATION = .002;
    /** Own scatter over spread between jars, squared: what a first reading is worth. */
    private static final double PRIOR_READINGS = .11;

    private static final double MEMORY_READINGS = 8;
    private static final double SHORTS_PER_YEAR = .004;
    private static final double DEEPEST_VOLTS = .4;
    private static final double RELEASE_AFTER_YEARS = .5;
    private static final double SLIGHTLY_LOW = 6;
    private static final double LOW = 3;

    final double[] offset;
    final double[] readings;
    final double[] shortProbability;
    final double[] suspectedSince;
    private final boolean[] low;
    double variance = START_DEVIATION * START_DEVIATION;

    VoltWatch(int jars) {
        this.offset = new double[jars];
        this.readings = new double[jars];
        this.shortProbability = new double[jars];
        this.suspectedSince = new double[jars];
        this.low = new boolean[jars];
        Arrays.fill(suspectedSince, Double.NaN);
    }

    void restart(int jar) {
        offset[jar] = 0;
        readings[jar] = 0;
        shortProbability[jar] = 0;
        suspectedSince[jar] = Double.NaN;
    }

    /** @param voltsPerCell one per jar, NaN where missing */
    void take(double[] voltsPerCell, double years, double sinceLast) {
        Arrays.fill(low, false);
        double middle = Quantiles.median(voltsPerCell);
        if (!Double.isFinite(middle)) {
            return;
        }
        double shortsSince = -Math.expm1(-SHORTS_PER_YEAR * Math.max(0, sinceLast));
        double[] ratios = new double[voltsPerCell.length];
        for (int jar = 0; jar < voltsPerCell.length; jar++) {
            ratios[jar] = takeOne(jar, voltsPerCell[jar] - middle, years, shortsSince);
        }
        learn(ratios);
    }

    private double takeOne(int jar, double difference, double years, double shortsSince) {
        if (!Double.isFinite(difference)) {
            return Double.NaN;
        }
        double residual = difference - offset[jar];
        double expected = variance * (1 + 1 / (readings[jar] + PRIOR_READINGS));
        low[jar] = residual < -LOW * Math.sqrt(expected);
        judge(jar, residual, expected, shortsSince);
        release(jar, difference, residual, years);
        double weight = 1 - shortProbability[jar];
        readings[jar] = Math.min(MEMORY_READINGS, readings[jar] + weight);
        offset[jar] += weight * (difference - offset[jar]) / (readings[jar] + PRIOR_READINGS);
        return residual * residual / expected;
    }

    /**
     * Bayes between a heavy-tailed healthy law and a low one, evenly spread over the decades of the fall.
     *
     * @param shortsSince share of sound jars that got a short since the last survey
     */
    private void judge(int jar, double residual, double expected, double shortsSince) {
        double before = shortProbability[jar];
        double prior = before + (1 - before) * shortsSince;
        double shorted = prior * densityWhenShorted(-residual, Math.sqrt(expected));
        double sound = (1 - prior) * heavyTailed(residual / Math.sqrt(expected)) / Math.sqrt(expected);
        shortProbability[jar] = shorted / (shorted + sound);
    }

    private static double densityWhenShorted(double fall, double deviation) {
        double least = 2 * deviation;
        double within = Math.max(least, Math.min(fall, DEEPEST_VOLTS));
        double density = 1 / (within * Math.log((DEEPEST_VOLTS + 2 * least) / least));
        return fall < least ? density * .1 * Math.exp((fall - least) / deviation) : density;
    }

    /** Student's law with four degrees of freedom. */
    private static double heavyTailed(double t) {
        return .375 * Math.pow(1 + t * t / 4, -2.5);
    }

    /** Volts that stay only slightly low for half a year are another level, not a short. */
    private void release(int jar, double difference, double residual, double years) {
        if (shortProbability[jar] < .5) {
            suspectedSince[jar] = Double.NaN;
        } else if (Double.isNaN(suspectedSince[jar])) {
            suspectedSince[jar] = years;
        } else if (years - suspectedSince[jar] > RELEASE_AFTER_YEARS
                && -residual < SLIGHTLY_LOW * Math.sqrt(variance)) {
            restart(jar);
            offset[jar] = difference;
        }
    }

    private void learn(double[] ratios) {
        double seen = Quantiles.median(ratios) / .4549;
        if (Double.isFinite(seen) && ratios.length >= 4) {
            double learned = variance * (1 + .2 * (Math.min(seen, 9) - 1));
            variance = Math.max(FLOOR_DEVIATION * FLOOR_DEVIATION, learned);
        }
    }

    boolean[] low() {
        return low;
    }

    VoltWatch copy() {
        VoltWatch copy = new VoltWatch(offset.length);
        System.arraycopy(offset, 0, copy.offset, 0, offset.length);
        System.arraycopy(readings, 0, copy.readings, 0, readings.length);
        System.arraycopy(shortProbability, 0, copy.shortProbability, 0, shortProbability.length);
        System.arraycopy(suspectedSince, 0, copy.suspectedSince, 0, suspectedSince.length);
        System.arraycopy(low, 0, copy.low, 0, low.length);
        copy.variance = variance;
        return copy;
    }

    void write(DoubleTape tape) {
        tape.putAll(offset);
        tape.putAll(readings);
        tape.putAll(shortProbability);
        tape.putAll(suspectedSince);
        for (boolean isLow : low) {
            tape.put(isLow);
        }
        tape.put(variance);
    }

    static VoltWatch read(DoubleTape tape, int jars) {
        VoltWatch watch = new VoltWatch(jars);
        for (double[] part :
                new double[][] {watch.offset, watch.readings, watch.shortProbability, watch.suspectedSince}) {
            System.arraycopy(tape.take(jars), 0, part, 0, jars);
        }
        for (int jar = 0; jar < jars; jar++) {
            watch.low[jar] = tape.takeBoolean();
        }
        watch.variance = tape.take();
        return watch;
    }
}
