package org.ohmstead.intake.file;

import java.nio.ByteBuffer;

/** Steps through an archive's table of contents. */
final class ArchiveContents {

    private static final int ENTRY = 0x02014b50;
    private static final int ENTRY_LENGTH = 46;
    private static final int WIDE_SIZES = 1;
    private static final long SEE_WIDE = 0xFFFF_FFFFL;

    private final ByteBuffer bytes;
    private final int end;
    private int at;

    ArchiveContents(ByteBuffer bytes, int start, int end) {
        this.bytes = bytes;
        this.at = start;
        this.end = end;
    }

    ArchiveEntry next() throws BadArchive {
        if (at + ENTRY_LENGTH > end || bytes.getInt(at) != ENTRY) {
            throw BadArchive.broken("its table of contents is shorter than it says");
        }
        int nameLength = u16(28);
        int extraLength = u16(30);
        String name = Archive.text(bytes, at + ENTRY_LENGTH, nameLength);
        // order matters: the wide fields hold, one after the other, only what the narrow ones don't
        Wide wide = new Wide(at + ENTRY_LENGTH + nameLength, extraLength);
        long size = wide.orNarrow(u32(24));
        long packed = wide.orNarrow(u32(20));
        long header = wide.orNarrow(u32(42));
        ArchiveEntry entry = new ArchiveEntry(name, u16(10), u32(16), packed, size, (int) header);
        if (size < 0 || packed < 0 || header < 0 || packed > bytes.limit() || header > bytes.limit()) {
            throw BadArchive.broken("\"" + entry.shown() + "\" lies beyond its end");
        }
        at += ENTRY_LENGTH + nameLength + extraLength + u16(32);
        return entry;
    }

    private int u16(int offset) {
        return bytes.getShort(at + offset) & 0xFFFF;
    }

    private long u32(int offset) {
        return bytes.getInt(at + offset) & 0xFFFF_FFFFL;
    }

    /** The extra field with sizes of eight bytes, if there is one. */
    private final class Wide {

        private int from;
        private int to;

        Wide(int start, int length) {
            int stop = Math.min(start + length, end);
            for (int field = start; field + 4 <= stop; field += 4 + (bytes.getShort(field + 2) & 0xFFFF)) {
                if (bytes.getShort(field) == WIDE_SIZES) {
                    from = field + 4;
                    to = Math.min(stop, from + (bytes.getShort(field + 2) & 0xFFFF));
                    return;
                }
            }
        }

        long orNarrow(long narrow) throws BadArchive {
            if (narrow != SEE_WIDE) {
                return narrow;
            }
            if (from + Long.BYTES > to) {
                throw BadArchive.broken("a size is missing from its table of contents");
            }
            from += Long.BYTES;
            return bytes.getLong(from - Long.BYTES);
        }
    }
}
