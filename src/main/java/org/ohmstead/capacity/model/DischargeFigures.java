package org.ohmstead.capacity.model;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.ohmstead.kernel.Refused;

/**
 * What a discharge record comes to. Times count from the row in which current first flows; between rows everything is
 * taken to run straight.
 *
 * @param amps mean current, over time
 * @param minutes until the string reached its end voltage; until current stopped when it did not
 * @param stoppedEarly whether it did not
 * @param stringEndVolts at that time
 * @param jarEndVolts at that time, per position, NaN where not recorded
 * @param jarMinutes until each jar reached its own line, NaN where it did not
 * @param swingShare largest departure of the current from its mean, as a share
 */
public record DischargeFigures(
        double amps,
        double minutes,
        boolean stoppedEarly,
        double stringEndVolts,
        double[] jarEndVolts,
        double[] jarMinutes,
        double swingShare) {

    /**
     * @param endVolts of the whole string
     * @param jarLineVolts of a jar
     * @throws Refused when there is no discharge in the record
     */
    public static DischargeFigures of(DischargeRecord all, double endVolts, double jarLineVolts) {
        int first = firstWithCurrent(all);
        int last = lastWithCurrent(all);
        if (last <= first) {
            throw new Refused("Current flows in fewer than two rows of the record, so there is no discharge in it."
                    + " Check the column of amperes.");
        }
        double start = all.minutes()[first];
        Curve string = Curve.of(all.minutes(), all.stringVolts(), first, last);
        if (string.isEmpty() || string.firstValue() <= endVolts) {
            throw new Refused("The string's volts do not start above its end voltage of " + Words.plain(endVolts)
                    + " V. Check the column of string volts and the end voltage per cell.");
        }
        @Nullable Double reached = string.fallsTo(endVolts);
        double end = reached == null ? all.minutes()[last] : reached;
        Curve current = Curve.of(all.minutes(), all.amps(), first, last);
        double mean = current.mean(start, end);
        int jars = all.positions();
        double[] endOfJars = new double[jars];
        double[] minutesOfJars = new double[jars];
        for (int i = 0; i < jars; i++) {
            Curve jar = Curve.of(all.minutes(), all.jar(i), first, last);
            endOfJars[i] = jar.at(end);
            @Nullable Double own = jar.fallsTo(jarLineVolts);
            minutesOfJars[i] = own == null || own > end ? Double.NaN : own - start;
        }
        return new DischargeFigures(
                mean,
                end - start,
                reached == null,
                string.at(end),
                endOfJars,
                minutesOfJars,
                current.swing(start, end, mean));
    }

    static int firstWithCurrent(DischargeRecord all) {
        int row = 0;
        while (row < all.rows() && !flows(all, row)) {
            row++;
        }
        return row;
    }

    static int lastWithCurrent(DischargeRecord all) {
        int row = all.rows() - 1;
        while (row >= 0 && !flows(all, row)) {
            row--;
        }
        return row;
    }

    /** A trickle under a tenth of the largest current is the recorder's zero, not a discharge. */
    private static boolean flows(DischargeRecord all, int row) {
        double most = Arrays.stream(all.amps()).filter(Double::isFinite).max().orElse(0);
        return all.amps()[row] > most / 10;
    }
}
