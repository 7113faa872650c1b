package org.ohmstead.assessment.model.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.Test;

/** The written-out arithmetic of a unit against that of matrices (Hipparchus), and against closed forms. */
class RegimeTest {
    private static final RealMatrix READING = MatrixUtils.createRealMatrix(new double[][] {{1, 0, 1}});

    private static final Random RANDOM = new Random(7);

    /** Mean and covariance as a library holds them. */
    private record Law(RealVector mean, RealMatrix cov) {

        static Law of(Regime regime) {
            DoubleTape tape = new DoubleTape();
            regime.write(tape);
            double[] x = tape.toArray();
            return new Law(
                    MatrixUtils.createRealVector(new double[] {x[0], x[1], x[2]}),
                    MatrixUtils.createRealMatrix(
                            new double[][] {{x[3], x[4], x[5]}, {x[4], x[6], x[7]}, {x[5], x[7], x[8]}}));
        }

        void isThatOf(Regime regime) {
            Law other = of(regime);
            assertThat(other.mean.getDistance(mean)).isLessThan(1e-12);
            assertThat(other.cov.subtract(cov).getNorm1()).isLessThan(1e-12);
        }

        /** (1 − weight) of this law and the rest of another. */
        Law mixed(Law other, double weight) {
            RealVector apart = other.mean.subtract(mean);
            RealMatrix within = cov.scalarMultiply(1 - weight).add(other.cov.scalarMultiply(weight));
            RealMatrix between = apart.outerProduct(apart).scalarMultiply(weight * (1 - weight));
            return new Law(mean.add(apart.mapMultiply(weight)), within.add(between));
        }

        Law observed(double reading, double noise) {
            double innovation = reading - READING.operate(mean).getEntry(0);
            double variance = READING.multiply(cov).multiplyTransposed(READING).getEntry(0, 0) + noise;
            RealVector gain = cov.multiplyTransposed(READING).getColumnVector(0).mapDivide(variance);
            return new Law(
                    mean.add(gain.mapMultiply(innovation)),
                    cov.subtract(gain.outerProduct(gain).scalarMultiply(variance)));
        }

        Law after(double years, double acceleration, double noise) {
            RealMatrix step = MatrixUtils.createRealMatrix(new double[][] {{1, years, 0}, {0, 1, 0}, {0, 0, 1}});
            RealVector pushed = MatrixUtils.createRealVector(
                    new double[] {acceleration * years * years / 2, acceleration * years, 0});
            // white noise on the rate: q·t³/3, q·t²/2, q·t (any text on the integrated random walk)
            RealMatrix spread = MatrixUtils.createRealMatrix(new double[][] {
                {noise * years * years * years / 3, noise * years * years / 2, 0},
                {noise * years * years / 2, noise * years, 0},
                {0, 0, 0}
            });
            return new Law(
                    step.operate(mean).add(pushed),
                    step.multiply(cov).multiplyTransposed(step).add(spread));
        }
    }

    /** Any law at all: a product of a matrix with its own transpose is a covariance. */
    private Regime any() {
        double[][] root = new double[3][3];
        for (double[] row : root) {
            for (int i = 0; i < 3; i++) {
                row[i] = RANDOM.nextGaussian();
            }
        }
        RealMatrix half = MatrixUtils.createRealMatrix(root);
        RealMatrix cov = half.multiplyTransposed(half);
        DoubleTape tape = new DoubleTape();
        for (int i = 0; i < 3; i++) {
            tape.put(RANDOM.nextGaussian());
        }
        for (int i = 0; i < 3; i++) {
            for (int j = i; j < 3; j++) {
                tape.put(cov.getEntry(i, j));
            }
        }
        return Regime.read(new DoubleTape(tape.toArray()));
    }

    @RepeatedTest(20)
    void timePassesAsForAnIntegratedRandomWalk() {
        Regime regime = any();
        Law expected = Law.of(regime).after(.7, .3, .2);
        assertThat(regime.riseVarianceAhead(.7, .2)).isCloseTo(expected.cov().getEntry(0, 0), within(1e-12));
        regime.predict(.7, .3, .2);
        expected.isThatOf(regime);
    }

    @RepeatedTest(20)
    void aReadingMovesItByTheGain() {
        Regime regime = any();
        Law expected = Law.of(regime).observed(1.4, .3);
        regime.observe(1.4, .3, 0);
        expected.isThatOf(regime);
    }

    @RepeatedTest(20)
    void aReadingThatMayBeWrongLeavesThatShareAsItWas() {
        Regime regime = any();
        Law before = Law.of(regime);
        Law expected = before.observed(-.8, .3).mixed(before, .35);
        regime.observe(-.8, .3, .35);
        expected.isThatOf(regime);
    }

    @RepeatedTest(20)
    void aMixtureKeepsItsMomentsAndTheJumpIsOnTheRate() {
        Regime regime = any();
        Regime other = any();
        Law jumped = Law.of(other);
        jumped.mean().addToEntry(1, .4);
        jumped.cov().addToEntry(1, 1, .25);
        Law expected = Law.of(regime).mixed(jumped, .3);
        regime.mix(other, .3, .4, .25);
        expected.isThatOf(regime);
    }

    /** Prior N(1, 3) + N(0, 1), reading 3 with variance 1: gain 0.8, mean 2.6, variance 0.8. */
    @Test
    void oneUpdateByHand() {
        Regime regime = new Regime();
        regime.restart(0, 0, 1);
        regime.predict(1, 2, 9); // rise 1 with variance 9/3
        regime.observe(3, 1, 0);
        assertThat(regime.expected()).isCloseTo(2.6, within(1e-12));
        assertThat(regime.expectedVariance()).isCloseTo(.8, within(1e-12));
    }

    @Test
    void whatIsWrittenIsReadBack() {
        Regime regime = any();
        Law.of(regime).isThatOf(regime.copy());
    }
}
