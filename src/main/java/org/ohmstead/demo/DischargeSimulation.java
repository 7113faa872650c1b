package org.ohmstead.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.ohmstead.capacity.model.DischargeRecord;
import org.ohmstead.fleet.csv.JarTypeEntry;

/** A discharge of a string at constant current, as a recorder would have written it. */
final class DischargeSimulation {

    private static final double[] FIRST_MINUTES = {1, 2, 3, 4, 6, 8, 11, 15, 20};
    private static final int ROWS_OF_RATED_TIME = 36;
    private static final double LONGEST = 1.3;

    /** The dip of a lead-acid cell's voltage in the first minutes, volts, and when it is deepest. */
    private static final double DIP = 0.04;

    private static final double DIP_MINUTES = 3;

    private final JarTypeEntry type;
    private final CapacityRating rating;
    private final double celsius;
    private final double[] minutesOfJars;
    private final double[] voltsMore;
    private final Random random;

    /**
     * @param shares that the jars hold of rated capacity
     * @param voltsMore that a jar shows above its like, less when a cell is shorted
     */
    DischargeSimulation(JarTypeEntry type, double celsius, double[] shares, double[] voltsMore, long seed) {
        this.type = type;
        this.rating = CapacityRating.of(type);
        this.celsius = celsius;
        this.minutesOfJars = Arrays.stream(shares)
                .map(share -> share * rating.minutesAt(celsius))
                .toArray();
        this.voltsMore = voltsMore;
        this.random = new Random(seed);
    }

    /** Until the string comes down to its end voltage, or to the rated time. */
    DischargeRecord record(boolean untilRatedTime) {
        double rated = rating.ratings().minutes();
        double last = untilRatedTime ? rating.minutesAt(celsius) + FIRST_MINUTES[0] : LONGEST * rated;
        double endVolts = rating.ratings().endVoltsPerCell() * type.cellsPerJar() * minutesOfJars.length;
        List<double[]> rows = new ArrayList<>();
        List<Double> minutes = new ArrayList<>();
        rows.add(onFloat());
        minutes.add(0.0);
        double at = 0;
        while (at < last && (rows.size() == 1 || sum(rows.get(rows.size() - 1)) > endVolts)) {
            at = rows.size() <= FIRST_MINUTES.length
                    ? FIRST_MINUTES[rows.size() - 1]
                    : Math.min(last, at + rated / ROWS_OF_RATED_TIME);
            rows.add(jarsAt(at - FIRST_MINUTES[0]));
            minutes.add(Rounded.to(at, 1));
        }
        double[][] jars = rows.toArray(double[][]::new);
        return new DischargeRecord(
                minutes.stream().mapToDouble(Double::doubleValue).toArray(),
                amps(jars.length),
                Arrays.stream(jars).mapToDouble(row -> Rounded.to(sum(row), 2)).toArray(),
                jars);
    }

    /** The record in the form that the service reads. */
    static String csv(DischargeRecord all) {
        StringBuilder text = new StringBuilder("minutes,amps,string_volts");
        for (int position = 1; position <= all.positions(); position++) {
            text.append(",jar_").append(position);
        }
        text.append('\n');
        for (int row = 0; row < all.rows(); row++) {
            text.append(String.format(
                    Locale.ROOT, "%.1f,%.1f,%.2f", all.minutes()[row], all.amps()[row], all.stringVolts()[row]));
            for (double volts : all.jarVolts()[row]) {
                text.append(',').append(volts);
            }
            text.append('\n');
        }
        return text.toString();
    }

    private double[] amps(int rows) {
        double asked = rating.ampsAt(celsius);
        double[] amps = new double[rows];
        for (int row = 1; row < rows; row++) {
            amps[row] = Rounded.to(asked * (1 + 0.002 * random.nextGaussian()), 1);
        }
        return amps;
    }

    private double[] onFloat() {
        double perCell = Objects.requireNonNull(type.floatVoltsPerCell());
        return shown(Arrays.stream(minutesOfJars).map(any -> perCell).toArray());
    }

    private double[] jarsAt(double minute) {
        return shown(Arrays.stream(minutesOfJars)
                .map(own -> cellVolts(minute, minute / own))
                .toArray());
    }

    /** Falls slowly for most of its own time, steeply at its end; a block's better cells hold it up a little. */
    private double cellVolts(double minute, double share) {
        boolean lead = type.technology().isLeadAcid();
        double start = lead ? (rating.ratings().minutes() > 180 ? 2.05 : 1.99) : 1.30;
        double slope = lead ? 0.08 : 0.07;
        double drop = start - slope - rating.ratings().endVoltsPerCell();
        double dip = lead ? DIP * minute / DIP_MINUTES * Math.exp(1 - minute / DIP_MINUTES) : 0;
        double least = type.cellsPerJar() == 1 ? -0.25 : 1.35;
        return Math.max(least, start - slope * share - drop * Math.pow(share, 7) - dip);
    }

    private double[] shown(double[] perCell) {
        int decimals = type.cellsPerJar() == 1 ? 3 : 2;
        double[] volts = new double[perCell.length];
        for (int i = 0; i < volts.length; i++) {
            volts[i] = Rounded.to(
                    (perCell[i] + 0.0015 * random.nextGaussian()) * type.cellsPerJar() + voltsMore[i], decimals);
        }
        return volts;
    }

    private static double sum(double[] values) {
        return DoubleStream.of(values).sum();
    }
}
