package org.ohmstead.statistics;

import org.ohmstead.statistics.MixedModel.Criterion;

/**
 * Minus twice the log-likelihood with fixed coefficients and residual variance maximised out, as a function of the relative
 * covariance factor θ: equations 30 to 42 of the lme4 paper. Groups are eliminated one by one, which leaves a small dense
 * system of occasions, fixed columns and y.
 *
 * <p>θ holds the rows of the lower triangular factor of a group's covariance over the residual variance (its diagonal only if
 * uncorrelated), then the occasions' standard deviation over the residual one. Signs of whole columns do not matter.
 */
final class ProfiledDeviance {

    private final MixedProducts sums;
    private final Criterion criterion;

    ProfiledDeviance(MixedProducts sums, Criterion criterion) {
        this.sums = sums;
        this.criterion = criterion;
    }

    MixedProducts sums() {
        return sums;
    }

    int parameters() {
        int own = sums.randomColumns + (sums.correlated ? 1 : 0);
        return own + (sums.occasions > 0 ? 1 : 0);
    }

    /** Whether the parameter is a standard deviation and not the off-diagonal of the factor. */
    boolean isDeviation(int parameter) {
        return !(sums.correlated && parameter == 1);
    }

    double at(double[] theta) {
        return equations(theta).deviance();
    }

    MixedEquations equations(double[] theta) {
        return new MixedEquations(sums, criterion, theta);
    }
}
