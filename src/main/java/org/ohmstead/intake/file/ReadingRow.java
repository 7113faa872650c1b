package org.ohmstead.intake.file;

/**
 * One row of readings. Values not given are NaN.
 *
 * @param line of the file
 * @param position 0 for the positive terminal link's row, 1 at the positive end
 * @param ohmic in milliohms, or siemens for conductance
 * @param linkMicroohms one per strap column of the sheet
 */
public record ReadingRow(
        int line, int position, double ohmic, double volts, double celsius, double gravity, double[] linkMicroohms) {

    /** Whether any of the jar's own columns is filled. */
    public boolean hasJarValue() {
        return !(Double.isNaN(ohmic) && Double.isNaN(volts) && Double.isNaN(celsius) && Double.isNaN(gravity));
    }
}
