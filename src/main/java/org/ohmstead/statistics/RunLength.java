package org.ohmstead.statistics;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/**
 * How many standard normal readings a control chart takes on average to signal, by the integral equation of Page (Biometrika
 * 41, 1954) and Crowder (Technometrics 29, 1987), solved at Gauss-Legendre nodes; charts start at 0.
 * A run too long to tell from an endless one in double precision, beyond some 10¹² readings, is infinite.
 */
public final class RunLength {

    private static final int NODES = 64;
    private static final double LONGEST = 1e12;
    private static final NormalDistribution STANDARD = new NormalDistribution();

    private RunLength() {}

    /**
     * An upper cumulative sum S = max(0, S + x - allowance), signalling above the limit.
     *
     * @param allowance k, in standard deviations
     * @param limit h, in standard deviations
     * @param shift of the readings' mean, in standard deviations
     */
    public static double cusum(double allowance, double limit, double shift) {
        GaussIntegrator nodes = nodes(0, limit);
        double drift = shift - allowance;
        RealMatrix equations = MatrixUtils.createRealIdentityMatrix(NODES + 1);
        for (int i = 0; i <= NODES; i++) {
            double from = i == NODES ? 0 : nodes.getPoint(i);
            equations.addToEntry(i, NODES, -STANDARD.cumulativeProbability(-from - drift));
            for (int j = 0; j < NODES; j++) {
                double step = nodes.getPoint(j) - from - drift;
                equations.addToEntry(i, j, -nodes.getWeight(j) * STANDARD.density(step));
            }
        }
        return resolved(solve(equations)[NODES]);
    }

    /** An upper and a lower cumulative sum together: 1/ARL is the sum of both (Lucas and Crosier, Technometrics 24, 1982). */
    public static double twoSidedCusum(double allowance, double limit, double shift) {
        return 1 / (1 / cusum(allowance, limit, shift) + 1 / cusum(allowance, limit, -shift));
    }

    /**
     * A moving average z = (1 - λ)z + λx, signalling beyond L of its standard deviations in the long run: Lucas and Saccucci,
     * Technometrics 32 (1990) 1-12.
     *
     * @param weight λ, above 0 and at most 1
     * @param limit L
     * @param shift of the readings' mean, in standard deviations
     */
    public static double ewma(double weight, double limit, double shift) {
        double reach = limit * Math.sqrt(weight / (2 - weight));
        GaussIntegrator nodes = nodes(-reach, reach);
        DoubleBinaryOperator kernel =
                (from, to) -> STANDARD.density((to - (1 - weight) * from) / weight - shift) / weight;
        RealMatrix equations = MatrixUtils.createRealIdentityMatrix(NODES);
        for (int i = 0; i < NODES; i++) {
            for (int j = 0; j < NODES; j++) {
                double flow = kernel.applyAsDouble(nodes.getPoint(i), nodes.getPoint(j));
                equations.addToEntry(i, j, -nodes.getWeight(j) * flow);
            }
        }
        double[] lengths = solve(equations);
        double fromStart = 1;
        for (int j = 0; j < NODES; j++) {
            fromStart += nodes.getWeight(j) * kernel.applyAsDouble(0, nodes.getPoint(j)) * lengths[j];
        }
        return resolved(fromStart);
    }

    /** Beyond this the equations are singular to double precision. */
    private static double resolved(double length) {
        return length > 0 && length < LONGEST ? length : Double.POSITIVE_INFINITY;
    }

    private static GaussIntegrator nodes(double low, double high) {
        return new GaussIntegratorFactory().legendre(NODES, low, high);
    }

    /** Every run takes one reading and then what is left of it. */
    private static double[] solve(RealMatrix equations) {
        double[] ones = new double[equations.getRowDimension()];
        Arrays.fill(ones, 1);
        return new LUDecomposition(equations, Double.MIN_NORMAL)
                .getSolver()
                .solve(new ArrayRealVector(ones))
                .toArray();
    }
}
