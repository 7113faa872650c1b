package org.ohmstead.ledger;

import java.util.List;

/**
 * A string's standing surveys.
 *
 * @param surveys oldest first, never empty
 */
public record StringSurveys(long stringId, List<SurveyRecord> surveys) {}
