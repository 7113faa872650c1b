package org.ohmstead.intake.check;

import java.math.BigDecimal;
import java.util.Arrays;
import org.hipparchus.distribution.continuous.ChiSquaredDistribution;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.ohmstead.statistics.Quantiles;

/**
 * The last digits of the values of a survey, in the order of the walk.
 *
 * @param values above zero
 * @param decimals places behind the point that the last digit stands at; negative before it
 */
record LastDigits(double[] values, int decimals) {

    private static final int TEN = 10;
    private static final int COARSEST = -3;

    /** At the last place that any of the values uses. */
    static LastDigits of(double[] read) {
        double[] values = Arrays.stream(read).filter(value -> value > 0).toArray();
        int decimals = Arrays.stream(values)
                .mapToInt(
                        value -> BigDecimal.valueOf(value).stripTrailingZeros().scale())
                .max()
                .orElse(COARSEST);
        return new LastDigits(values, Math.max(COARSEST, decimals));
    }

    /** At the other's last place, where that one is finer. */
    LastDigits asFineAs(LastDigits other) {
        return new LastDigits(values, Math.max(decimals, other.decimals));
    }

    /** One unit of the last digit. */
    double step() {
        return Math.pow(TEN, -decimals);
    }

    /** Over how many steps of the last digit the middle four fifths of the values spread. */
    double width() {
        return (Quantiles.quantile(values, 0.9) - Quantiles.quantile(values, 0.1)) / step();
    }

    int size() {
        return values.length;
    }

    int[] counts() {
        int[] counts = new int[TEN];
        Arrays.stream(digits()).forEach(digit -> counts[digit]++);
        return counts;
    }

    /** How many jars show the last digit of the jar before. */
    int repeats() {
        int[] digits = digits();
        int repeats = 0;
        for (int i = 1; i < digits.length; i++) {
            repeats += digits[i] == digits[i - 1] ? 1 : 0;
        }
        return repeats;
    }

    /**
     * How rarely measured values have last digits as uneven and as seldom repeated as these: the chances of both, joined
     * after Fisher.
     */
    double chance() {
        double expected = size() / (double) TEN;
        double uneven = Arrays.stream(counts())
                .mapToDouble(count -> (count - expected) * (count - expected) / expected)
                .sum();
        double even = 1 - new ChiSquaredDistribution(TEN - 1).cumulativeProbability(uneven);
        double repeated = new BinomialDistribution(size() - 1, 1.0 / TEN).cumulativeProbability(repeats());
        double joined = -2 * (Math.log(Math.max(even, Double.MIN_NORMAL)) + Math.log(repeated));
        return 1 - new ChiSquaredDistribution(4).cumulativeProbability(joined);
    }

    private int[] digits() {
        return Arrays.stream(values)
                .mapToInt(value -> (int) Math.floorMod(Math.round(value / step()), (long) TEN))
                .toArray();
    }
}
