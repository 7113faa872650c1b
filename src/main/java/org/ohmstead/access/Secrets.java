package org.ohmstead.access;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Base64;
import org.ohmstead.kernel.Sha256;

/** Random secrets and the hash under which they are stored. 256 random bits need no slow hash. */
final class Secrets {

    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 32;

    private Secrets() {}

    static String next() {
        byte[] secret = new byte[BYTES];
        RANDOM.nextBytes(secret);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
    }

    static byte[] hash(String secret) {
        return Sha256.of(secret.getBytes(StandardCharsets.UTF_8));
    }
}
