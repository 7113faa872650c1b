package org.ohmstead.ledger;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * A growing buffer of fields in PostgreSQL's binary COPY form: each a length of four bytes and its value, big-endian;
 * length -1 is NULL.
 */
final class WireBuffer {

    private static final long EPOCH_SECONDS = 946_684_800L;
    private static final int EPOCH_DAYS = 10_957;
    private static final int NULL_FIELD = -1;

    private byte[] bytes = new byte[1 << 16];
    private int length;

    int length() {
        return length;
    }

    byte[] bytes() {
        return bytes;
    }

    void clear() {
        length = 0;
    }

    byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }

    void putShort(int value) {
        room(2);
        bytes[length++] = (byte) (value >> 8);
        bytes[length++] = (byte) value;
    }

    void putInt(int value) {
        room(4);
        bytes[length++] = (byte) (value >> 24);
        bytes[length++] = (byte) (value >> 16);
        bytes[length++] = (byte) (value >> 8);
        bytes[length++] = (byte) value;
    }

    void putLong(long value) {
        putInt((int) (value >> 32));
        putInt((int) value);
    }

    void putBytes(byte[] value) {
        room(value.length);
        System.arraycopy(value, 0, bytes, length, value.length);
        length += value.length;
    }

    void nullField() {
        putInt(NULL_FIELD);
    }

    void field(long value) {
        putInt(8);
        putLong(value);
    }

    void smallField(int value) {
        putInt(2);
        putShort(value);
    }

    void field(boolean value) {
        putInt(1);
        putBytes(new byte[] {(byte) (value ? 1 : 0)});
    }

    /** A real; NaN is NULL. */
    void field(double value) {
        if (Double.isNaN(value)) {
            nullField();
        } else {
            putInt(4);
            putInt(Float.floatToRawIntBits(Reals.toReal(value)));
        }
    }

    void field(@Nullable String value) {
        field(value == null ? null : value.getBytes(StandardCharsets.UTF_8));
    }

    void field(byte @Nullable [] value) {
        if (value == null) {
            nullField();
        } else {
            putInt(value.length);
            putBytes(value);
        }
    }

    /** Microseconds since the year 2000. */
    void field(Instant value) {
        field((value.getEpochSecond() - EPOCH_SECONDS) * 1_000_000 + value.getNano() / 1_000);
    }

    /** Days since the year 2000. */
    void field(@Nullable LocalDate value) {
        if (value == null) {
            nullField();
        } else {
            putInt(4);
            putInt((int) value.toEpochDay() - EPOCH_DAYS);
        }
    }

    void field(@Nullable UUID value) {
        if (value == null) {
            nullField();
        } else {
            putInt(16);
            putLong(value.getMostSignificantBits());
            putLong(value.getLeastSignificantBits());
        }
    }

    /** An array of reals; NULL when nothing was measured. */
    void field(double[] values) {
        if (RealArrays.isUnmeasured(values)) {
            nullField();
        } else {
            RealArrays.write(values, this);
        }
    }

    private void room(int count) {
        if (length + count > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + count));
        }
    }
}
