package org.ohmstead.intake.file;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;

/** The upper part of a sheet. Words not given are empty, numbers not given are NaN. */
public record SheetFacts(
        String site,
        String string,
        @Nullable TakenAt takenAt,
        String takenBy,
        String instrument,
        @Nullable LocalDate calibrationDue,
        @Nullable OhmicKind ohmicKind,
        double ohmicHertz,
        double ambientCelsius,
        double stringVolts,
        double floatAmps,
        double rippleAmps,
        double rippleVolts,
        double injectedAmps,
        double clampedAmps,
        boolean onFloat,
        String note) {}
