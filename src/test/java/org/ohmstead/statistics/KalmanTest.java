package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.hipparchus.filtering.kalman.Measurement;
import org.hipparchus.filtering.kalman.ProcessEstimate;
import org.hipparchus.filtering.kalman.linear.LinearEvolution;
import org.hipparchus.filtering.kalman.linear.LinearKalmanFilter;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposer;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KalmanTest {

    private static final double NAN = Double.NaN;

    private static final double[] YEARS = Table.read("Nile.csv").numbers("year");
    private static final double[] FLOW = Table.read("Nile.csv").numbers("flow");

    private record Reading(double getTime, RealVector getValue, RealMatrix getCovariance) implements Measurement {}

    /** Random stable systems of one to four states; the library's linear filter is the oracle, to 1e-9. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4})
    void theLibrarysLinearFilterAgrees(int states) {
        Random random = new Random(states);
        double[] transition = random.doubles(states * states, -0.6, 0.6).toArray();
        double[] noise = covariance(random, states);
        double[] h = random.doubles(states, 0.2, 1).toArray();
        double[] mean = random.doubles(states, -1, 1).toArray();
        double[] covariance = covariance(random, states);
        double[] readings = random.doubles(30, -3, 3).toArray();
        ProcessEstimate oracle = oracle(transition, noise, h, mean, covariance, readings);
        for (double reading : readings) {
            Kalman.predict(mean, covariance, transition, noise);
            Kalman.update(mean, covariance, h, reading, 0.4);
        }
        assertThat(mean).containsExactly(oracle.getState().toArray(), within(1e-9));
        assertThat(covariance).containsExactly(flat(oracle.getCovariance()), within(1e-9));
    }

    private static ProcessEstimate oracle(
            double[] transition, double[] noise, double[] h, double[] mean, double[] covariance, double[] readings) {
        int n = mean.length;
        RealMatrix command = new Array2DRowRealMatrix(n, n);
        LinearEvolution evolution = new LinearEvolution(
                square(transition), command, new ArrayRealVector(n), square(noise), MatrixUtils.createRowRealMatrix(h));
        LinearKalmanFilter<Reading> filter = new LinearKalmanFilter<>(
                new CholeskyDecomposer(1e-15, 1e-15),
                reading -> evolution,
                new ProcessEstimate(0, new ArrayRealVector(mean), square(covariance)));
        RealMatrix variance = MatrixUtils.createRealDiagonalMatrix(new double[] {0.4});
        return Stream.iterate(0, i -> i < readings.length, i -> i + 1)
                .map(i -> new Reading(i + 1.0, new ArrayRealVector(new double[] {readings[i]}), variance))
                .map(filter::estimationStep)
                .reduce((before, after) -> after)
                .orElseThrow();
    }

    private static double[] covariance(Random random, int states) {
        RealMatrix root = square(random.doubles(states * states, -1, 1).toArray());
        return flat(root.multiplyTransposed(root).add(MatrixUtils.createRealIdentityMatrix(states)));
    }

    private static RealMatrix square(double[] rows) {
        int n = (int) Math.sqrt(rows.length);
        RealMatrix matrix = new Array2DRowRealMatrix(n, n);
        for (int i = 0; i < rows.length; i++) {
            matrix.setEntry(i / n, i % n, rows[i]);
        }
        return matrix;
    }

    private static double[] flat(RealMatrix matrix) {
        return Stream.of(matrix.getData())
                .flatMapToDouble(java.util.Arrays::stream)
                .toArray();
    }

    /** R's StructTS starts from a wide prior and stops early, hence 1e-4 for what it estimated. */
    @Test
    void theNilesVariancesAreFound() {
        LocalLevel nile = LocalLevel.fit(YEARS, FLOW);
        LocalLevel.Track filtered = nile.filter(YEARS, FLOW);
        double[] smoothed = filtered.smooth().levels();
        Reference.set("Nile_local_level")
                .agreesWith(
                        Map.of(
                                "var_level", nile.levelVariance(),
                                "var_eps", nile.noiseVariance(),
                                "smoothed_1871", smoothed[0],
                                "smoothed_1970", smoothed[99],
                                "filtered_1970", filtered.levels()[99]),
                        1e-4);
    }

    @Test
    void theNilesLevelIsFollowedAtPublishedVariances() {
        LocalLevel.Track filtered = new LocalLevel(1469.1, 15099).filter(YEARS, FLOW);
        Reference.set("Nile_local_level_fixed")
                .agreesWith(
                        Map.of(
                                "filtered_a_100|100 (H=15099,Q=1469.1, init a=y1,P=H)", filtered.levels()[99],
                                "filtered_P_100|100", filtered.variances()[99]),
                        1e-9);
    }

    /** -632.54 is where Table 2.1 of Durbin and Koopman (2001) ends, from memory; the maximum is checked by itself. */
    @Test
    void theNilesDiffuseLikelihoodAgrees() {
        LocalLevel.Track filtered = new LocalLevel(1469.1, 15099).filter(YEARS, FLOW);
        double profile = filtered.logLikelihood();
        assertThat(new LocalLevel(1469.1 * 1.3, 15099).filter(YEARS, FLOW).logLikelihood())
                .isLessThan(profile);
        assertThat(new LocalLevel(1469.1, 15099 * 0.8).filter(YEARS, FLOW).logLikelihood())
                .isLessThan(profile);
        assertThat(filtered.smooth().logLikelihood()).isEqualTo(profile);
        assertThat(filtered.smooth().smooth().levels())
                .containsExactly(filtered.smooth().levels());
        assertThat(profile).isEqualTo(-632.54, within(0.01));
    }

    /** The general step with a start at the first reading must walk the same path as the scalar filter. */
    @Test
    void theGeneralStepAndTheScalarFilterAgree() {
        double[] mean = {FLOW[0]};
        double[] covariance = {15099};
        double logLikelihood = 0;
        for (int i = 1; i < FLOW.length; i++) {
            Kalman.predict(mean, covariance, new double[] {1}, new double[] {1469.1});
            logLikelihood += Kalman.update(mean, covariance, new double[] {1}, FLOW[i], 15099);
        }
        LocalLevel.Track track = new LocalLevel(1469.1, 15099).filter(YEARS, FLOW);
        assertThat(mean[0]).isEqualTo(track.levels()[99], within(1e-9));
        assertThat(logLikelihood).isEqualTo(track.logLikelihood(), within(1e-9));
    }

    /** Smoothing three readings by the joint normal law: a level in the gap is the mean of equal neighbours, by hand. */
    @Test
    void aGapIsBridgedFromBothSides() {
        LocalLevel model = new LocalLevel(2, 1);
        LocalLevel.Track smooth =
                model.filter(new double[] {0, 1, 2}, new double[] {10, NAN, 20}).smooth();
        double gain = 1 / 6.0;
        assertThat(smooth.levels()).containsExactly(new double[] {10 + 10 * gain, 15, 20 - 10 * gain}, within(1e-12));
        assertThat(smooth.variances()[0]).isEqualTo(5 / 6.0, within(1e-12));
        assertThat(smooth.variances()[1]).isEqualTo(1.5, within(1e-12));
    }

    @Test
    void theLevelIsUnknownBeforeTheFirstReading() {
        LocalLevel.Track track = new LocalLevel(2, 1).filter(new double[] {0, 1, 3}, new double[] {NAN, 5, NAN});
        assertThat(track.levels()).containsExactly(NAN, 5, 5);
        assertThat(track.variances()).containsExactly(NAN, 1, 5);
        assertThat(track.logLikelihood()).isEqualTo(-0.0);
    }

    @Test
    void shortOrConstantSeriesHaveNoVariancesToFind() {
        assertThat(LocalLevel.fit(new double[] {0, 1, 2}, new double[] {1, 2, NAN})
                        .levelVariance())
                .isNaN();
        assertThat(LocalLevel.fit(new double[] {0, 1, 2}, new double[] {3, 3, 3}))
                .isEqualTo(new LocalLevel(0, 0));
        LocalLevel still = new LocalLevel(0, 0);
        assertThat(still.filter(new double[] {0, 1}, new double[] {3, NAN})
                        .smooth()
                        .levels())
                .containsExactly(3, 3);
    }

    @Test
    void aMissingReadingChangesNothing() {
        double[] mean = {1, 2};
        double[] covariance = {1, 0.5, 0.5, 2};
        assertThat(Kalman.update(mean, covariance, new double[] {1, 0}, NAN, 1)).isZero();
        assertThat(mean).containsExactly(1, 2);
        assertThat(covariance).containsExactly(1, 0.5, 0.5, 2);
    }

    @Test
    void whatAReadingSeesHasMeanAndVariance() {
        double[] h = {1, 2};
        assertThat(Kalman.expected(new double[] {3, 4}, h)).isEqualTo(11);
        assertThat(Kalman.seenVariance(new double[] {1, 0.5, 0.5, 2}, h)).isEqualTo(1 + 2 + 8);
        double[] three = {1, 0.1, 0.2, 0.1, 2, 0.3, 0.2, 0.3, 4};
        assertThat(Kalman.seenVariance(three, new double[] {2, 3, 5}))
                .isEqualTo(4 + 18 + 100 + 2 * (0.6 + 2 + 4.5), within(1e-12));
    }

    /** φ(1)/2 at variance 4, from tables: 0.2419707 / 2. */
    @Test
    void theLogDensityIsThatOfTheNormalLaw() {
        assertThat(Math.exp(Kalman.logDensity(2, 4))).isEqualTo(0.2419707 / 2, within(1e-7));
    }

    @Test
    void motionIntegratesRateAndAcceleration() {
        assertThat(Motion.transition(1, 2)).containsExactly(1);
        assertThat(Motion.transition(2, 2)).containsExactly(1, 2, 0, 1);
        assertThat(Motion.transition(3, 2)).containsExactly(1, 2, 2, 0, 1, 2, 0, 0, 1);
        assertThat(Motion.integratedNoise(2, 3, 2)).containsExactly(8, 6, 6, 6);
        assertThat(Motion.integratedNoise(3, 3, 2)).containsExactly(8, 6, 0, 6, 6, 0, 0, 0, 0);
    }

    /** Integrated noise over an interval must equal that over its halves. */
    @Test
    void aTrendAdvancesTheSameInOneStepOrTwo() {
        LocalTrend trend = new LocalTrend(0.3, 0.2, 1);
        LocalTrend.State start = new LocalTrend.State(0, new double[] {1, 0.5}, new double[] {1, 0.1, 0.1, 0.4}, 0);
        LocalTrend.State once = trend.advance(start, 2, 3);
        LocalTrend.State twice = trend.run(start, new double[] {0.7, 2}, new double[] {NAN, 3});
        assertThat(twice.mean()).containsExactly(once.mean(), within(1e-12));
        assertThat(twice.covariance()).containsExactly(once.covariance(), within(1e-12));
        assertThat(twice.logLikelihood()).isEqualTo(once.logLikelihood(), within(1e-12));
        assertThat(once.levelAt(4)).isEqualTo(once.mean()[0] + 2 * once.mean()[1]);
        assertThat(start.mean()).containsExactly(1, 0.5);
    }

    /** Variance foreseen at t = 1: 1 + 2·0.1 + 0.4 + 0.3 + 0.2/3 + noise 1; mean 1.5, by hand. */
    @Test
    void aTrendForeseesWithBothNoises() {
        LocalTrend.State start = new LocalTrend.State(0, new double[] {1, 0.5}, new double[] {1, 0.1, 0.1, 0.4}, 7);
        LocalTrend.State next = new LocalTrend(0.3, 0.2, 1).advance(start, 1, 3);
        double before = 1 + 0.2 + 0.4 + 0.3 + 0.2 / 3;
        assertThat(next.mean()[0]).isEqualTo(1.5 + 1.5 * before / (before + 1), within(1e-12));
        assertThat(next.logLikelihood()).isEqualTo(7 + Kalman.logDensity(1.5, before + 1), within(1e-12));
    }
}
