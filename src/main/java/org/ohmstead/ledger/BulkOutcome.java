package org.ohmstead.ledger;

import java.util.List;

/**
 * What became of a bulk load.
 *
 * @param stored surveys added
 * @param alreadyThere surveys left out because the ledger holds the very same: same string, same instant, same content
 * @param contradicting surveys left out because the ledger holds another one of the same string and the same instant
 */
public record BulkOutcome(long stored, long alreadyThere, List<SurveyFacts> contradicting) {

    public BulkOutcome {
        contradicting = List.copyOf(contradicting);
    }
}
