package org.ohmstead.ledger;

/** A survey was added to a string's history, or stands again after a withdrawal. Published before the commit. */
public record SurveyAccepted(long stringId, long surveyId) {}
