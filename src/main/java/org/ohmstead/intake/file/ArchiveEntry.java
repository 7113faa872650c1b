package org.ohmstead.intake.file;

/**
 * One file of an archive, as its table of contents says.
 *
 * @param name with its folders; only ever shown, never a place on disk
 * @param at where its own header begins
 */
public record ArchiveEntry(String name, int method, long crc, long packedBytes, long bytes, int at) {

    static final int STORED = 0;
    static final int DEFLATED = 8;
    private static final int SHOWN = 80;

    /** The name as it may be shown: short, and without control characters. */
    String shown() {
        String clean = name.replaceAll("[\\p{Cntrl}\\p{Cf}\\p{Cs}]", "\uFFFD");
        return clean.length() <= SHOWN ? clean : clean.substring(0, SHOWN) + "…";
    }

    public boolean isFolder() {
        return name.endsWith("/");
    }
}
