package org.ohmstead.programme;

import org.ohmstead.kernel.Refused;

/** A photograph taken on a visit, as it came from whoever sends it. */
public record NewPhoto(String fileName, byte[] bytes) {

    static final int MAX_BYTES = 10 * 1024 * 1024;
    private static final int MAX_NAME = 120;

    public NewPhoto {
        fileName = fileName.isBlank()
                ? "photograph"
                : fileName.strip().substring(Math.max(0, fileName.strip().length() - MAX_NAME));
        bytes = bytes.clone();
        if (bytes.length == 0) {
            throw new Refused("The photograph \"" + fileName + "\" is empty.");
        }
        if (bytes.length > MAX_BYTES) {
            throw new Refused("The photograph \"" + fileName + "\" is larger than 10 MB; send it smaller.");
        }
    }

    /**
     * What the bytes are, whatever name they carry.
     *
     * @throws Refused when they are no JPEG, PNG or WebP picture
     */
    String mediaType() {
        if (startsWith(0, 0xFF, 0xD8, 0xFF)) {
            return "image/jpeg";
        }
        if (startsWith(0, 0x89, 'P', 'N', 'G', 0x0D, 0x0A, 0x1A, 0x0A)) {
            return "image/png";
        }
        if (startsWith(0, 'R', 'I', 'F', 'F') && startsWith(8, 'W', 'E', 'B', 'P')) {
            return "image/webp";
        }
        throw new Refused("\"" + fileName + "\" is no JPEG, PNG or WebP picture; send the photograph as one of these.");
    }

    private boolean startsWith(int offset, int... head) {
        if (bytes.length < offset + head.length) {
            return false;
        }
        for (int i = 0; i < head.length; i++) {
            if ((bytes[offset + i] & 0xFF) != head[i]) {
                return false;
            }
        }
        return true;
    }
}
