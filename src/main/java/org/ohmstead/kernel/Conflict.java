package org.ohmstead.kernel;

import org.jspecify.annotations.Nullable;

/** The act contradicts what is already there; the message says with what, and what to do. */
public class Conflict extends RuntimeException {

    public Conflict(String message) {
        super(message);
    }

    public Conflict(String message, @Nullable Throwable cause) {
        super(message, cause);
    }
}
