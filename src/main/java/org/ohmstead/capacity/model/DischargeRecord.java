package org.ohmstead.capacity.model;

/**
 * What a recorder wrote during a discharge, row by row in order of time; NaN where a row left a cell empty.
 *
 * @param minutes since the record began, rising
 * @param jarVolts by row and position; no columns without jar voltages
 */
public record DischargeRecord(double[] minutes, double[] amps, double[] stringVolts, double[][] jarVolts) {

    public int rows() {
        return minutes.length;
    }

    /** 0 when jars were not recorded one by one. */
    public int positions() {
        return jarVolts.length == 0 ? 0 : jarVolts[0].length;
    }

    double[] jar(int index) {
        double[] column = new double[rows()];
        for (int row = 0; row < column.length; row++) {
            column[row] = jarVolts[row][index];
        }
        return column;
    }
}
