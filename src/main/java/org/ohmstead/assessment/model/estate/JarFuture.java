package org.ohmstead.assessment.model.estate;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.jspecify.annotations.Nullable;

/**
 * The chance that a jar has passed its limit by some day, pieced together from what its forecast says: its chance of being
 * past it at its last survey, its chance within the twelve months after, then the days of its crossing. Between these the
 * share of jars like it that is left falls at an even rate. Where the forecast gives no day the hazard of its jar type's
 * life curve takes over; without one, no more than one in ten by the fifteenth year, which the missing day means.
 */
public final class JarFuture {

    private static final double DAYS_PER_YEAR = 365.25;
    private static final double HORIZON_YEARS = 15;
    private static final double EARLY = 0.1;
    private static final double MIDDLE = 0.5;
    private static final double LATE = 0.9;

    /** 1 − 1/√1.6: the variance behind the days was widened 1.6 times. */
    private static final double NARROWER = 1 - 1 / Math.sqrt(1.6);

    /** The same where the middle lies beyond fifteen years. */
    private static final double UNDATED = 1.15;

    private final LocalDate asOf;
    private final double[] years = new double[5];
    /** Minus the logarithm of the share that is left. */
    private final double[] hazard = new double[5];

    private final @Nullable LifeLine life;
    private final double ageAtSurvey;
    private int knots;

    /**
     * @param chances of the jar, as of its last survey
     * @param life of its type, where one could be fitted
     */
    public JarFuture(JarChances chances, LocalDate sittingSince, @Nullable LifeLine life) {
        this.asOf = chances.asOf();
        this.life = life;
        this.ageAtSurvey = years(sittingSince, asOf);
        knot(0, chances.beyondLimit());
        knot(1, 1 - (1 - chances.beyondLimit()) * (1 - chances.withinYear()));
        dates(chances);
        if (life == null && chances.early() == null) {
            knot(HORIZON_YEARS, EARLY);
        }
    }

    /** The range of days is said wider than it is believed, so that it holds: for counting, the widening is undone. */
    private void dates(JarChances chances) {
        double early = years(chances.early());
        double middle = years(chances.middle());
        double late = years(chances.late());
        knot(Double.isNaN(middle) ? early * UNDATED : early + NARROWER * (middle - early), EARLY);
        knot(middle, MIDDLE);
        knot(late - NARROWER * (late - middle), LATE);
    }

    private double years(@Nullable LocalDate day) {
        return day == null ? Double.NaN : years(asOf, day);
    }

    /** Left out when there is no such day, or it contradicts what was said before. */
    private void knot(double at, double chance) {
        double left = -Math.log(Math.max(1e-6, 1 - chance));
        if (knots == 0 || (at > years[knots - 1] && left >= hazard[knots - 1])) {
            years[knots] = at;
            hazard[knots] = left;
            knots++;
        }
    }

    private static double years(LocalDate from, LocalDate until) {
        return ChronoUnit.DAYS.between(from, until) / DAYS_PER_YEAR;
    }

    /** Chance that it is past its limit on that day; as of its survey for earlier days. */
    public double past(LocalDate day) {
        double at = years(asOf, day);
        if (at <= 0) {
            return -Math.expm1(-hazard[0]);
        }
        for (int k = 1; k < knots; k++) {
            if (at <= years[k]) {
                double share = (at - years[k - 1]) / (years[k] - years[k - 1]);
                return -Math.expm1(-(hazard[k - 1] + share * (hazard[k] - hazard[k - 1])));
            }
        }
        return -Math.expm1(-(hazard[knots - 1] + beyondLast(at)));
    }

    private double beyondLast(double at) {
        double last = years[knots - 1];
        if (life != null) {
            return life.hazardBetween(ageAtSurvey + last, ageAtSurvey + at);
        }
        double rate = (hazard[knots - 1] - hazard[knots - 2]) / (last - years[knots - 2]);
        return rate * (at - last);
    }
}
