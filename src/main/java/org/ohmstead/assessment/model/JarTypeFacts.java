package org.ohmstead.assessment.model;

import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Technology;

/**
 * What the judgement needs to know of a jar type. Unknown numbers are NaN.
 *
 * @param floatVoltsPerCell set by the maker at 25 °C
 * @param referenceOhmic of a new jar, in the unit of its kind
 * @param ohmicPerKelvin relative change of the ohmic value per kelvin around 25 °C
 * @param designLifeYears at the design life's own temperature
 */
public record JarTypeFacts(
        String code,
        Technology technology,
        int cellsPerJar,
        double nominalVolts,
        double ratedAmpereHours,
        double floatVoltsPerCell,
        double referenceOhmic,
        OhmicKind referenceKind,
        double ohmicPerKelvin,
        double designLifeYears,
        double designLifeCelsius) {}
