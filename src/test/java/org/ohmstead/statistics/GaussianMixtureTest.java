package org.ohmstead.statistics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GaussianMixtureTest {

    private static final GaussianMixture TWO =
            new GaussianMixture(new double[] {0.25, 0.75}, new double[] {0, 4}, new double[] {1, 4});

    /** By hand: mean 3; variance 0.25·1 + 0.75·4 + 0.25·9 + 0.75·1. */
    @Test
    void momentsAreThoseOfTheWhole() {
        assertThat(TWO.mean()).isEqualTo(3);
        assertThat(TWO.variance()).isEqualTo(0.25 + 3 + 2.25 + 0.75, within(1e-12));
    }

    /** Φ(1) = 0.8413447 and Φ(-1.5) = 0.0668072 from tables. */
    @Test
    void theShareBelowIsTheWeightedShare() {
        assertThat(TWO.cdf(1)).isEqualTo(0.25 * 0.8413447 + 0.75 * 0.0668072, within(1e-7));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.001, 0.1, 0.5, 0.9, 0.999})
    void quantilesInvertTheShare(double share) {
        assertThat(TWO.cdf(TWO.quantile(share))).isEqualTo(share, within(1e-10));
    }

    @Test
    void aPartWithoutSpreadIsACertainValue() {
        GaussianMixture certain =
                new GaussianMixture(new double[] {0.5, 0.5}, new double[] {1, 3}, new double[] {0, 0});
        assertThat(certain.cdf(0.99)).isZero();
        assertThat(certain.cdf(1)).isEqualTo(0.5);
        assertThat(certain.cdf(3)).isEqualTo(1);
        assertThat(certain.quantile(0.5)).isEqualTo(1);
        assertThat(certain.quantile(0.9)).isEqualTo(3, within(1e-9));
    }

    @Test
    void aPartWithoutWeightCountsForNothing() {
        GaussianMixture one = new GaussianMixture(new double[] {1, 0}, new double[] {2, 900}, new double[] {4, 0});
        assertThat(one.quantile(0.8413447)).isEqualTo(4, within(1e-6));
    }

    @Test
    void aReadingShiftsTheWeightsByBayes() {
        double[] weights = {0.5, 0.3, 0.2, 0};
        GaussianMixture.reweigh(
                weights, new double[] {-800 + Math.log(2), -800, -800 + Math.log(5), Double.POSITIVE_INFINITY});
        assertThat(weights).containsExactly(new double[] {1 / 2.3, 0.3 / 2.3, 1 / 2.3, 0}, within(1e-12));
    }

    @Test
    void anImpossibleReadingLeavesTheWeights() {
        double[] weights = {0.4, 0.6};
        GaussianMixture.reweigh(weights, new double[] {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY});
        assertThat(weights).containsExactly(0.4, 0.6);
    }

    /** Merging in one dimension must give the moments of the mixture. */
    @Test
    void absorbingKeepsMeanAndVariance() {
        double[] mean = {0};
        double[] variance = {1};
        GaussianMixture.absorb(mean, variance, 0.1, new double[] {4}, new double[] {4}, 0.3);
        assertThat(mean[0]).isEqualTo(TWO.mean(), within(1e-12));
        assertThat(variance[0]).isEqualTo(TWO.variance(), within(1e-12));
    }

    /** Two states, by hand: share ½, apart (2, -4): covariance ½(P + Q) + ¼·apart·apart'. */
    @Test
    void absorbingInTwoDimensionsAddsTheSpreadBetween() {
        double[] mean = {1, 1};
        double[] covariance = {1, 0.5, 0.5, 2};
        GaussianMixture.absorb(mean, covariance, 0.2, new double[] {3, -3}, new double[] {3, 0, 0, 4}, 0.2);
        assertThat(mean).containsExactly(new double[] {2, -1}, within(1e-12));
        assertThat(covariance).containsExactly(new double[] {2 + 1, 0.25 - 2, 0.25 - 2, 3 + 4}, within(1e-12));
    }

    @Test
    void nothingAbsorbedChangesNothing() {
        double[] mean = {1};
        double[] variance = {2};
        GaussianMixture.absorb(mean, variance, 0, new double[] {3}, new double[] {4}, 0);
        assertThat(mean).containsExactly(1);
        assertThat(variance).containsExactly(2);
    }
}
