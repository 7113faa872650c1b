package org.ohmstead.demo;

import java.time.LocalDate;
import java.util.Random;

/**
 * What the jars of a string truly hold, as a share of rated capacity. What drives the ohmic values up takes capacity along;
 * some of it fades unseen.
 */
final class CapacityTruth {

    private static final double WHEN_NEW = 1.04;
    private static final double SPREAD = 0.006;
    /** Share of capacity that goes with a rise of the ohmic value by its whole. */
    private static final double LOST_PER_RISE = 0.75;

    private static final double LOST_PER_FALL = 2;
    private static final double HIDDEN_YEARS = 5;

    private final DemoString string;
    private final CapacityStory story;
    private final JarSimulation jars;
    private final LocalDate today;

    CapacityTruth(DemoString string, CapacityStory story, LocalDate today) {
        this.string = string;
        this.story = story;
        this.jars = new JarSimulation(string, Units.of(string), today);
        this.today = today;
    }

    double[] shares(LocalDate on) {
        Random random = new Random(string.seed() ^ 0xCA9AL);
        double age = string.ageYears(on) / string.ageYears(today);
        double[] rise = jars.rise(on);
        double[] shares = new double[rise.length];
        for (int i = 0; i < shares.length; i++) {
            double made = WHEN_NEW + SPREAD * Math.max(-2, Math.min(2, random.nextGaussian()));
            double lost = rise[i] < 0 ? -LOST_PER_FALL * rise[i] : LOST_PER_RISE * rise[i];
            shares[i] = Math.max(0.1, made - lost - story.fade() * age * age - hidden(i + 1, on));
        }
        return shares;
    }

    private double hidden(int position, LocalDate on) {
        double yearsAgo = (today.toEpochDay() - on.toEpochDay()) / 365.25;
        return story.hidden().getOrDefault(position, 0.0) * Math.max(0, 1 - yearsAgo / HIDDEN_YEARS);
    }
}
