package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.junit.jupiter.api.Test;

class PoissonBinomialTest {

    private static PoissonBinomial of(double... chances) {
        PoissonBinomial law = new PoissonBinomial();
        for (double chance : chances) {
            law.add(chance);
        }
        return law;
    }

    /** {@code scipy.stats.poisson_binom} 1.17.1 for these ten chances. */
    @Test
    void tenUnequalChancesAgreeWithTheReference() {
        PoissonBinomial law = of(.01, .02, .05, .1, .2, .3, .5, .75, .9, .99);
        double[] atMost = {
            5.8066470000000036e-05,
            0.006612192877499999,
            0.089299207045,
            0.38389322493500005,
            0.755590711085,
            0.94970992233,
            0.995055719935,
            0.999784679905
        };
        assertThat(law.mean()).isEqualTo(3.82, within(1e-12));
        assertThat(law.variance()).isEqualTo(1.0744, within(1e-12));
        for (int k = 0; k < atMost.length; k++) {
            assertThat(law.atMost(k)).as("at most " + k).isEqualTo(atMost[k], within(1e-12));
        }
        assertThat(law.interval(.8)).isEqualTo(new Interval(3, 5));
    }

    /** Reference by convolution in double precision with NumPy: P(X ≤ 10, 15, 18, 20, 25), quantiles 10, 50, 90 %. */
    @Test
    void manySmallChancesAgreeWithTheFullConvolutionToTwoThousandths() {
        PoissonBinomial law = new PoissonBinomial();
        for (int i = 0; i < 3000; i++) {
            law.add(0.001 + 0.0002 * (i % 50));
        }
        assertThat(law.mean()).isEqualTo(17.7, within(1e-9));
        assertThat(law.variance()).isEqualTo(17.57058, within(1e-9));
        assertThat(law.atMost(10)).isEqualTo(0.034692, within(2e-3));
        assertThat(law.atMost(15)).isEqualTo(0.309991, within(2e-3));
        assertThat(law.atMost(18)).isEqualTo(0.590404, within(2e-3));
        assertThat(law.atMost(20)).isEqualTo(0.754896, within(2e-3));
        assertThat(law.atMost(25)).isEqualTo(0.962641, within(2e-3));
        assertThat(law.quantile(.1)).isEqualTo(12);
        assertThat(law.quantile(.5)).isEqualTo(18);
        assertThat(law.quantile(.9)).isEqualTo(23);
    }

    @Test
    void equalChancesAreTheBinomialLaw() {
        BinomialDistribution binomial = new BinomialDistribution(200, .03);
        PoissonBinomial law = new PoissonBinomial();
        for (int i = 0; i < 200; i++) {
            law.add(.03);
        }
        for (int k = 0; k < 20; k++) {
            assertThat(law.atMost(k)).isEqualTo(binomial.cumulativeProbability(k), within(1e-12));
        }
    }

    @Test
    void nothingToHappenIsNoneForCertainAndWhatIsUnknownCountsForNothing() {
        assertThat(of().interval(.8)).isEqualTo(new Interval(0, 0));
        assertThat(of(0, 0, Double.NaN).atMost(0)).isEqualTo(1);
        assertThat(of(1, 1, 1.2).interval(.8)).isEqualTo(new Interval(3, 3));
        assertThat(of(.5).atMost(-1)).isZero();
        PoissonBinomial certain = new PoissonBinomial();
        for (int i = 0; i < 1000; i++) {
            certain.add(1);
        }
        assertThat(certain.interval(.8)).isEqualTo(new Interval(1000, 1000));
    }
}
