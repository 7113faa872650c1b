package org.ohmstead.intake.forensics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;

/**
 * An invented string with a pattern of its own, surveyed several times, to see which slips of a walk are noticed. Ohmic
 * pattern 3-5 %, repeatability 1.2-2 % with heavy tails (a normal with 4 % of readings five times as wide); volts
 * scatter 8 mV between jars and repeat within 2.5 mV while each jar drifts 1.5 mV between surveys; straps differ by 8 %
 * and repeat within 4 %, a tier cable after every twentieth jar. Surveys have an error of their own of 2 %. All of it
 * invented; common practice, no source.
 */
public final class WalkedString {

    private static final int TIER = 20;

    private final SplittableRandom random;
    private final int jars;
    private final double repeatability;
    private final double[] ohmic;
    private final double[] volts;
    private final double[] links;

    public WalkedString(long seed, int jars) {
        this.random = new SplittableRandom(seed);
        this.jars = jars;
        double spread = 0.03 + 0.02 * random.nextDouble();
        this.repeatability = 0.012 + 0.008 * random.nextDouble();
        this.ohmic = scattered(jars, Math.log(0.41), spread);
        this.volts = scattered(jars, 2.25, 0.008);
        this.links = scattered(jars + 1, Math.log(20), 0.08);
        for (int k = TIER; k < jars; k += TIER) {
            links[k] += Math.log(6);
        }
        links[0] -= Math.log(2);
        links[jars] -= Math.log(2);
    }

    public List<List<Series>> history(int surveys) {
        List<List<Series>> history = new ArrayList<>();
        for (int s = 0; s < surveys; s++) {
            history.add(walked(Walk.inOrder(jars)));
        }
        return history;
    }

    /** One more survey, walked that way; each jar has drifted a little since. */
    public List<Series> walked(Walk walk) {
        return walked(walk, 1);
    }

    /** The same, with so many times the usual noise in its ohmic values. */
    public List<Series> walked(Walk walk, double noisier) {
        drift();
        double level = 0.02 * random.nextGaussian();
        double[] ohmicRead = read(jars, i -> walk.jarOf(i + 1) - 1, ohmic, level, noisier * repeatability);
        double[] voltsRead = read(jars, i -> walk.jarOf(i + 1) - 1, volts, 0.01 * random.nextGaussian(), 0.0025);
        double[] linksRead = read(jars + 1, walk::linkOf, links, level, 0.04);
        return List.of(
                Series.ofOhmicValues(exponentials(ohmicRead)),
                Series.ofVolts(voltsRead),
                Series.ofLinks(exponentials(linksRead)));
    }

    private void drift() {
        for (int j = 0; j < jars; j++) {
            ohmic[j] += 0.004 * random.nextGaussian();
            volts[j] += 0.0015 * random.nextGaussian();
        }
    }

    private double[] read(int count, IntUnaryOperator place, double[] truth, double level, double noise) {
        double[] read = new double[count];
        for (int i = 0; i < count; i++) {
            double wide = random.nextDouble() < 0.04 ? 5 : 1;
            read[i] = truth[place.applyAsInt(i)] + level + noise * wide * random.nextGaussian();
        }
        return read;
    }

    private double[] scattered(int count, double middle, double spread) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = middle + spread * random.nextGaussian();
        }
        return values;
    }

    private static double[] exponentials(double[] logarithms) {
        return Arrays.stream(logarithms).map(Math::exp).toArray();
    }
}
