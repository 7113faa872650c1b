package org.ohmstead.intake.file;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;

/** Bytes that can be read from the start more than once: first to find out how they are written, then to read them. */
@FunctionalInterface
public interface ByteSource {

    InputStream open() throws IOException;

    static ByteSource of(byte[] bytes) {
        return () -> new ByteArrayInputStream(bytes);
    }
}
