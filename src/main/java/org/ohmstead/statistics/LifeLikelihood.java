package org.ohmstead.statistics;

import org.hipparchus.analysis.differentiation.DSFactory;
import org.hipparchus.analysis.differentiation.DerivativeStructure;
import org.hipparchus.util.FastMath;

/**
 * The log-likelihood of censored lifetimes under ln t = x'β + σ·z, with its gradient and Hessian in (β, ln σ).
 */
final class LifeLikelihood {

    /** Two variables, the location and ln σ, to the second order. */
    private static final DSFactory FACTORY = new DSFactory(2, 2);

    private final LifeLaw law;
    private final Lifetimes times;
    private final double[][] design;
    private final int width;

    LifeLikelihood(LifeLaw law, Lifetimes times, double[][] design) {
        this.law = law;
        this.times = times;
        this.design = design;
        this.width = design.length == 0 ? 0 : design[0].length;
    }

    Point at(double[] parameters) {
        Point sum = new Point(0, new double[width + 1], new double[width + 1][width + 1]);
        double value = 0;
        for (int i = 0; i < times.size(); i++) {
            if (times.counts()[i] > 0) {
                DerivativeStructure one = contribution(i, parameters).multiply(times.counts()[i]);
                value += one.getValue();
                add(one, design[i], sum);
            }
        }
        return new Point(value, sum.gradient(), sum.hessian());
    }

    private DerivativeStructure contribution(int i, double[] parameters) {
        double location = 0;
        for (int j = 0; j < width; j++) {
            location += design[i][j] * parameters[j];
        }
        DerivativeStructure mu = FACTORY.variable(0, location);
        DerivativeStructure logSigma = FACTORY.variable(1, parameters[width]);
        if (times.exact(i)) {
            double logTime = FastMath.log(times.lower()[i]);
            return law.logDensity(standardise(logTime, mu, logSigma))
                    .subtract(logSigma)
                    .subtract(logTime);
        }
        return censored(i, mu, logSigma);
    }

    private DerivativeStructure censored(int i, DerivativeStructure mu, DerivativeStructure logSigma) {
        boolean fromBirth = times.lower()[i] == 0;
        DerivativeStructure alive = fromBirth
                ? FACTORY.constant(0)
                : law.logSurvival(standardise(FastMath.log(times.lower()[i]), mu, logSigma));
        if (times.alive(i)) {
            return alive;
        }
        DerivativeStructure later = law.logSurvival(standardise(FastMath.log(times.upper()[i]), mu, logSigma));
        return alive.add(later.subtract(alive).expm1().negate().log());
    }

    private static DerivativeStructure standardise(
            double logTime, DerivativeStructure mu, DerivativeStructure logSigma) {
        return mu.negate().add(logTime).multiply(logSigma.negate().exp());
    }

    /** Adds one unit's derivatives by the chain rule: d/dβ = x·d/dμ. */
    private void add(DerivativeStructure one, double[] x, Point sum) {
        for (int j = 0; j <= width; j++) {
            sum.gradient()[j] +=
                    factor(x, j) * (j < width ? one.getPartialDerivative(1, 0) : one.getPartialDerivative(0, 1));
            for (int k = 0; k <= width; k++) {
                int scales = (j < width ? 0 : 1) + (k < width ? 0 : 1);
                sum.hessian()[j][k] += factor(x, j) * factor(x, k) * one.getPartialDerivative(2 - scales, scales);
            }
        }
    }

    private double factor(double[] x, int j) {
        return j < width ? x[j] : 1;
    }

    /** The log-likelihood at a place, with its slope and curvature there. */
    record Point(double value, double[] gradient, double[][] hessian) {}
}
