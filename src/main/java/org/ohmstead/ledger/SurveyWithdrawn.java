package org.ohmstead.ledger;

/** A survey no longer counts in its string's history. Published before the commit. */
public record SurveyWithdrawn(long stringId, long surveyId) {}
