package org.ohmstead.capacity.model;

/**
 * What was drawn.
 *
 * @param amps mean current over the discharge
 * @param minutes until the string reached its end voltage, or until the test was stopped
 * @param celsius of the electrolyte before the discharge
 * @param stoppedEarly whether the end voltage was not reached: the capacity is then at least what was drawn
 */
public record Discharge(double amps, double minutes, double celsius, boolean stoppedEarly) {

    public Discharge {
        Ratings.require(amps > 0 && Double.isFinite(amps), "The current drawn is a number of amperes above zero.");
        Ratings.require(
                minutes > 0 && Double.isFinite(minutes),
                "The time of the discharge is a number of minutes above zero.");
        Ratings.require(celsius >= -40 && celsius <= 80, "The electrolyte's temperature lies between −40 and 80 °C.");
    }
}
