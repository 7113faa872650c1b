package org.ohmstead.ledger;

import java.util.Arrays;

/** Link readings laid out flat: the straps of link 0, then those of link 1, and so on, each link equally wide. */
final class Straps {

    private Straps() {}

    static double[] flatten(double[][] links, int width) {
        double[] flat = new double[links.length * width];
        Arrays.fill(flat, Double.NaN);
        for (int ordinal = 0; ordinal < links.length; ordinal++) {
            System.arraycopy(links[ordinal], 0, flat, ordinal * width, links[ordinal].length);
        }
        return flat;
    }

    static double[][] unflatten(double[] flat, int width) {
        double[][] links = new double[flat.length / width][];
        Arrays.setAll(links, ordinal -> Arrays.copyOfRange(flat, ordinal * width, (ordinal + 1) * width));
        return links;
    }
}
