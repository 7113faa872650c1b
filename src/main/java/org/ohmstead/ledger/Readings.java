package org.ohmstead.ledger;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * The readings of a string's jars and links in one survey. A value that was not measured is NaN.
 *
 * @param ohmic one per position (index 0 is position 1), in the unit of the survey's ohmic kind
 * @param volts one per position, or none at all
 * @param celsius jar temperature, one per position, or none at all
 * @param gravity specific gravity, one per position, or none at all
 * @param linkMicroohms per link ordinal 0..N, then per strap; or none at all. Links may have different numbers of
 *     straps; they come back from the ledger padded with NaN to the widest of the survey.
 */
public record Readings(double[] ohmic, double[] volts, double[] celsius, double[] gravity, double[][] linkMicroohms) {

    public Readings {
        int positions = ohmic.length;
        if (positions == 0) {
            throw new IllegalArgumentException("A survey has at least one position");
        }
        volts = onePerPosition("volts", volts, positions);
        celsius = onePerPosition("temperatures", celsius, positions);
        gravity = onePerPosition("specific gravities", gravity, positions);
        linkMicroohms = linkMicroohms.length == 0 ? unmeasuredLinks(positions) : linkMicroohms;
        if (linkMicroohms.length != positions + 1) {
            throw new IllegalArgumentException(
                    positions + " jars have " + (positions + 1) + " links, not " + linkMicroohms.length);
        }
    }

    /** Ohmic values alone. */
    public static Readings ofOhmic(double... ohmic) {
        double[] none = {};
        return new Readings(ohmic, none, none, none, new double[][] {});
    }

    public int positions() {
        return ohmic.length;
    }

    /** How many straps the widest link has; at least 1. */
    public int widestLink() {
        int widest = 1;
        for (double[] straps : linkMicroohms) {
            widest = Math.max(widest, straps.length);
        }
        return widest;
    }

    /** Reading by reading; what is missing in both is equal. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Readings that
                && Arrays.equals(ohmic, that.ohmic)
                && Arrays.equals(volts, that.volts)
                && Arrays.equals(celsius, that.celsius)
                && Arrays.equals(gravity, that.gravity)
                && Arrays.deepEquals(linkMicroohms, that.linkMicroohms);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(ohmic) + Arrays.deepHashCode(linkMicroohms);
    }

    private static double[] onePerPosition(String what, double[] values, int positions) {
        if (values.length == 0) {
            return unmeasured(positions);
        }
        if (values.length != positions) {
            throw new IllegalArgumentException(
                    positions + " jars have " + positions + " " + what + ", not " + values.length);
        }
        return values;
    }

    private static double[] unmeasured(int count) {
        double[] none = new double[count];
        Arrays.fill(none, Double.NaN);
        return none;
    }

    private static double[][] unmeasuredLinks(int positions) {
        double[][] none = new double[positions + 1][];
        Arrays.setAll(none, ordinal -> unmeasured(1));
        return none;
    }
}
