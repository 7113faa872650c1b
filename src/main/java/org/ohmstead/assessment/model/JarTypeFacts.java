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
 * @param logLimit logarithmic rise at which half of the jars have lost their capacity, learned from capacity tests; NaN
 *     where the standard one holds
 * @param logLimitSpread how uncertain that is for one jar, standard deviation
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
        double designLifeCelsius,
        double logLimit,
        double logLimitSpread) {

    /** With the standard limit. */
    public JarTypeFacts(
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
            double designLifeCelsius) {
        this(
                code,
                technology,
                cellsPerJar,
                nominalVolts,
                ratedAmpereHours,
                floatVoltsPerCell,
                referenceOhmic,
                referenceKind,
                ohmicPerKelvin,
                designLifeYears,
                designLifeCelsius,
                Double.NaN,
                Double.NaN);
    }

    /** The maker's reference stands where there is one. */
    public JarTypeFacts learned(double reference, OhmicKind kind, double limit, double limitSpread) {
        boolean takes = !(referenceOhmic > 0) && reference > 0;
        return new JarTypeFacts(
                code,
                technology,
                cellsPerJar,
                nominalVolts,
                ratedAmpereHours,
                floatVoltsPerCell,
                takes ? reference : referenceOhmic,
                takes ? kind : referenceKind,
                ohmicPerKelvin,
                designLifeYears,
                designLifeCelsius,
                limit,
                limitSpread);
    }
}
