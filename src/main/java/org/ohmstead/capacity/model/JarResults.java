package org.ohmstead.capacity.model;

import static org.ohmstead.capacity.model.Words.fixed;
import static org.ohmstead.capacity.model.Words.percent;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Tells the weak jars of a tested string. A jar's line is the end voltage per cell times its cells.
 *
 * <p>In a sound string tested to its own end voltage about half of the jars end a little under the line: that alone is no
 * weakness. A jar is weak when it reached the line before 80 % of the rated time; or when, without a record of its own, it
 * ended under the line while the whole string held less than 80 %, or more than 0.05 V per cell under it. The 80 % are
 * the usual line of replacement (US Bureau of Reclamation FIST 3-6); the 0.05 V are common practice without a source.
 */
public final class JarResults {

    /** Percent of rated capacity under which a battery is replaced. */
    public static final double REPLACE_UNDER = 80;

    private static final double MARGIN_VOLTS_PER_CELL = 0.05;

    private final Ratings ratings;
    private final Capacity capacity;
    private final int cellsPerJar;
    private final double stringMinutes;

    /** @param stringMinutes how long the whole string was discharged */
    public JarResults(Ratings ratings, Capacity capacity, int cellsPerJar, double stringMinutes) {
        this.ratings = ratings;
        this.capacity = capacity;
        this.cellsPerJar = cellsPerJar;
        this.stringMinutes = stringMinutes;
    }

    /**
     * @param endVolts per position, NaN where not read
     * @param ownMinutes per position until it reached its line, NaN where it did not or is not known; empty without a record
     */
    public List<JarResult> of(double[] endVolts, double[] ownMinutes) {
        List<JarResult> results = new ArrayList<>();
        for (int i = 0; i < endVolts.length; i++) {
            results.add(result(i + 1, endVolts[i], i < ownMinutes.length ? ownMinutes[i] : Double.NaN));
        }
        return results;
    }

    public double lineVolts() {
        return ratings.endVoltsPerCell() * cellsPerJar;
    }

    private JarResult result(int position, double volts, double minutes) {
        // the temperature counts for the jar as it does for the string
        double own = capacity.percent() * minutes / stringMinutes;
        JarFinding finding = finding(volts, own);
        return new JarResult(
                position, orNull(volts), orNull(minutes), orNull(own), finding, reason(finding, volts, minutes, own));
    }

    private JarFinding finding(double volts, double own) {
        if (volts < 0) {
            return JarFinding.REVERSED;
        }
        if (Double.isFinite(own)) {
            return own < REPLACE_UNDER ? JarFinding.WEAK : JarFinding.SOUND;
        }
        if (Double.isNaN(volts)) {
            return JarFinding.UNREAD;
        }
        boolean low = capacity.percent() < REPLACE_UNDER;
        if (volts < lineVolts()) {
            return low || volts < lineVolts() - MARGIN_VOLTS_PER_CELL * cellsPerJar
                    ? JarFinding.WEAK
                    : JarFinding.SOUND;
        }
        return low ? JarFinding.UNDECIDED : JarFinding.SOUND;
    }

    private String reason(JarFinding finding, double volts, double minutes, double own) {
        String line = fixed(2, lineVolts()) + " V";
        if (finding == JarFinding.UNREAD) {
            return "Not read at the end.";
        }
        if (finding == JarFinding.REVERSED) {
            return "Ended at " + fixed(3, volts) + " V: the other jars drove current through it backwards.";
        }
        if (Double.isFinite(own)) {
            return "Reached " + line + " after " + fixed(1, minutes) + " min, " + percent(own) + " of rated.";
        }
        String ended = "Ended at " + fixed(3, volts) + " V, " + fixed(3, Math.abs(volts - lineVolts())) + " V "
                + (volts < lineVolts() ? "under" : "over") + " its " + line;
        return finding == JarFinding.UNDECIDED
                ? ended + "; the test ended before its own capacity did."
                : finding == JarFinding.SOUND && volts < lineVolts() ? ended + ", with the string." : ended + ".";
    }

    private static @Nullable Double orNull(double value) {
        return Double.isFinite(value) ? value : null;
    }
}
