package org.ohmstead.assessment.model.forecast;

/** The standard normal law, fast enough to be asked some ten thousand times per survey. */
final class Normal {
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
                ? bell * above(x) / below(x)
                : bell / (x + 1 / (x + 2 / (x + 3 / (x + 4 / (x + .65))))) / 2.506628274631;
    }

    private static double above(double x) {
        double high = ((.0352624965998911 * x + .700383064443688) * x + 6.37396220353165) * x + 33.912866078383;
        return ((high * x + 112.079291497871) * x + 221.213596169931) * x + 220.206867912376;
    }

    private static double below(double x) {
        double high = ((.0883883476483184 * x + 1.75566716318264) * x + 16.064177579207) * x + 86.7807322029461;
        return (((high * x + 296.564248779674) * x + 637.333633378831) * x + 793.826512519948) * x + 440.413735824752;
    }

    /** Density at a deviation from the mean, given the variance. */
    static double density(double deviation, double variance) {
        return Math.exp(-deviation * deviation / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
    }
}
