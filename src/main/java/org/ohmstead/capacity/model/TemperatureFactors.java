package org.ohmstead.capacity.model;

import org.ohmstead.kernel.Refused;

/**
 * Factor K by which a lead-acid cell sized at 25 °C must be larger at another temperature of the electrolyte, and by
 * which the published current of a rate-adjusted test is divided.
 *
 * <p>Source: IEEE 485, table 1 (cell size correction factors), referred to 77 °F; its range of 25 to 125 °F was read in
 * a secondary source, the values are recalled from memory: verify them against your edition. Between rows the factor is
 * interpolated on a straight line; outside the table there is none. The time-adjusted factors of IEEE 450 differ from
 * these and are not held here.
 */
public final class TemperatureFactors {

    /** To which the table refers. */
    public static final double REFERENCE_CELSIUS = 25;

    private static final double[][] FAHRENHEIT_TO_K = {
        {25, 1.520},
        {30, 1.430},
        {35, 1.350},
        {40, 1.300},
        {45, 1.250},
        {50, 1.190},
        {55, 1.150},
        {60, 1.110},
        {65, 1.080},
        {68, 1.056},
        {70, 1.040},
        {72, 1.029},
        {75, 1.011},
        {77, 1.000},
        {80, 0.980},
        {85, 0.960},
        {90, 0.940},
        {95, 0.930},
        {100, 0.910},
        {110, 0.880},
        {120, 0.860},
        {125, 0.850}
    };

    /** Half a tenth of a kelvin, so that −3.9 and 51.7 °C, the ends of the table as rounded, are inside. */
    private static final double ROUNDING_FAHRENHEIT = 0.09;

    private TemperatureFactors() {}

    /** @throws Refused outside −3.9 to 51.7 °C: nothing is extrapolated */
    public static double at(double celsius) {
        double fahrenheit = celsius * 9 / 5 + 32;
        int last = FAHRENHEIT_TO_K.length - 1;
        if (!(fahrenheit >= FAHRENHEIT_TO_K[0][0] - ROUNDING_FAHRENHEIT
                && fahrenheit <= FAHRENHEIT_TO_K[last][0] + ROUNDING_FAHRENHEIT)) {
            throw new Refused("The factors of the rate-adjusted method end at −3.9 and 51.7 °C; " + Words.plain(celsius)
                    + " °C lies outside, and nothing is extrapolated. Test again nearer 25 °C.");
        }
        double inside = Math.min(Math.max(fahrenheit, FAHRENHEIT_TO_K[0][0]), FAHRENHEIT_TO_K[last][0]);
        int upper = 1;
        while (FAHRENHEIT_TO_K[upper][0] < inside) {
            upper++;
        }
        double[] below = FAHRENHEIT_TO_K[upper - 1];
        double[] above = FAHRENHEIT_TO_K[upper];
        return below[1] + (above[1] - below[1]) * (inside - below[0]) / (above[0] - below[0]);
    }
}
