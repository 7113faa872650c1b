package org.ohmstead.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.zip.CRC32;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** The bytes of one entry of an archive: exactly as many as announced, with the announced checksum, or an error. */
final class UnpackedEntry extends InputStream {

    private final ArchiveEntry entry;
    private final ByteBuffer packed;
    private final Inflater inflater = new Inflater(true);
    private final CRC32 crc = new CRC32();
    private final byte[] one = new byte[1];
    private long count;
    private boolean ended;

    UnpackedEntry(ArchiveEntry entry, ByteBuffer packed) {
        this.entry = entry;
        this.packed = packed;
        if (entry.method() == ArchiveEntry.DEFLATED) {
            inflater.setInput(packed);
        }
    }

    @Override
    public int read() throws IOException {
        return read(one, 0, 1) < 0 ? -1 : one[0] & 0xFF;
    }

    @Override
    public int read(byte[] into, int from, int length) throws IOException {
        if (length == 0 || ended) {
            return ended ? -1 : 0;
        }
        int read = entry.method() == ArchiveEntry.STORED ? copy(into, from, length) : inflate(into, from, length);
        if (read < 0) {
            end();
            return -1;
        }
        count += read;
        if (count > entry.bytes()) {
            throw untrue("is longer than announced");
        }
        crc.update(into, from, read);
        return read;
    }

    private int copy(byte[] into, int from, int length) {
        int read = Math.min(length, packed.remaining());
        packed.get(into, from, read);
        return read == 0 ? -1 : read;
    }

    private int inflate(byte[] into, int from, int length) throws IOException {
        try {
            int read = inflater.inflate(into, from, length);
            if (read > 0) {
                return read;
            }
        } catch (DataFormatException broken) {
            throw untrue("cannot be unpacked");
        }
        if (!inflater.finished()) {
            throw untrue("ends before its end");
        }
        return -1;
    }

    private void end() throws IOException {
        ended = true;
        if (count != entry.bytes() || crc.getValue() != entry.crc()) {
            throw untrue("is not what was packed");
        }
    }

    private BadArchive untrue(String what) {
        return BadArchive.broken("\"" + entry.shown() + "\" " + what);
    }

    @Override
    public void close() {
        inflater.end();
    }
}
