package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.optim.InitialGuess;
import org.hipparchus.optim.MaxEval;
import org.hipparchus.optim.SimpleValueChecker;
import org.hipparchus.optim.nonlinear.scalar.GoalType;
import org.hipparchus.optim.nonlinear.scalar.ObjectiveFunction;
import org.hipparchus.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.hipparchus.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * Finds the θ of least deviance by simplex searches, each started where the last one ended, and puts standard deviations that
 * may as well be 0 at 0. The deviance is even in each standard deviation, so no bounds are needed.
 */
final class MixedSearch {

    private static final int MOST_RESTARTS = 8;
    private static final double SETTLED = 1e-8;
    private static final double ROUNDING = 1e-12;
    private static final double NEAR_NOUGHT = 0.02;

    private final ProfiledDeviance deviance;

    MixedSearch(ProfiledDeviance deviance) {
        this.deviance = deviance;
    }

    MixedFit best() {
        double[] theta = new double[deviance.parameters()];
        Arrays.setAll(theta, i -> deviance.isDeviation(i) ? 1 : 0);
        double before = Double.POSITIVE_INFINITY;
        for (int i = 0; i < MOST_RESTARTS; i++) {
            theta = descend(theta);
            double now = deviance.at(theta);
            if (!(now < before - SETTLED - ROUNDING * Math.abs(now))) {
                break;
            }
            before = now;
        }
        return fit(atBoundary(theta));
    }

    private double[] descend(double[] start) {
        double[] steps = new double[start.length];
        Arrays.setAll(steps, i -> 0.05 + 0.2 * Math.abs(start[i]));
        return new SimplexOptimizer(new SimpleValueChecker(1e-13, 1e-10))
                .optimize(
                        new MaxEval(20_000),
                        new ObjectiveFunction(deviance::at),
                        GoalType.MINIMIZE,
                        new InitialGuess(start),
                        new NelderMeadSimplex(steps))
                .getPoint();
    }

    private double[] atBoundary(double[] theta) {
        double[] now = theta.clone();
        for (int i = 0; i < now.length; i++) {
            double[] without = now.clone();
            without[i] = 0;
            boolean small = deviance.isDeviation(i) && Math.abs(now[i]) < NEAR_NOUGHT;
            if (small && deviance.at(without) <= deviance.at(now) + SETTLED) {
                now = without;
            }
        }
        return now;
    }

    private MixedFit fit(double[] theta) {
        MixedProducts sums = deviance.sums();
        MixedEquations equations = deviance.equations(theta);
        double variance = equations.perfect() ? 0 : equations.residualVariance();
        double[] solution = equations.solution();
        double[][] effects = new double[sums.zz.length][];
        Arrays.setAll(effects, g -> equations.groupEffect(g, solution));
        double[] shared = new double[sums.occasions];
        Arrays.setAll(shared, k -> equations.occasionFactor() * solution[k]);
        double[] coefficients = new double[sums.fixedColumns];
        Arrays.setAll(coefficients, j -> sums.plain[j] + solution[sums.occasions + j]);
        return new MixedFit(
                coefficients,
                times(equations.fixedInverse(), variance),
                times(equations.relativeCovariance(), equations.residualVariance()),
                equations.occasionFactor() * equations.occasionFactor() * equations.residualVariance(),
                variance,
                equations.perfect() ? Double.POSITIVE_INFINITY : -equations.deviance() / 2,
                effects,
                shared,
                onBoundary(theta));
    }

    private boolean onBoundary(double[] theta) {
        boolean found = false;
        for (int i = 0; i < theta.length; i++) {
            found |= deviance.isDeviation(i) && theta[i] == 0;
        }
        return found;
    }

    private static double[][] times(double[][] matrix, double factor) {
        double[][] product = new double[matrix.length][];
        Arrays.setAll(
                product, i -> Arrays.stream(matrix[i]).map(x -> x * factor).toArray());
        return product;
    }
}
