package org.ohmstead.intake.fuzz;

import java.nio.ByteBuffer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.SplittableRandom;

/** Changes of a file that know nothing of its form. */
final class ByteMutations {

    private static final int[] TELLING = {0, 1, 9, 10, 13, 32, 34, 44, 59, 127, 128, 160, 194, 239, 254, 255};
    private static final Charset WINDOWS = Charset.forName("windows-1252");

    private ByteMutations() {}

    static byte[] mutate(byte[] bytes, byte[] other, SplittableRandom random) {
        return switch (random.nextInt(10)) {
            case 0, 1, 2 -> flipped(bytes, random);
            case 3 -> replaced(bytes, random);
            case 4 -> Arrays.copyOf(bytes, random.nextInt(bytes.length + 1));
            case 5 -> spliced(bytes, other, random);
            case 6 -> without(bytes, random);
            case 7 -> repeated(bytes, random);
            case 8 -> lyingNumber(bytes, random);
            default -> encoded(bytes, random);
        };
    }

    private static byte[] flipped(byte[] bytes, SplittableRandom random) {
        byte[] changed = bytes.clone();
        for (int n = random.nextInt(1, 9); n > 0 && changed.length > 0; n--) {
            changed[random.nextInt(changed.length)] ^= (byte) (1 << random.nextInt(8));
        }
        return changed;
    }

    private static byte[] replaced(byte[] bytes, SplittableRandom random) {
        byte[] changed = bytes.clone();
        for (int n = random.nextInt(1, 5); n > 0 && changed.length > 0; n--) {
            changed[random.nextInt(changed.length)] = (byte) TELLING[random.nextInt(TELLING.length)];
        }
        return changed;
    }

    /** The beginning of one file and the end of another. */
    private static byte[] spliced(byte[] bytes, byte[] other, SplittableRandom random) {
        int head = random.nextInt(bytes.length + 1);
        int tail = random.nextInt(other.length + 1);
        return joined(bytes, 0, head, other, tail, other.length);
    }

    private static byte[] without(byte[] bytes, SplittableRandom random) {
        int from = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, from + random.nextInt(64));
        return joined(bytes, 0, from, bytes, to, bytes.length);
    }

    private static byte[] repeated(byte[] bytes, SplittableRandom random) {
        int from = random.nextInt(bytes.length + 1);
        int to = Math.min(bytes.length, from + random.nextInt(256));
        byte[] twice = joined(bytes, 0, to, bytes, from, bytes.length);
        return random.nextInt(20) > 0 ? twice : joined(twice, 0, twice.length, twice, 0, twice.length);
    }

    /** Sizes, counts and offsets of binary forms are two or four bytes, least significant first. */
    private static byte[] lyingNumber(byte[] bytes, SplittableRandom random) {
        byte[] changed = bytes.clone();
        if (changed.length >= 4) {
            int[] lies = {0, 1, -1, 0x7FFF_FFFF, 0x8000_0000, 0xFFFF, changed.length, random.nextInt()};
            byte[] lie = new byte[4];
            int number = lies[random.nextInt(lies.length)];
            for (int i = 0; i < lie.length; i++) {
                lie[i] = (byte) (number >> 8 * i);
            }
            System.arraycopy(lie, 0, changed, random.nextInt(changed.length - 3), random.nextBoolean() ? 4 : 2);
        }
        return changed;
    }

    private static byte[] encoded(byte[] bytes, SplittableRandom random) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        return switch (random.nextInt(5)) {
            case 0 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16LE);
            case 1 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_16BE);
            case 2 -> text.getBytes(StandardCharsets.UTF_16LE);
            case 3 -> ("\uFEFF" + text).getBytes(StandardCharsets.UTF_8);
            default -> text.getBytes(WINDOWS);
        };
    }

    static byte[] joined(byte[] first, int from, int to, byte[] second, int start, int end) {
        return ByteBuffer.allocate(to - from + end - start)
                .put(first, from, to - from)
                .put(second, start, end - start)
                .array();
    }
}
