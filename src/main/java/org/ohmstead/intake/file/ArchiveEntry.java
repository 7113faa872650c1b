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

    public boolean isFolder() {
        return name.endsWith("/");
    }
}
