package org.ohmstead.intake.file;

/**
 * How much an archive may unfold to.
 *
 * @param entries how many
 * @param entryBytes of one entry, unpacked
 * @param totalBytes of all entries, unpacked
 * @param ratio how many times larger than packed an entry of more than a megabyte may be
 */
public record ArchiveLimits(int entries, long entryBytes, long totalBytes, int ratio) {

    private static final long MEGABYTE = 1 << 20;

    /** A workbook: few parts, of which the worksheets are repetitive. */
    public static final ArchiveLimits WORKBOOK = new ArchiveLimits(1_000, 32 * MEGABYTE, 64 * MEGABYTE, 200);

    /** A history: many files, each no larger than one handed in alone. */
    public static final ArchiveLimits HISTORY = new ArchiveLimits(50_000, 32 * MEGABYTE, 4_096 * MEGABYTE, 200);

    boolean isTooDense(long packed, long unpacked) {
        return unpacked > MEGABYTE && unpacked / ratio > packed;
    }
}
