package org.ohmstead.fleet;

import org.jspecify.annotations.Nullable;

/** The identity of what has been stored. */
final class Known {

    private Known() {}

    static long id(@Nullable Long id) {
        if (id == null) {
            throw new IllegalStateException("Not stored yet");
        }
        return id;
    }
}
