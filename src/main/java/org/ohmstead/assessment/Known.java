package org.ohmstead.assessment;

import org.ohmstead.assessment.model.StringHistory;

/**
 * What a string is judged by.
 *
 * @param history with what was learned of its jar type
 * @param fingerprint over all of it
 */
record Known(StringHistory history, byte[] fingerprint) {

    long stringId() {
        return history.plan().stringId();
    }
}
