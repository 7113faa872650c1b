package org.ohmstead.assessment.model.forecast;

/** The standard normal law, fast enough to be asked some ten thousand times per survey. */
final class Normal {
    private static final double[] ABOVE = {
        .0352624965998911,
        .700383064443688,
        6.37396220353165,
        33.912866078383,
        112.079291497871,
        221.213596169931,
        220.206867912376
    };
    private static final double[] BELOW = {
        .0883883476483184,
        1.75566716318264,
        16.064177579207,
        86.7807322029461,
        296.564248779674,
        637.333633378831,
        793.826512519948,
        440.413735824752
    };

    private Normal() {}

    /** Cumulative probability by the rational approximation of Hart (1968, algorithm 5666), as given by West (2005). */
    static double cumulative(double x) {
        double tail = upperTail(Math.abs(x));
        return x > 0 ? 1 - tail : tail;
    }

    private static double upperTail(double x) {
        if (x > 37) {
            return 0;
        }
        double bell = Math.exp(-x * x / 2);
        return x < 7.07106781186547
                ? bell * polynomial(ABOVE, x) / polynomial(BELOW, x)
                : bell / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + .65))))) / 2.506628274631;
    }

    private static double polynomial(double[] coefficients, double x) {
        double sum = 0;
        for (double c : coefficients) {
            sum = sum * x + c;
        }
        return sum;
    }

    /** Density at a deviation from the mean, given the variance. */
    static double density(double deviation, double variance) {
        return Math.exp(-deviation * deviation / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
    }
}
