package org.ohmstead.statistics;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.util.FastMath;

/** Newton's method on a life likelihood, with curvature made negative and steps halved until they climb. */
final class NewtonAscent {

    private static final int MOST_STEPS = 200;
    private static final int MOST_HALVINGS = 40;
    private static final double LONGEST_STEP = 2;
    private static final double SETTLED = 1e-10;

    /** A ln σ this far out means that the likelihood climbs for ever. */
    private static final double RUNAWAY = 12;

    private final LifeLikelihood likelihood;
    private double[] place;
    private LifeLikelihood.Point point;

    private NewtonAscent(LifeLikelihood likelihood, double[] start) {
        this.likelihood = likelihood;
        this.place = start;
        this.point = likelihood.at(start);
    }

    static LifeRegression of(LifeLaw law, Lifetimes times, double[][] design) {
        int parameters = 1 + (design.length == 0 ? 0 : design[0].length);
        double[] start = start(times, design);
        if (!boundedOnBothSides(times) || Double.isNaN(Arrays.stream(start).sum())) {
            return undetermined(law, parameters);
        }
        NewtonAscent ascent = new NewtonAscent(new LifeLikelihood(law, times, design), start);
        return ascent.climbs() ? ascent.result(law) : undetermined(law, parameters);
    }

    /** Without a death lifetimes could be endless; without a time lived through they could be nothing. */
    private static boolean boundedOnBothSides(Lifetimes times) {
        boolean died = false;
        boolean lived = false;
        for (int i = 0; i < times.size(); i++) {
            died |= times.counts()[i] > 0 && !times.alive(i);
            lived |= times.counts()[i] > 0 && times.lower()[i] > 0;
        }
        return died && lived;
    }

    /** Least squares on a time inside each range. */
    private static double[] start(Lifetimes times, double[][] design) {
        double[] logs = new double[times.size()];
        Arrays.setAll(logs, i -> FastMath.log(inside(times.lower()[i], times.upper()[i])));
        LeastSquares line = LeastSquares.weighted(design, logs, times.counts());
        double[] start = Arrays.copyOf(line.coefficients(), line.coefficients().length + 1);
        start[start.length - 1] = line.residualDeviation() > 0 ? FastMath.log(line.residualDeviation()) : -1;
        return start;
    }

    private static double inside(double lower, double upper) {
        return Double.isInfinite(upper) ? lower : (lower + upper) / 2;
    }

    /** Whether a settled maximum was reached. */
    private boolean climbs() {
        for (int step = 0; step < MOST_STEPS && Double.isFinite(point.value()); step++) {
            double[] direction = direction();
            double gain = new ArrayRealVector(point.gradient()).dotProduct(new ArrayRealVector(direction));
            if (gain < SETTLED * SETTLED * (1 + Math.abs(point.value()))) {
                return curvesDown();
            }
            if (!advance(direction) || Math.abs(place[place.length - 1]) > RUNAWAY) {
                return gain < SETTLED && curvesDown();
            }
        }
        return false;
    }

    private double[] direction() {
        EigenDecompositionSymmetric eigen = new EigenDecompositionSymmetric(negativeHessian());
        ArrayRealVector gradient = new ArrayRealVector(point.gradient());
        double[] direction = new double[place.length];
        for (int i = 0; i < direction.length; i++) {
            ArrayRealVector axis = new ArrayRealVector(eigen.getEigenvector(i));
            double curvature = Math.max(Math.abs(eigen.getEigenvalue(i)), 1e-12);
            double along = gradient.dotProduct(axis) / curvature;
            for (int j = 0; j < direction.length; j++) {
                direction[j] += along * axis.getEntry(j);
            }
        }
        double longest = Arrays.stream(direction).map(Math::abs).max().orElse(0);
        double cut = Math.min(1, LONGEST_STEP / Math.max(longest, 1e-300));
        return Arrays.stream(direction).map(d -> d * cut).toArray();
    }

    private boolean advance(double[] direction) {
        double share = 1;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double[] next = place.clone();
            for (int j = 0; j < next.length; j++) {
                next[j] += share * direction[j];
            }
            LifeLikelihood.Point there = likelihood.at(next);
            if (there.value() > point.value()) {
                place = next;
                point = there;
                return true;
            }
            share /= 2;
        }
        return false;
    }

    private boolean curvesDown() {
        double[] curvatures = new EigenDecompositionSymmetric(negativeHessian()).getEigenvalues();
        double flattest = Arrays.stream(curvatures).min().orElse(0);
        double steepest = Arrays.stream(curvatures).max().orElse(0);
        return flattest > 1e-9 * steepest;
    }

    private RealMatrix negativeHessian() {
        return new Array2DRowRealMatrix(point.hessian()).scalarMultiply(-1);
    }

    /** Turns (β, ln σ) into (β, σ): the covariance's last row and column times σ. */
    private LifeRegression result(LifeLaw law) {
        int last = place.length - 1;
        double sigma = FastMath.exp(place[last]);
        double[][] covariance = new EigenDecompositionSymmetric(negativeHessian())
                .getSolver()
                .getInverse()
                .getData();
        for (int i = 0; i <= last; i++) {
            covariance[i][last] *= sigma;
            covariance[last][i] *= sigma;
        }
        return new LifeRegression(law, Arrays.copyOf(place, last), sigma, point.value(), covariance);
    }

    private static LifeRegression undetermined(LifeLaw law, int parameters) {
        double[] unknown = new double[parameters];
        Arrays.fill(unknown, Double.NaN);
        double[][] covariance = new double[parameters][];
        Arrays.setAll(covariance, i -> unknown.clone());
        return new LifeRegression(law, Arrays.copyOf(unknown, parameters - 1), Double.NaN, Double.NaN, covariance);
    }
}
