package org.ohmstead.capacity.model;

import static org.ohmstead.capacity.model.Words.fixed;
import static org.ohmstead.capacity.model.Words.percent;
import static org.ohmstead.capacity.model.Words.plain;

import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;
import org.ohmstead.kernel.Technology;

/**
 * Percent capacity by the two methods.
 *
 * <ul>
 *   <li><b>Rate-adjusted</b>: the string is discharged at the published current divided by {@link TemperatureFactors K};
 *       percent capacity at 25 °C = actual time / rated time × 100. Source: EnerSys US-FL-IOM-002 §13.1, which cites IEEE
 *       450-2002.
 *   <li><b>Linear</b> (the form of IEC 60896): the string is discharged at the published current; the ampere-hours
 *       drawn are brought to the reference temperature, C / (1 + k (t − t_ref)), and set against the rated ones. k = 0.006
 *       per kelvin at the 10 and 20 hour rates and 0.01 at the 1 to 3 hour rates, from a maker's note with reference 25 °C;
 *       at any other rate k must be entered.
 * </ul>
 *
 * Both hold for a constant current near the one they ask for: a current more than 2 % off is refused, since ampere-hours
 * at another rate are another capacity (the 2 % are common practice, without a source).
 */
public final class Capacities {

    private static final double CURRENT_TOLERANCE = 0.02;
    private static final double SAME_KELVIN = 0.5;
    /** In which IEC 60896 has the linear form used; recalled from memory. */
    private static final double LINEAR_LOW = 15;

    private static final double LINEAR_HIGH = 35;

    private Capacities() {}

    public static Capacity of(
            Method method,
            Ratings ratings,
            Discharge drawn,
            Technology technology,
            @Nullable Double coefficientPerKelvin) {
        return method == Method.RATE_ADJUSTED
                ? rateAdjusted(ratings, drawn, technology)
                : linear(ratings, drawn, coefficient(ratings, coefficientPerKelvin));
    }

    static Capacity rateAdjusted(Ratings ratings, Discharge drawn, Technology technology) {
        if (!technology.isLeadAcid()) {
            throw new Refused("The factors of the rate-adjusted method are those of lead-acid cells. Take the linear"
                    + " method with the maker's coefficient.");
        }
        if (Math.abs(ratings.celsius() - TemperatureFactors.REFERENCE_CELSIUS) > SAME_KELVIN) {
            throw new Refused("The factors of the rate-adjusted method refer to 25 °C, the rating to "
                    + plain(ratings.celsius()) + " °C. Take a rating at 25 °C, or the linear method.");
        }
        double k = TemperatureFactors.at(drawn.celsius());
        double asked = ratings.amps() / k;
        requireCurrent(asked, drawn.amps());
        double percent = drawn.minutes() / ratings.minutes() * 100;
        String words = plain(ratings.amps()) + " A for " + plain(ratings.minutes()) + " min is published at 25 °C; at "
                + fixed(1, drawn.celsius()) + " °C K is " + fixed(3, k) + ", so " + fixed(2, asked)
                + " A are to be drawn. " + fixed(2, drawn.amps()) + " A were drawn for " + fixed(1, drawn.minutes())
                + " min: " + fixed(1, drawn.minutes()) + " / " + plain(ratings.minutes()) + " = " + percent(percent)
                + stopped(drawn);
        return new Capacity(percent, drawn.stoppedEarly(), words);
    }

    static Capacity linear(Ratings ratings, Discharge drawn, double coefficient) {
        requireCurrent(ratings.amps(), drawn.amps());
        double factor = 1 + coefficient * (drawn.celsius() - ratings.celsius());
        if (!(factor > 0)) {
            throw new Refused("With " + coefficient + " per kelvin nothing is left at " + plain(drawn.celsius())
                    + " °C. Check coefficient and temperatures.");
        }
        double ampereHours = drawn.amps() * drawn.minutes() / 60;
        double atReference = ampereHours / factor;
        double percent = atReference / ratings.ampereHours() * 100;
        String words = fixed(2, drawn.amps()) + " A for " + fixed(1, drawn.minutes()) + " min are "
                + fixed(2, ampereHours) + " Ah at " + fixed(1, drawn.celsius()) + " °C; divided by 1 + "
                + plain(coefficient)
                + " × (" + fixed(1, drawn.celsius()) + " − " + plain(ratings.celsius()) + ") = " + fixed(3, factor)
                + " that is " + fixed(2, atReference) + " Ah at " + plain(ratings.celsius()) + " °C of "
                + fixed(2, ratings.ampereHours()) + " Ah rated: " + percent(percent) + stopped(drawn) + outside(drawn);
        return new Capacity(percent, drawn.stoppedEarly(), words);
    }

    /** What is entered; else what the maker's note says for the rate. */
    public static double coefficient(Ratings ratings, @Nullable Double entered) {
        if (entered != null) {
            Ratings.require(entered > 0 && entered < 0.1, "The coefficient lies between 0 and 0.1 per kelvin.");
            return entered;
        }
        double hours = ratings.minutes() / 60;
        if (hours >= 10 && hours <= 20) {
            return 0.006;
        }
        if (hours >= 1 && hours <= 3) {
            return 0.01;
        }
        throw new Refused("A coefficient is known for the 10 to 20 hour rates (0.006 per kelvin) and the 1 to 3 hour"
                + " rates (0.01 per kelvin). For a rate of " + plain(hours) + " h enter the maker's.");
    }

    private static void requireCurrent(double asked, double drawn) {
        if (Math.abs(drawn / asked - 1) > CURRENT_TOLERANCE) {
            throw new Refused("The method asks for " + fixed(2, asked) + " A; " + fixed(2, drawn) + " A, "
                    + percent(Math.abs(drawn / asked - 1) * 100) + " off, were drawn. At another current the string has"
                    + " another capacity: take the published figures of the current that was drawn.");
        }
    }

    private static String stopped(Discharge drawn) {
        return drawn.stoppedEarly()
                ? " at least: the test was stopped before the string reached its end voltage."
                : ".";
    }

    private static String outside(Discharge drawn) {
        return drawn.celsius() < LINEAR_LOW || drawn.celsius() > LINEAR_HIGH
                ? " The linear form is meant for 15 to 35 °C (recalled); outside it the figure is a rough one."
                : "";
    }
}
