package org.ohmstead.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;

/**
 * Huber's M-estimators of location: Huber, "Robust estimation of a location parameter", Ann. Math. Statist. 35 (1964)
 * 73-101; the iterations by winsorising follow Venables and Ripley, Modern Applied Statistics with S (2002), 5.5.
 *
 * <p>{@code NaN} is missing and skipped. Nothing left gives {@code NaN}; a spread of 0 gives the median.
 */
public final class Huber {

    /** The usual bound, in spreads, beyond which a value pulls no harder. */
    public static final double BOUND = 1.5;

    private static final double TOLERANCE = 1e-10;
    private static final int MOST_STEPS = 500;

    private Huber() {}

    /** The centre with the scaled median absolute deviation as fixed spread and {@link #BOUND} as bound. */
    public static double location(double[] values) {
        return location(values, Spread.mad(values), BOUND);
    }

    /**
     * The centre for a given spread.
     *
     * @param spread in the unit of the values
     * @param bound in spreads
     */
    public static double location(double[] values, double spread, double bound) {
        double[] present = Present.in(values);
        double centre = Quantiles.median(present);
        if (present.length < 2 || !(spread > 0)) {
            return centre;
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double next = clippedMean(present, centre, bound * spread);
            if (Math.abs(next - centre) <= TOLERANCE * spread) {
                return next;
            }
            centre = next;
        }
        return centre;
    }

    /** Centre and spread found together: Huber's "proposal 2". */
    public static Estimate proposalTwo(double[] values) {
        double[] present = Present.in(values);
        Estimate now = new Estimate(Quantiles.median(present), Spread.mad(present));
        for (int step = 0; step < MOST_STEPS && now.spread() > 0; step++) {
            Estimate next = proposalTwoStep(present, now);
            boolean settled = Math.abs(next.centre() - now.centre()) <= TOLERANCE * now.spread()
                    && Math.abs(next.spread() - now.spread()) <= TOLERANCE * now.spread();
            now = next;
            if (settled) {
                break;
            }
        }
        return now;
    }

    private static Estimate proposalTwoStep(double[] values, Estimate from) {
        double reach = BOUND * from.spread();
        double centre = clippedMean(values, from.centre(), reach);
        double sum = 0;
        for (double value : values) {
            double off = clip(value, from.centre(), reach) - centre;
            sum += off * off;
        }
        return new Estimate(centre, Math.sqrt(sum / (values.length - 1) / clippedNormalVariance()));
    }

    /** The mean square of a standard normal number clipped at the bound. */
    private static double clippedNormalVariance() {
        NormalDistribution normal = new NormalDistribution();
        double inside = 2 * normal.cumulativeProbability(BOUND) - 1;
        return inside + BOUND * BOUND * (1 - inside) - 2 * BOUND * normal.density(BOUND);
    }

    private static double clippedMean(double[] values, double centre, double reach) {
        double sum = 0;
        for (double value : values) {
            sum += clip(value, centre, reach);
        }
        return sum / values.length;
    }

    private static double clip(double value, double centre, double reach) {
        return Math.max(centre - reach, Math.min(centre + reach, value));
    }

    /** A centre with the spread around it. */
    public record Estimate(double centre, double spread) {}
}
