package org.ohmstead.ledger;

import java.nio.ByteBuffer;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.ohmstead.copy.WireBuffer;

/**
 * PostgreSQL's binary form of a one-dimensional real[]: a header of five integers, then per element its length and its
 * bytes. The one decision about missing values lives here: NaN in Java is a NULL element in SQL, in both directions.
 */
final class RealArrays {

    private static final int HEADER_BYTES = 20;
    private static final int ELEMENT_OID = 700;
    private static final int ELEMENT_BYTES = 4;
    private static final int NULL_ELEMENT = -1;

    private RealArrays() {}

    /** Appends the array as a field, which is NULL when nothing was measured. */
    static void field(double[] values, WireBuffer out) {
        if (isUnmeasured(values)) {
            out.nullField();
        } else {
            write(values, out);
        }
    }

    /** Appends the array with its length in front, as COPY wants a field. */
    static void write(double[] values, WireBuffer out) {
        int missing = missing(values);
        out.putInt(HEADER_BYTES + values.length * (4 + ELEMENT_BYTES) - missing * ELEMENT_BYTES);
        out.putArrayHeader(ELEMENT_OID, values.length, missing > 0);
        for (double value : values) {
            writeElement(value, out);
        }
    }

    /**
     * @param wire as {@code array_send} gives it; null for an array that is NULL
     * @param count how many elements there are when the array is NULL
     */
    static double[] read(byte @Nullable [] wire, int count) {
        if (wire == null) {
            double[] none = new double[count];
            Arrays.fill(none, Double.NaN);
            return none;
        }
        ByteBuffer in = ByteBuffer.wrap(wire);
        double[] values = new double[in.getInt(12)];
        in.position(HEADER_BYTES);
        for (int i = 0; i < values.length; i++) {
            values[i] = in.getInt() == NULL_ELEMENT ? Double.NaN : Reals.fromReal(in.getFloat());
        }
        return values;
    }

    /** For a bound parameter: null elements for what is missing. */
    static @Nullable Float[] boxed(double[] values) {
        @Nullable Float[] boxed = new Float[values.length];
        for (int i = 0; i < values.length; i++) {
            boxed[i] = Double.isNaN(values[i]) ? null : (Float) Reals.toReal(values[i]);
        }
        return boxed;
    }

    /** Such an array is stored as NULL altogether, except the ohmic one, which tells how long the string is. */
    static boolean isUnmeasured(double[] values) {
        return missing(values) == values.length;
    }

    private static int missing(double[] values) {
        int missing = 0;
        for (double value : values) {
            if (Double.isNaN(value)) {
                missing++;
            }
        }
        return missing;
    }

    private static void writeElement(double value, WireBuffer out) {
        if (Double.isNaN(value)) {
            out.putInt(NULL_ELEMENT);
        } else {
            out.realField(Reals.toReal(value));
        }
    }
}
