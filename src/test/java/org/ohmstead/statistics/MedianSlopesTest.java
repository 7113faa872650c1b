package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class MedianSlopesTest {

    private static final double LEVEL = 0.8;

    private final Random random = new Random(1968);
    private final MedianSlopes slopes = new MedianSlopes(LEVEL);

    @Test
    void slopeAndIntervalAreThoseOfTheWholeLine() {
        for (int count = 0; count < 70; count++) {
            double[] x = numbers(count, count % 3 == 0 ? 4 : 1_000);
            double[] y = numbers(count, count % 4 == 0 ? 3 : 1_000);
            if (count > 20) {
                y[7] = Double.NaN;
            }
            TheilSen line = TheilSen.of(x, y);
            MedianSlopes.MedianSlope found = slopes.of(x, y);
            assertThat(Double.valueOf(found.slope())).isEqualTo(Double.valueOf(line.slope()));
            assertThat(found.interval()).isEqualTo(line.slopeInterval(LEVEL));
        }
    }

    @Test
    void pairsOfOneDayHaveNoSlope() {
        MedianSlopes.MedianSlope found = slopes.of(new double[] {2, 2, 2, 2}, new double[] {1, 2, 3, 4});
        assertThat(found.slope()).isNaN();
        assertThat(found.interval()).isEqualTo(Interval.UNKNOWN);
    }

    private double[] numbers(int count, int different) {
        double[] numbers = new double[count];
        Arrays.setAll(numbers, i -> random.nextInt(different) - different / 3);
        return numbers;
    }
}
