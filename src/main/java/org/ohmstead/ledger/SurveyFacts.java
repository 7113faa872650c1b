package org.ohmstead.ledger;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/**
 * What is known of a survey as a whole, apart from the readings of its jars and links. Numbers that were not measured
 * are NaN.
 *
 * @param takenAt kept to the microsecond
 * @param takenOn the site's own calendar date
 * @param takenBy empty when it was not recorded
 * @param instrument serial number of the test set
 * @param calibrationDue last day on which the test set's calibration holds
 * @param injectedAmps test current that the test set sent
 * @param clampedAmps test current that was clamped inside the string
 * @param onFloat false when the string was known to be off float
 */
public record SurveyFacts(
        long stringId,
        Instant takenAt,
        LocalDate takenOn,
        String takenBy,
        @Nullable String instrument,
        @Nullable LocalDate calibrationDue,
        OhmicKind ohmicKind,
        double ohmicHertz,
        double ambientCelsius,
        double stringVolts,
        double floatAmps,
        double rippleAmps,
        double rippleVolts,
        double injectedAmps,
        double clampedAmps,
        boolean onFloat,
        String note) {

    public SurveyFacts {
        takenAt = takenAt.truncatedTo(ChronoUnit.MICROS);
    }

    /** Only what every survey has; nothing else was recorded, the string was on float. */
    public static SurveyFacts of(long stringId, Instant takenAt, LocalDate takenOn, OhmicKind ohmicKind) {
        double none = Double.NaN;
        return new SurveyFacts(
                stringId, takenAt, takenOn, "", null, null, ohmicKind, none, none, none, none, none, none, none, none,
                true, "");
    }
}
