package org.ohmstead.intake.fuzz;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;

/**
 * Writes ZIP archives (PKWARE's APPNOTE, sections 4.3.7, 4.3.12 and 4.3.16), true ones and such as lie: every number of an
 * entry can be said otherwise than it is.
 */
final class Zip {

    private static final int LOCAL = 0x04034b50;
    private static final int CENTRAL = 0x02014b50;
    private static final int END = 0x06054b50;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream table = new ByteArrayOutputStream();
    private int count;

    /** An entry as it is told of: in its own header and in the table of contents. */
    static final class Told {

        String nameInTable;
        long packed;
        long size;
        long crc;
        int method;
        int flags;
        int at;

        private Told(String name) {
            nameInTable = name;
        }
    }

    /** Tells something untrue of an entry. */
    @FunctionalInterface
    interface Lie {
        void about(Told entry);
    }

    static Zip of(String name, byte[] content) {
        return new Zip().with(name, content);
    }

    Zip with(String name, byte[] content) {
        return with(name, content, true, told -> {});
    }

    Zip with(String name, byte[] content, boolean deflate, Lie lie) {
        byte[] packed = deflate ? deflated(content) : content;
        CRC32 crc = new CRC32();
        crc.update(content);
        Told told = new Told(name);
        told.packed = packed.length;
        told.size = content.length;
        told.crc = crc.getValue();
        told.method = deflate ? ZipEntry.DEFLATED : ZipEntry.STORED;
        told.at = out.size();
        lie.about(told);
        header(out, LOCAL, told, name.getBytes(StandardCharsets.UTF_8), false);
        out.writeBytes(packed);
        header(table, CENTRAL, told, told.nameInTable.getBytes(StandardCharsets.UTF_8), true);
        count++;
        return this;
    }

    byte[] bytes() {
        return bytes(count);
    }

    byte[] bytes(int entriesTold) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        whole.writeBytes(out.toByteArray());
        whole.writeBytes(table.toByteArray());
        number(whole, END, 4);
        number(whole, 0, 4);
        number(whole, entriesTold, 2);
        number(whole, entriesTold, 2);
        number(whole, table.size(), 4);
        number(whole, out.size(), 4);
        number(whole, 0, 2);
        return whole.toByteArray();
    }

    private static void header(ByteArrayOutputStream to, int signature, Told told, byte[] name, boolean inTable) {
        number(to, signature, 4);
        if (inTable) {
            number(to, 20, 2);
        }
        number(to, 20, 2);
        number(to, told.flags, 2);
        number(to, told.method, 2);
        number(to, 0, 4);
        number(to, told.crc, 4);
        number(to, told.packed, 4);
        number(to, told.size, 4);
        number(to, name.length, 2);
        number(to, 0, 2);
        if (inTable) {
            number(to, 0, 6);
            number(to, 0, 4);
            number(to, told.at, 4);
        }
        to.writeBytes(name);
    }

    private static void number(ByteArrayOutputStream to, long value, int bytes) {
        for (int i = 0; i < bytes; i++) {
            to.write((int) (value >> 8 * i));
        }
    }

    private static byte[] deflated(byte[] content) {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED, true);
        deflater.setInput(content);
        deflater.finish();
        byte[] packed = new byte[content.length + 64 + content.length / 1000];
        int length = deflater.deflate(packed);
        deflater.end();
        return Arrays.copyOf(packed, length);
    }

    /** A part of an archive. */
    record Part(String name, byte[] content) {}

    /** The parts of a sound archive. */
    static List<Part> parts(byte[] archive) {
        List<Part> parts = new ArrayList<>();
        try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
            for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
                parts.add(new Part(entry.getName(), in.readAllBytes()));
            }
        } catch (IOException unsound) {
            throw new UncheckedIOException(unsound);
        }
        return parts;
    }
}
