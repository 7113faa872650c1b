package org.ohmstead.statistics;

/** Gains of a path over durations above 0, neither of them missing. */
record Increments(double[] durations, double[] gains) {

    static Increments of(double[] durations, double[] gains) {
        double[] lasting = new double[durations.length];
        for (int i = 0; i < durations.length; i++) {
            lasting[i] = durations[i] > 0 ? durations[i] : Double.NaN;
        }
        Present.Pairs pairs = Present.pairs(lasting, gains);
        return new Increments(pairs.x(), pairs.y());
    }

    int count() {
        return gains.length;
    }

    /** All gains over all durations. */
    double rate() {
        double gained = 0;
        double lasted = 0;
        for (int i = 0; i < gains.length; i++) {
            gained += gains[i];
            lasted += durations[i];
        }
        return gained / lasted;
    }
}
