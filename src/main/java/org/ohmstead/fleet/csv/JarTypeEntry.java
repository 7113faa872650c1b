package org.ohmstead.fleet.csv;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/**
 * What the register says of a jar type; known by its code.
 *
 * @param ratedHours the discharge time at which the rated ampere-hours hold
 * @param ratingSource where the rated figures come from, such as a data sheet and its date
 * @param referenceOhmic of a new jar: milliohms, or siemens for conductance
 * @param ohmicPerKelvin relative change per kelvin around 25 °C; only with its source
 */
public record JarTypeEntry(
        String code,
        String description,
        Technology technology,
        int cellsPerJar,
        double nominalVolts,
        double ratedAmpereHours,
        double ratedHours,
        @Nullable Double endVoltsPerCell,
        @Nullable Double ratingCelsius,
        @Nullable Double designLifeYears,
        @Nullable Double designLifeCelsius,
        @Nullable Double floatVoltsPerCell,
        String ratingSource,
        @Nullable Double referenceOhmic,
        @Nullable OhmicKind referenceOhmicKind,
        @Nullable Double referenceOhmicHertz,
        @Nullable String referenceOhmicSource,
        @Nullable Double ohmicPerKelvin,
        @Nullable String ohmicPerKelvinSource,
        @Nullable Double warrantyYears,
        @Nullable LocalDate retiredOn) {}
