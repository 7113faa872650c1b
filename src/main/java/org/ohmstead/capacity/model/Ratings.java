package org.ohmstead.capacity.model;

import org.ohmstead.kernel.Refused;

/**
 * What the maker publishes for the test: a current, for how long, at which temperature, down to which voltage.
 *
 * @param celsius reference temperature of the published figures
 */
public record Ratings(double amps, double minutes, double celsius, double endVoltsPerCell) {

    public Ratings {
        require(amps > 0 && Double.isFinite(amps), "The published current is a number of amperes above zero.");
        require(minutes > 0 && Double.isFinite(minutes), "The rated time is a number of minutes above zero.");
        require(celsius >= -40 && celsius <= 80, "The reference temperature lies between −40 and 80 °C.");
        require(
                endVoltsPerCell > 0 && endVoltsPerCell < 3,
                "The end voltage is given in volts per cell, above 0 and under 3.");
    }

    public double ampereHours() {
        return amps * minutes / 60;
    }

    static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new Refused(otherwise);
        }
    }
}
