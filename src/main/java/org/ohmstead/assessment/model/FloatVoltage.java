package org.ohmstead.assessment.model;

import org.ohmstead.kernel.Technology;

/**
 * The float voltage a charger should hold at another temperature than the 25 °C of its set-point.
 *
 * <p>Lead-acid: -3 mV/K per cell, held outside 5 to 40 °C (a published VRLA series manual, p. 19). Nickel-cadmium: none
 * in ordinary rooms; -3 mV/K per cell from +35 °C up, and below 0 °C counted from 20 °C (a published Ni-Cd manual, p.
 * 22).
 */
final class FloatVoltage {

    static final double SETPOINT_CELSIUS = 25;

    private static final double VOLTS_PER_KELVIN = -0.003;
    private static final double LEAD_COLDEST = 5;
    private static final double LEAD_HOTTEST = 40;
    private static final double CADMIUM_HOT = 35;
    private static final double CADMIUM_COLD = 0;
    private static final double CADMIUM_COLD_REFERENCE = 20;

    private FloatVoltage() {}

    /** NaN when set-point or temperature is. */
    static double perCell(Technology technology, double setpointVolts, double celsius) {
        double kelvin = technology.isLeadAcid() ? leadAcidKelvin(celsius) : nickelCadmiumKelvin(celsius);
        return setpointVolts + VOLTS_PER_KELVIN * kelvin;
    }

    private static double leadAcidKelvin(double celsius) {
        return Math.max(LEAD_COLDEST, Math.min(LEAD_HOTTEST, celsius)) - SETPOINT_CELSIUS;
    }

    private static double nickelCadmiumKelvin(double celsius) {
        if (celsius < CADMIUM_COLD) {
            return celsius - CADMIUM_COLD_REFERENCE;
        }
        return Double.isNaN(celsius) ? celsius : Math.max(0, celsius - CADMIUM_HOT);
    }
}
