package org.ohmstead.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.util.FastMath;

/** The far upper tail of the normal law, where the share itself would be lost to rounding. */
final class NormalTail {

    private static final NormalDistribution STANDARD = new NormalDistribution();
    private static final double FAR = 30;
    private static final double LOG_ROOT_TWO_PI = FastMath.log(2 * FastMath.PI) / 2;

    private NormalTail() {}

    /** ln(1 - Φ(z)); beyond 30 by the asymptotic series 26.2.12 of Abramowitz and Stegun (1964). */
    static double logShareAbove(double z) {
        if (z < FAR) {
            return FastMath.log(STANDARD.cumulativeProbability(-z));
        }
        double inverse = 1 / (z * z);
        double series = 1 - inverse * (1 - 3 * inverse * (1 - 5 * inverse));
        return logDensity(z) - FastMath.log(z) + FastMath.log(series);
    }

    /** The density over the share above. */
    static double hazard(double z) {
        return FastMath.exp(logDensity(z) - logShareAbove(z));
    }

    private static double logDensity(double z) {
        return -z * z / 2 - LOG_ROOT_TWO_PI;
    }
}
