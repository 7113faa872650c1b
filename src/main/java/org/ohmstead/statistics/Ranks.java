package org.ohmstead.statistics;

/**
 * Order statistics without sorting everything: Hoare, Algorithm 65 "Find", CACM 4 (1961) 321-322, with the median of three
 * as the pivot and a partition that moves every element without asking, so that no branch has to be guessed. The order is
 * that of {@link Double#compare}.
 */
final class Ranks {

    private static final int FEW = 12;

    private Ranks() {}

    /** Moves the elements so that each rank (0 is the least, ascending) holds what sorting would put there. */
    static void settle(double[] values, int... ranks) {
        settleWithin(values, 0, values.length, ranks);
    }

    /** The same within a part of the array that holds its own ranks already. */
    static void settleWithin(double[] values, int from, int to, int... ranks) {
        long[] keys = new long[to - from];
        for (int i = 0; i < keys.length; i++) {
            keys[i] = key(values[from + i]);
        }
        int settled = -1;
        for (int rank : ranks) {
            if (rank - from == settled + 1) {
                findLeast(keys, settled + 1, keys.length);
            } else if (rank - from > settled) {
                find(keys, settled + 1, keys.length, rank - from);
            }
            settled = rank - from;
        }
        for (int i = 0; i < keys.length; i++) {
            values[from + i] = number(keys[i]);
        }
    }

    /** An integer that stands among its like as the number does among numbers. */
    private static long key(double number) {
        return turned(Double.doubleToLongBits(number));
    }

    /** The number that the key was made of. */
    private static double number(long key) {
        return Double.longBitsToDouble(turned(key));
    }

    /** Its own inverse. */
    private static long turned(long bits) {
        return bits ^ bits >> 63 & Long.MAX_VALUE;
    }

    /** Brings the least of a part of the array to its start. */
    private static void findLeast(long[] keys, int start, int end) {
        int least = start;
        for (int i = start + 1; i < end; i++) {
            least = keys[i] < keys[least] ? i : least;
        }
        long key = keys[least];
        keys[least] = keys[start];
        keys[start] = key;
    }

    /** Puts in place what belongs at the rank, which lies in this part of the array, with the lesser ones before it. */
    private static void find(long[] keys, int start, int end, int rank) {
        int low = start;
        int high = end - 1;
        while (high - low > FEW) {
            int place = partition(keys, low, high);
            if (place == rank) {
                return;
            } else if (place < rank) {
                low = place + 1;
            } else {
                high = place - 1;
            }
        }
        sort(keys, low, high);
    }

    /** Around the median of the first, middle and last; gives the place where that belongs. */
    private static int partition(long[] keys, int low, int high) {
        int middle = low + high >>> 1;
        swapIfOver(keys, low, middle);
        swapIfOver(keys, middle, high);
        swapIfOver(keys, low, middle);
        long pivot = keys[middle];
        keys[middle] = keys[high];
        int place = low;
        for (int i = low; i < high; i++) {
            long key = keys[i];
            keys[i] = keys[place];
            keys[place] = key;
            place += key < pivot ? 1 : 0;
        }
        keys[high] = keys[place];
        keys[place] = pivot;
        return place;
    }

    private static void swapIfOver(long[] keys, int a, int b) {
        if (keys[a] > keys[b]) {
            long over = keys[a];
            keys[a] = keys[b];
            keys[b] = over;
        }
    }

    private static void sort(long[] keys, int low, int high) {
        for (int i = low + 1; i <= high; i++) {
            long key = keys[i];
            int j = i;
            while (j > low && keys[j - 1] > key) {
                keys[j] = keys[--j];
            }
            keys[j] = key;
        }
    }
}
