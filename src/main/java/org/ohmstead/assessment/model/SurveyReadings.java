package org.ohmstead.assessment.model;

import java.time.Instant;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/**
 * One accepted survey of a string as plain numbers. Missing values are NaN.
 *
 * @param takenOn the site's own date
 * @param instrument serial number of the test set, if recorded
 * @param ohmic one value per position (index 0 is position 1), in the unit of the kind
 * @param volts one per position
 * @param celsius jar temperature, one per position
 * @param linkMicroohms per link ordinal 0..N, then per strap
 * @param onFloat false when the string was known to be off float
 */
public record SurveyReadings(
        long surveyId,
        Instant takenAt,
        LocalDate takenOn,
        OhmicKind ohmicKind,
        @Nullable String instrument,
        double ambientCelsius,
        double stringVolts,
        double rippleAmps,
        boolean onFloat,
        double[] ohmic,
        double[] volts,
        double[] celsius,
        double[][] linkMicroohms) {}
