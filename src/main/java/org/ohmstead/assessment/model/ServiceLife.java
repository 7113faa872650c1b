package org.ohmstead.assessment.model;

import org.ohmstead.kernel.Technology;

/**
 * How long a string may be expected to last at the temperature it lives in. Lead-acid life halves for each so many kelvin
 * above the temperature its design life holds for; cold gives no credit. Nothing is derated for nickel-cadmium.
 */
final class ServiceLife {

    private static final double USUAL_CELSIUS = 25;

    private ServiceLife() {}

    /** Share of the design life that is left of it at this temperature: 1 or less. */
    static double factor(double celsius, double designCelsius, double halvingKelvin) {
        return Math.pow(0.5, Math.max(0, celsius - designCelsius) / halvingKelvin);
    }

    /** In years; the plain design life while no temperature is known, NaN without a design life. */
    static double expectedYears(JarTypeFacts jarType, double celsius, double halvingKelvin) {
        if (Double.isNaN(celsius) || jarType.technology() == Technology.NICKEL_CADMIUM) {
            return jarType.designLifeYears();
        }
        double designCelsius = Numbers.either(jarType.designLifeCelsius(), USUAL_CELSIUS);
        return jarType.designLifeYears() * factor(celsius, designCelsius, halvingKelvin);
    }
}
