package org.ohmstead.testbed;

/** The test sets of an estate: each has an offset that drifts, and an error of the day shared by all it reads that day. */
final class Instruments {
    static final int COUNT = 7;
    private static final int MONTHS = 12 * 40;
    private final double[][] offset = new double[COUNT][MONTHS];
    private final Laws laws;
    private final long seed;

    Instruments(Laws laws, long seed) {
        this.laws = laws;
        this.seed = seed;
        Dice dice = new Dice(seed + 77);
        for (double[] path : offset) {
            path[0] = dice.normal(.012);
            for (int month = 1; month < MONTHS; month++) {
                path[month] = path[month - 1] + dice.normal(laws.instrumentDrift() / Math.sqrt(12));
            }
        }
    }

    /** Logarithmic error of an instrument on a day counted from the estate's first. */
    double error(int instrument, long day) {
        int month = (int) Math.max(0, Math.min(MONTHS - 1, day / 30.44));
        Dice ofDay = new Dice(seed * 31 + instrument * 100003L + day);
        return offset[instrument][month] + ofDay.normal(laws.instrumentDay());
    }

    /** Its offset without the error of the day. */
    double systematic(int instrument, long day) {
        return offset[instrument][(int) Math.max(0, Math.min(MONTHS - 1, day / 30.44))];
    }
}
