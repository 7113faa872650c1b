package org.ohmstead.assessment;

import org.ohmstead.assessment.model.StringJudgement;

/** A judgement with the fingerprint of what it was made from. */
record Judged(StringJudgement judgement, byte[] fingerprint, Followed followed) {

    long stringId() {
        return judgement.stringId();
    }
}
