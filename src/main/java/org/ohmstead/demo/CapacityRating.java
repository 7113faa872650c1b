package org.ohmstead.demo;

import org.jspecify.annotations.Nullable;
import org.ohmstead.capacity.model.Method;
import org.ohmstead.capacity.model.Ratings;
import org.ohmstead.capacity.model.TemperatureFactors;
import org.ohmstead.fleet.csv.JarTypeEntry;
import org.ohmstead.kernel.Technology;

/**
 * At which rate a jar type is tested, and by which method: invented figures.
 *
 * @param coefficient per kelvin, where none is known for the rate
 */
record CapacityRating(
        Method method, Ratings ratings, @Nullable Double coefficient) {

    private static final double LARGE_AMPERE_HOURS = 1000;
    /** Of every rate that is tested here and has no coefficient of its own. */
    private static final double PER_KELVIN = 0.006;

    static CapacityRating of(JarTypeEntry type) {
        double hours = type.ratedAmpereHours();
        if (type.technology() == Technology.NICKEL_CADMIUM) {
            return new CapacityRating(Method.LINEAR, new Ratings(hours / 5, 300, 20, 1.00), PER_KELVIN);
        }
        if (type.technology().isValveRegulated()) {
            return new CapacityRating(Method.LINEAR, new Ratings(hours / 4, 180, 20, 1.75), null);
        }
        return hours >= LARGE_AMPERE_HOURS
                ? new CapacityRating(Method.RATE_ADJUSTED, new Ratings(0.12 * hours, 480, 25, 1.75), null)
                : new CapacityRating(Method.LINEAR, new Ratings(hours / 10, 600, 20, 1.80), null);
    }

    /** That the method asks to be drawn. */
    double ampsAt(double celsius) {
        return method == Method.RATE_ADJUSTED ? ratings.amps() / TemperatureFactors.at(celsius) : ratings.amps();
    }

    /** That a jar of full capacity lasts at what is drawn. */
    double minutesAt(double celsius) {
        double perKelvin = coefficient != null ? coefficient : ratings.minutes() > 180 ? PER_KELVIN : 0.01;
        return method == Method.RATE_ADJUSTED
                ? ratings.minutes()
                : ratings.minutes() * (1 + perKelvin * (celsius - ratings.celsius()));
    }
}
