package org.ohmstead.kernel;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** The fingerprint of bytes: 32 bytes that no other content has. */
public final class Sha256 {

    private Sha256() {}

    public static byte[] of(byte[] bytes) {
        return digest().digest(bytes);
    }

    /** To be fed piece by piece. */
    public static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java platform has SHA-256", e);
        }
    }
}
