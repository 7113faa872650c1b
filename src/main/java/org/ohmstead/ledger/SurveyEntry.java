package org.ohmstead.ledger;

import java.time.Instant;
import java.time.LocalDate;

/**
 * A survey in a list, without its readings.
 *
 * @param recordedBy username
 */
public record SurveyEntry(
        long surveyId,
        long stringId,
        String siteCode,
        String siteName,
        String stringName,
        Instant takenAt,
        LocalDate takenOn,
        String takenBy,
        Instant recordedAt,
        String recordedBy,
        boolean stands) {}
