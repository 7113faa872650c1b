package org.ohmstead.assessment;

import org.ohmstead.assessment.model.StringHistory;

/**
 * What a string is judged by.
 *
 * @param history with what was learned of its jar type
 * @param seen fingerprints of the history and its beginnings
 * @param fingerprint over all of it and the limits
 */
record Known(StringHistory history, Fingerprint seen, byte[] fingerprint) {

    long stringId() {
        return history.plan().stringId();
    }
}
