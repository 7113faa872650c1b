package org.ohmstead.statistics;

import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/** The standard law of z = (ln t - μ)/σ, with derivatives for Newton's method. */
public enum LifeLaw {

    /** Smallest extreme value: lifetimes are Weibull with scale e^μ and shape 1/σ. */
    WEIBULL {
        @Override
        DerivativeStructure logDensity(DerivativeStructure z) {
            return z.subtract(z.exp());
        }

        @Override
        DerivativeStructure logSurvival(DerivativeStructure z) {
            return z.exp().negate();
        }

        @Override
        double quantile(double share) {
            return FastMath.log(-FastMath.log1p(-share));
        }

        @Override
        double cdf(double z) {
            return -FastMath.expm1(-FastMath.exp(z));
        }
    },

    /** Normal: lifetimes are lognormal. */
    LOGNORMAL {
        @Override
        DerivativeStructure logDensity(DerivativeStructure z) {
            return z.multiply(z).multiply(-0.5).subtract(0.5 * FastMath.log(2 * FastMath.PI));
        }

        /** With the hazard h = φ/S: ln S has the derivatives -h and -h(h - z). */
        @Override
        DerivativeStructure logSurvival(DerivativeStructure z) {
            double at = z.getValue();
            double hazard = NormalTail.hazard(at);
            double log = NormalTail.logShareAbove(at);
            return z.compose(log, -hazard, -hazard * (hazard - at));
        }

        @Override
        double quantile(double share) {
            return STANDARD.inverseCumulativeProbability(share);
        }

        @Override
        double cdf(double z) {
            return STANDARD.cumulativeProbability(z);
        }
    };

    private static final NormalDistribution STANDARD = new NormalDistribution();

    abstract DerivativeStructure logDensity(DerivativeStructure z);

    abstract DerivativeStructure logSurvival(DerivativeStructure z);

    /** The z below which the share lies. */
    abstract double quantile(double share);

    /** The share below z. */
    abstract double cdf(double z);
}
