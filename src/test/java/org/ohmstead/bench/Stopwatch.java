package org.ohmstead.bench;

import java.util.Arrays;

/** Times of repeated work. */
final class Stopwatch {

    private Stopwatch() {}

    /** Something that is measured. */
    @FunctionalInterface
    interface Work {
        void run() throws Exception;
    }

    static double seconds(Work work) {
        long start = System.nanoTime();
        try {
            work.run();
        } catch (Exception e) {
            throw new IllegalStateException("The work to be measured failed", e);
        }
        return (System.nanoTime() - start) / 1e9;
    }

    /** The middle one of several runs. */
    static double median(int runs, Work work) {
        return quantile(0.5, runs, work);
    }

    /** Runs it a quarter as often beforehand, unmeasured, and gives the time that 95 of 100 runs stay under. */
    static double p95(int runs, Work work) {
        quantile(0.5, Math.max(1, runs / 4), work);
        return quantile(0.95, runs, work);
    }

    private static double quantile(double share, int runs, Work work) {
        double[] times = new double[runs];
        for (int i = 0; i < runs; i++) {
            times[i] = seconds(work);
        }
        Arrays.sort(times);
        return times[(int) Math.min(runs - 1, Math.floor(share * runs))];
    }
}
