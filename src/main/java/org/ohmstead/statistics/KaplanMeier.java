package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * The product-limit estimate of survival: Kaplan and Meier, JASA 53 (1958) 457-481, with Greenwood's variance.
 *
 * <p>Units with a {@code NaN} time are skipped. Without failures there are no steps and survival is 1 everywhere; where
 * survival reaches 0 its error is {@code NaN}, as in R's survival package. A unit censored at the time of a failure still
 * counts as at risk then.
 *
 * @param times of the failures, rising, each once
 * @param survival just after each
 * @param standardErrors Greenwood's, of the survival
 */
public record KaplanMeier(double[] times, double[] survival, double[] standardErrors) {

    /**
     * Estimates from follow-up times.
     *
     * @param failed whether the time is a failure's; otherwise the unit was last seen alive then
     */
    public static KaplanMeier of(double[] times, boolean[] failed) {
        return of(RiskTable.of(times, failed));
    }

    /**
     * The same for many units that share a time and a fate.
     *
     * @param counts how many units each row stands for
     */
    public static KaplanMeier of(double[] times, boolean[] failed, double[] counts) {
        return of(RiskTable.counted(times, failed, counts));
    }

    private static KaplanMeier of(RiskTable risk) {
        int steps = risk.times().length;
        double[] survival = new double[steps];
        double[] errors = new double[steps];
        double now = 1;
        double greenwood = 0;
        for (int i = 0; i < steps; i++) {
            double n = risk.atRisk()[i];
            double d = risk.failures()[i];
            now *= (n - d) / n;
            greenwood += d / (n * (n - d));
            survival[i] = now;
            errors[i] = now > 0 ? now * Math.sqrt(greenwood) : Double.NaN;
        }
        return new KaplanMeier(risk.times(), survival, errors);
    }

    /** The survival at a time: 1 before the first failure. */
    public double at(double time) {
        int step = stepAt(time);
        return step < 0 ? 1 : survival[step];
    }

    /** The interval on the plain scale, cut to 0 and 1. */
    public Interval plainInterval(double time, double level) {
        int step = stepAt(time);
        if (step < 0) {
            return new Interval(1, 1);
        }
        double reach = normal(level) * standardErrors[step];
        return new Interval(Math.max(0, survival[step] - reach), Math.min(1, survival[step] + reach));
    }

    /** The interval on the log scale, cut to 1: exp(ln S ± z·se/S). */
    public Interval logInterval(double time, double level) {
        int step = stepAt(time);
        if (step < 0) {
            return new Interval(1, 1);
        }
        double factor = Math.exp(normal(level) * standardErrors[step] / survival[step]);
        return new Interval(survival[step] / factor, Math.min(1, survival[step] * factor));
    }

    /**
     * The interval on the log-minus-log scale, which stays between 0 and 1 by itself: S to the power exp(± z·se/(S·ln S)).
     * Not known where survival is 0.
     */
    public Interval logLogInterval(double time, double level) {
        int step = stepAt(time);
        if (step < 0) {
            return new Interval(1, 1);
        }
        double s = survival[step];
        double reach = normal(level) * standardErrors[step] / (s * Math.log(s));
        return new Interval(Math.pow(s, Math.exp(-reach)), Math.pow(s, Math.exp(reach)));
    }

    /** The first time by which at least the share has failed; {@code NaN} if that was not seen. */
    public double quantile(double share) {
        for (int i = 0; i < times.length; i++) {
            if (survival[i] <= 1 - share) {
                return times[i];
            }
        }
        return Double.NaN;
    }

    private int stepAt(double time) {
        int place = Arrays.binarySearch(times, time);
        return place >= 0 ? place : -place - 2;
    }

    private static double normal(double level) {
        return new NormalDistribution().inverseCumulativeProbability(0.5 + level / 2);
    }
}
