package org.ohmstead.intake.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Reads a ZIP archive by its table of contents, believing nothing: what an entry's own header or its content say otherwise
 * than the table, entries that overlap, and anything beyond the limits are refused. Nothing is ever written to disk.
 */
public final class Archive {

    private static final int END = 0x06054b50;
    private static final int END_LENGTH = 22;
    private static final int LONGEST_COMMENT = 0xFFFF;
    private static final int LOCAL = 0x04034b50;
    private static final int LOCAL_LENGTH = 30;
    private static final int ENCRYPTED = 1;

    private final ByteBuffer bytes;
    private final ArchiveLimits limits;
    private final List<ArchiveEntry> entries;
    private int contentsAt;

    private Archive(ByteBuffer bytes, ArchiveLimits limits) throws BadArchive {
        this.bytes = bytes.duplicate().order(ByteOrder.LITTLE_ENDIAN);
        this.limits = limits;
        try {
            entries = contents(end());
        } catch (IndexOutOfBoundsException beyond) {
            throw BadArchive.broken("its table of contents points beyond its end");
        }
        requireApart();
    }

    /** @throws BadArchive when it is not to be opened */
    public static Archive open(ByteBuffer bytes, ArchiveLimits limits) throws BadArchive {
        return new Archive(bytes, limits);
    }

    public static boolean isArchive(byte[] start) {
        return start.length >= 4 && start[0] == 'P' && start[1] == 'K' && start[2] < 9 && start[3] < 9;
    }

    /** In the order of the table of contents. */
    public List<ArchiveEntry> entries() {
        return entries;
    }

    public Optional<ArchiveEntry> entry(String name) {
        return entries.stream().filter(entry -> entry.name().equals(name)).findFirst();
    }

    /** The unpacked bytes; reading them fails with {@link BadArchive} where they are not what the table says. */
    public InputStream open(ArchiveEntry entry) throws IOException {
        return new UnpackedEntry(entry, bytes.slice(dataAt(entry), (int) entry.packedBytes()));
    }

    private int end() throws BadArchive {
        int last = bytes.limit() - END_LENGTH;
        for (int at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--) {
            if (bytes.getInt(at) == END && at + END_LENGTH + u16(at + 20) == bytes.limit()) {
                return at;
            }
        }
        throw BadArchive.broken("it has no table of contents, so it was probably cut off");
    }

    private List<ArchiveEntry> contents(int end) throws BadArchive {
        int count = u16(end + 10);
        if (count > limits.entries()) {
            throw BadArchive.tooLarge(count + " entries, at most " + limits.entries());
        }
        long start = u32(end + 16);
        if (start > end) {
            throw BadArchive.broken("its table of contents lies beyond its end");
        }
        contentsAt = (int) start;
        List<ArchiveEntry> read = new ArrayList<>();
        ArchiveContents table = new ArchiveContents(bytes, contentsAt, end);
        long total = 0;
        for (int i = 0; i < count; i++) {
            ArchiveEntry entry = table.next();
            require(entry);
            total += entry.bytes();
            read.add(entry);
        }
        if (total > limits.totalBytes()) {
            throw BadArchive.tooLarge("unpacked it is more than " + (limits.totalBytes() >> 20) + " MB");
        }
        return List.copyOf(read);
    }

    private void require(ArchiveEntry entry) throws BadArchive {
        if (entry.method() != ArchiveEntry.STORED && entry.method() != ArchiveEntry.DEFLATED) {
            throw BadArchive.broken("\"" + entry.shown() + "\" is packed in a way that is not known here");
        }
        if (entry.bytes() > limits.entryBytes()) {
            throw BadArchive.tooLarge(
                    "\"" + entry.shown() + "\" is more than " + (limits.entryBytes() >> 20) + " MB unpacked");
        }
        if (limits.isTooDense(entry.packedBytes(), entry.bytes())) {
            throw BadArchive.tooLarge("\"" + entry.shown() + "\" unfolds to more than " + limits.ratio() + " times");
        }
        if (dataAt(entry) + entry.packedBytes() > contentsAt) {
            throw BadArchive.broken("\"" + entry.shown() + "\" reaches beyond the end");
        }
    }

    /** Where the data of an entry begins, after its own header has been held against the table. */
    private int dataAt(ArchiveEntry entry) throws BadArchive {
        int at = entry.at();
        if (at + LOCAL_LENGTH > contentsAt || bytes.getInt(at) != LOCAL) {
            throw BadArchive.broken("\"" + entry.shown() + "\" is not where the table says");
        }
        if ((u16(at + 6) & ENCRYPTED) != 0) {
            throw BadArchive.broken("\"" + entry.shown() + "\" is encrypted, and no password is known here");
        }
        int nameLength = u16(at + 26);
        if (!text(bytes, at + LOCAL_LENGTH, nameLength).equals(entry.name()) || u16(at + 8) != entry.method()) {
            throw BadArchive.broken("\"" + entry.shown() + "\" is called otherwise by its own header");
        }
        return at + LOCAL_LENGTH + nameLength + u16(at + 28);
    }

    private void requireApart() throws BadArchive {
        long reached = 0;
        List<ArchiveEntry> inPlace = new ArrayList<>(entries);
        inPlace.sort(Comparator.comparingInt(ArchiveEntry::at));
        for (ArchiveEntry entry : inPlace) {
            if (entry.at() < reached) {
                throw BadArchive.broken("\"" + entry.shown() + "\" overlaps another entry");
            }
            reached = dataAt(entry) + entry.packedBytes();
        }
    }

    private int u16(int at) {
        return bytes.getShort(at) & 0xFFFF;
    }

    private long u32(int at) {
        return bytes.getInt(at) & 0xFFFF_FFFFL;
    }

    static String text(ByteBuffer bytes, int at, int length) throws BadArchive {
        if (at + length > bytes.limit()) {
            throw BadArchive.broken("a name reaches beyond the end");
        }
        byte[] name = new byte[length];
        bytes.get(at, name);
        return new String(name, StandardCharsets.UTF_8);
    }
}
