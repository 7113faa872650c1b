package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class RanksTest {

    private final Random random = new Random(65);

    @Test
    void everyRankHoldsWhatSortingPutsThere() {
        for (int length = 1; length <= 300; length++) {
            double[] values = values(length, length % 3 == 0 ? 4 : 1_000_000);
            int lower = random.nextInt(length);
            int upper = lower + random.nextInt(length - lower);
            double[] sorted = sorted(values);
            Ranks.settle(values, lower, upper);
            assertThat(values[lower]).isEqualTo(sorted[lower]);
            assertThat(values[upper]).isEqualTo(sorted[upper]);
            assertThat(sorted(Arrays.copyOf(values, lower))).isEqualTo(Arrays.copyOf(sorted, lower));
            assertThat(sorted(values)).isEqualTo(sorted);
        }
    }

    @Test
    void infinityAndWhatIsNoNumberStandWhereSortingPutsThem() {
        double[] values = {Double.NaN, 1, Double.POSITIVE_INFINITY, -0.0, Double.NEGATIVE_INFINITY, 0.0, -3};
        double[] sorted = sorted(values);
        for (int rank = 0; rank < values.length; rank++) {
            double[] settled = values.clone();
            Ranks.settle(settled, rank);
            assertThat(Double.valueOf(settled[rank])).isEqualTo(Double.valueOf(sorted[rank]));
        }
    }

    @Test
    void theIntervalOfSlopesStandsAtTheRanksOfTheSortedSlopes() {
        for (int count = 4; count < 40; count++) {
            double[] x = new double[count];
            Arrays.setAll(x, i -> i);
            TheilSen line = TheilSen.of(x, values(count, 7));
            double[] sorted = sorted(line.slopes());
            assertThat(line.slope()).isEqualTo(Quantiles.ofSorted(sorted, 0.5));
            double reach = new NormalDistribution().inverseCumulativeProbability(0.9) * Math.sqrt(line.scoreVariance());
            int rank = (int) Math.round((sorted.length - reach) / 2);
            assertThat(line.slopeInterval(0.8))
                    .isEqualTo(
                            rank < 1
                                    ? Interval.EVERYTHING
                                    : new Interval(sorted[rank - 1], sorted[sorted.length - rank]));
        }
    }

    private double[] values(int count, int different) {
        return random.doubles(count, 0, different).map(Math::rint).toArray();
    }

    private static double[] sorted(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted;
    }
}
