package org.ohmstead.assessment.model.estate;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.statistics.Interval;
import org.ohmstead.statistics.LifeLaw;
import org.ohmstead.statistics.LifeRegression;
import org.ohmstead.statistics.Lifetimes;

/**
 * A Weibull law of life with 95 % intervals.
 *
 * @param scale age by which 63 % have failed, years
 * @param shape above 1 when the risk grows with age
 * @param tenth age by which one in ten has failed, years
 * @param half age by which one in two has failed, years
 * @param curve share still in service from new to somewhat beyond the oldest jar
 */
public record WeibullLife(Figure scale, Figure shape, Figure tenth, Figure half, List<Age> curve) {

    private static final int POINTS = 24;
    private static final double AHEAD = 1.25;

    public WeibullLife {
        curve = List.copyOf(curve);
    }

    /** Share still in service at an age, with its interval. */
    public record Age(double years, double inService, double low, double high) {}

    /** A value with its interval. */
    public record Figure(double value, double low, double high) {

        static Figure of(double value, Interval range) {
            return new Figure(value, range.lower(), range.upper());
        }
    }

    private static final double SHARE_AT_SCALE = -Math.expm1(-1);

    /** @return null when the failures determine no law, such as all at one age */
    static @Nullable WeibullLife fit(double[] years, boolean[] failed, double[] counts) {
        LifeRegression fit = LifeRegression.fit(LifeLaw.WEIBULL, Lifetimes.rightCensored(years, failed, counts));
        if (!fit.determined()) {
            return null;
        }
        Interval sigma = fit.sigmaInterval(LifeCurve.LEVEL);
        WeibullLife life = new WeibullLife(
                quantile(fit, SHARE_AT_SCALE),
                new Figure(fit.shape(), 1 / sigma.upper(), 1 / sigma.lower()),
                quantile(fit, 0.1),
                quantile(fit, 0.5),
                curve(fit, AHEAD * Arrays.stream(years).max().orElse(0)));
        return Double.isFinite(life.half().high())
                        && Double.isFinite(life.shape().high())
                ? life
                : null;
    }

    private static Figure quantile(LifeRegression fit, double share) {
        return Figure.of(fit.quantile(share), fit.quantileInterval(share, LifeCurve.LEVEL));
    }

    public LifeLine line() {
        return new LifeLine(scale.value(), shape.value());
    }

    private static List<Age> curve(LifeRegression fit, double untilYears) {
        return IntStream.rangeClosed(0, POINTS)
                .mapToObj(i -> age(fit, untilYears * i / POINTS))
                .toList();
    }

    private static Age age(LifeRegression fit, double years) {
        if (!(years > 0)) {
            return new Age(0, 1, 1, 1);
        }
        Interval failed = fit.failedByInterval(years, LifeCurve.LEVEL);
        return new Age(years, 1 - fit.failedBy(years), 1 - failed.upper(), 1 - failed.lower());
    }
}
