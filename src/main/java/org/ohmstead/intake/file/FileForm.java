package org.ohmstead.intake.file;

import java.io.IOException;
import java.io.InputStream;

/** The forms a file may have, told apart by its first bytes and never by its name. */
public enum FileForm {
    TEXT,
    WORKBOOK,
    JSON;

    private static final int LOOKED_AT = 64;

    public static FileForm of(ByteSource source) throws IOException {
        try (InputStream bytes = source.open()) {
            byte[] start = bytes.readNBytes(LOOKED_AT);
            return Archive.isArchive(start) ? WORKBOOK : isJson(start) ? JSON : TEXT;
        }
    }

    /** An opening bracket comes first, whatever the encoding. */
    private static boolean isJson(byte[] start) {
        for (byte octet : start) {
            int value = octet & 0xFF;
            boolean passed = value <= ' ' || value >= 0xBB && value != 0xFF && value != 0xFE || value >= 0xFE;
            if (!passed) {
                return value == '{' || value == '[';
            }
        }
        return false;
    }
}
