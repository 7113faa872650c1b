package org.ohmstead.programme;

import java.util.List;

/** What another feature adds to the digest of whoever is asked for. */
public interface DigestPart {

    String title();

    /** Empty when there is nothing to say. */
    List<String> lines();
}
