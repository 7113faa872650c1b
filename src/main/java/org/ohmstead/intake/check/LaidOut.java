package org.ohmstead.intake.check;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.file.ReadingRow;

/**
 * A sheet's rows laid out along the string. Missing values are NaN.
 *
 * @param ohmic one per position (index 0 is position 1), like volts, celsius and gravity
 * @param linkMicroohms per link ordinal 0..N, then per strap
 * @param lines line of the file that each row 0..N stands on; 0 when it has none
 * @param doubled rows whose position stood before; the first one counts
 * @param foreign rows beyond the end of the string, but for the closing reading
 * @param closing the closing reading's row, if there was one
 */
public record LaidOut(
        double[] ohmic,
        double[] volts,
        double[] celsius,
        double[] gravity,
        double[][] linkMicroohms,
        int[] lines,
        List<ReadingRow> doubled,
        List<ReadingRow> foreign,
        @Nullable ReadingRow closing) {

    public int positions() {
        return ohmic.length;
    }

    /** Lays the rows out along a string with these straps per link, ordinals 0..N. */
    public static LaidOut of(List<ReadingRow> rows, int[] straps, Thresholds limits) {
        int positions = straps.length - 1;
        @Nullable ReadingRow[] placed = new ReadingRow[straps.length];
        List<ReadingRow> doubled = new ArrayList<>();
        List<ReadingRow> foreign = new ArrayList<>();
        for (ReadingRow row : rows) {
            if (row.position() > positions) {
                foreign.add(row);
            } else if (placed[row.position()] != null) {
                doubled.add(row);
            } else {
                placed[row.position()] = row;
            }
        }
        ReadingRow closing = Closing.find(placed, foreign, limits);
        foreign.remove(closing);
        return new Rows(placed, straps).laidOut(doubled, foreign, closing);
    }

    /** The rows of the string itself, with an empty one where the sheet has none. */
    private record Rows(@Nullable ReadingRow[] placed, int[] straps) {

        LaidOut laidOut(List<ReadingRow> doubled, List<ReadingRow> foreign, @Nullable ReadingRow closing) {
            int positions = straps.length - 1;
            double[][] links = new double[straps.length][];
            Arrays.setAll(links, k -> placed[k] == null || placed[k] == closing ? none(straps[k]) : link(placed[k], k));
            int[] lines = Arrays.stream(placed)
                    .mapToInt(row -> row == null ? 0 : row.line())
                    .toArray();
            double[] ohmic = none(positions);
            double[] volts = none(positions);
            double[] celsius = none(positions);
            double[] gravity = none(positions);
            for (int k = 1; k <= positions; k++) {
                ReadingRow row = placed[k];
                if (row != null) {
                    ohmic[k - 1] = row.ohmic();
                    volts[k - 1] = row.volts();
                    celsius[k - 1] = row.celsius();
                    gravity[k - 1] = row.gravity();
                }
            }
            return new LaidOut(ohmic, volts, celsius, gravity, links, lines, List.copyOf(doubled), foreign, closing);
        }

        /** As many straps as were read, and at least as many as are registered. */
        private double[] link(ReadingRow row, int ordinal) {
            double[] read = row.linkMicroohms();
            int count = read.length;
            while (count > straps[ordinal] && Double.isNaN(read[count - 1])) {
                count--;
            }
            double[] link = none(Math.max(count, straps[ordinal]));
            System.arraycopy(read, 0, link, 0, Math.min(read.length, link.length));
            return link;
        }

        private static double[] none(int count) {
            double[] none = new double[count];
            Arrays.fill(none, Double.NaN);
            return none;
        }
    }
}
