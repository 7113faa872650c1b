package org.ohmstead.statistics;

import java.util.Arrays;

/**
 * Numbers put on shelves by their size, so that an order statistic is looked for on one shelf only: cheaper than any
 * selection that compares when one knows beforehand about where it lies. Where the shelves stand decides how long it takes,
 * never what is found.
 */
final class Shelves {

    private static final int COUNT = 64;

    private final double[] shelved;
    /** Where each shelf starts; the last number is the end of the last one. */
    private final int[] starts = new int[COUNT + 1];

    private long inOrder;

    /**
     * @param values none of which is missing
     * @param low lower end of where most of the questions will be about
     * @param high upper end of it
     */
    Shelves(double[] values, double low, double high) {
        double perUnit = COUNT / (high - low);
        byte[] shelf = new byte[values.length];
        for (int i = 0; i < values.length; i++) {
            shelf[i] = (byte) Math.max(0, Math.min(COUNT - 1, (int) ((values[i] - low) * perUnit)));
            starts[shelf[i] + 1]++;
        }
        for (int s = 0; s < COUNT; s++) {
            starts[s + 1] += starts[s];
        }
        shelved = new double[values.length];
        int[] next = Arrays.copyOf(starts, COUNT);
        for (int i = 0; i < values.length; i++) {
            shelved[next[shelf[i]]++] = values[i];
        }
    }

    /** What sorting would put at the rank; 0 is the least. */
    double at(int rank) {
        int shelf = 0;
        while (starts[shelf + 1] <= rank) {
            shelf++;
        }
        if ((inOrder >> shelf & 1) == 0) {
            Arrays.sort(shelved, starts[shelf], starts[shelf + 1]);
            inOrder |= 1L << shelf;
        }
        return shelved[rank];
    }
}
