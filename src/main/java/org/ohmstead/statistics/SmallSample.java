package org.ohmstead.statistics;

/**
 * Consistency and small-sample factors of S_n and Q_n.
 *
 * <p>S_n: Croux and Rousseeuw, "Time-efficient algorithms for two highly robust estimators of scale", COMPSTAT 1992.
 * Q_n: the simulated factors of R's robustbase (Maechler), which replace the paper's.
 */
final class SmallSample {

    private static final double SN_NORMAL = 1.1926;
    private static final double QN_NORMAL = 2.21914;

    private static final double[] SN_FROM_TWO = {0.743, 1.851, 0.954, 1.351, 0.993, 1.198, 1.005, 1.131};
    private static final double[] QN_FROM_TWO = {
        0.399356, 0.99365, 0.51321, 0.84401, 0.61220, 0.85877, 0.66993, 0.87344, 0.72014, 0.88906, 0.75743
    };

    private SmallSample() {}

    static double sn(int n) {
        return SN_NORMAL * snCorrection(n);
    }

    static double qn(int n) {
        return QN_NORMAL * qnCorrection(n);
    }

    private static double snCorrection(int n) {
        if (n < 2) {
            return 1;
        }
        if (n - 2 < SN_FROM_TWO.length) {
            return SN_FROM_TWO[n - 2];
        }
        return n % 2 == 0 ? 1 : n / (n - 0.9);
    }

    private static double qnCorrection(int n) {
        if (n < 2) {
            return 1;
        }
        if (n - 2 < QN_FROM_TWO.length) {
            return QN_FROM_TWO[n - 2];
        }
        double m = n;
        double excess =
                n % 2 == 0 ? 3.67561 + (1.9654 + (6.987 - 77 / m) / m) / m : 1.60188 + (-2.1284 - 5.172 / m) / m;
        return 1 / (1 + excess / m);
    }
}
