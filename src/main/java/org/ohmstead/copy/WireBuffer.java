package org.ohmstead.copy;

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
public final class WireBuffer {

    private static final long EPOCH_SECONDS = 946_684_800L;
    private static final int EPOCH_DAYS = 10_957;
    private static final int NULL_FIELD = -1;
    private static final int JSONB_VERSION = 1;

    private byte[] bytes = new byte[1 << 16];
    private int length;

    public int length() {
        return length;
    }

    public byte[] bytes() {
        return bytes;
    }

    public void clear() {
        length = 0;
    }

    public byte[] toBytes() {
        return Arrays.copyOf(bytes, length);
    }

    public void putByte(int value) {
        room(1);
        bytes[length++] = (byte) value;
    }

    public void putShort(int value) {
        room(2);
        bytes[length++] = (byte) (value >> 8);
        bytes[length++] = (byte) value;
    }

    public void putInt(int value) {
        room(4);
        bytes[length++] = (byte) (value >> 24);
        bytes[length++] = (byte) (value >> 16);
        bytes[length++] = (byte) (value >> 8);
        bytes[length++] = (byte) value;
    }

    public void putLong(long value) {
        putInt((int) (value >> 32));
        putInt((int) value);
    }

    public void putBytes(byte[] value) {
        room(value.length);
        System.arraycopy(value, 0, bytes, length, value.length);
        length += value.length;
    }

    public void nullField() {
        putInt(NULL_FIELD);
    }

    public void field(long value) {
        putInt(8);
        putLong(value);
    }

    public void smallField(int value) {
        putInt(2);
        putShort(value);
    }

    public void field(boolean value) {
        putInt(1);
        putByte(value ? 1 : 0);
    }

    public void intField(int value) {
        putInt(4);
        putInt(value);
    }

    public void realField(float value) {
        putInt(4);
        putInt(Float.floatToRawIntBits(value));
    }

    public void doubleField(@Nullable Double value) {
        if (value == null) {
            nullField();
        } else {
            putInt(8);
            putLong(Double.doubleToRawLongBits(value));
        }
    }

    /**
     * Opens a field whose length is not known yet; end it with {@link #endField}.
     *
     * @return where it starts
     */
    public int startField() {
        putInt(0);
        return length;
    }

    /** @param start what {@link #startField} gave */
    public void endField(int start) {
        int end = length;
        length = start - Integer.BYTES;
        putInt(end - start);
        length = end;
    }

    /**
     * Begins a one-dimensional array whose first index is 1; its elements follow as fields. The array's own length stands
     * before it as before any field.
     *
     * @param elementOid number of the elements' type in PostgreSQL's catalogue
     */
    public void putArrayHeader(int elementOid, int count, boolean mayHoldNulls) {
        putInt(1);
        putInt(mayHoldNulls ? 1 : 0);
        putInt(elementOid);
        putInt(count);
        putInt(1);
    }

    /** A jsonb: the version of its form, then the text. */
    public void jsonField(String json) {
        byte[] text = json.getBytes(StandardCharsets.UTF_8);
        putInt(1 + text.length);
        putByte(JSONB_VERSION);
        putBytes(text);
    }

    public void field(@Nullable String value) {
        field(value == null ? null : value.getBytes(StandardCharsets.UTF_8));
    }

    public void field(byte @Nullable [] value) {
        if (value == null) {
            nullField();
        } else {
            putInt(value.length);
            putBytes(value);
        }
    }

    /** Microseconds since the year 2000. */
    public void field(Instant value) {
        field((value.getEpochSecond() - EPOCH_SECONDS) * 1_000_000 + value.getNano() / 1_000);
    }

    /** Days since the year 2000. */
    public void field(@Nullable LocalDate value) {
        if (value == null) {
            nullField();
        } else {
            putInt(4);
            putInt((int) value.toEpochDay() - EPOCH_DAYS);
        }
    }

    public void field(@Nullable UUID value) {
        if (value == null) {
            nullField();
        } else {
            putInt(16);
            putLong(value.getMostSignificantBits());
            putLong(value.getLeastSignificantBits());
        }
    }

    private void room(int count) {
        if (length + count > bytes.length) {
            bytes = Arrays.copyOf(bytes, Math.max(bytes.length * 2, length + count));
        }
    }
}
