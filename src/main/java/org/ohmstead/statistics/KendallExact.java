package org.ohmstead.statistics;

/**
 * The exact distribution of Kendall's S without ties and without a trend: the number of orderings with a given count of
 * discordant pairs, Kendall, Rank Correlation Methods (1975), chapter 5.
 */
public final class KendallExact {

    private KendallExact() {}

    /** The chance, without a trend, of a score at least this high from the given number of untied values. */
    public static double upperTail(int score, int count) {
        int pairs = count * (count - 1) / 2;
        int mostDiscordant = Math.floorDiv(pairs - score, 2);
        double[] chance = discordance(count);
        double sum = 0;
        for (int k = 0; k <= Math.min(mostDiscordant, pairs); k++) {
            sum += chance[k];
        }
        return Math.min(1, sum);
    }

    /** The chance of each number of discordant pairs, built up one value at a time. */
    private static double[] discordance(int count) {
        double[] chance = {1};
        for (int size = 2; size <= count; size++) {
            double[] next = new double[chance.length + size - 1];
            for (int k = 0; k < chance.length; k++) {
                for (int jumped = 0; jumped < size; jumped++) {
                    next[k + jumped] += chance[k] / size;
                }
            }
            chance = next;
        }
        return chance;
    }
}
