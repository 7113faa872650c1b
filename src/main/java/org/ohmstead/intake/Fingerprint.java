package org.ohmstead.intake;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/** SHA-256 of a file's bytes. */
final class Fingerprint {

    private Fingerprint() {}

    static byte[] of(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException everyJvmHasIt) {
            throw new IllegalStateException(everyJvmHasIt);
        }
    }
}
