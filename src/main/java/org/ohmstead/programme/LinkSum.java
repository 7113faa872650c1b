package org.ohmstead.programme;

/** A link's straps in parallel, as one resistance. */
final class LinkSum {

    private LinkSum() {}

    /** @return NaN when nothing was read; straps that were not read are left out */
    static double of(double[][] linkMicroohms, int ordinal) {
        if (ordinal >= linkMicroohms.length) {
            return Double.NaN;
        }
        double conductance = 0;
        for (double strap : linkMicroohms[ordinal]) {
            conductance += Double.isNaN(strap) || strap <= 0 ? 0 : 1 / strap;
        }
        return conductance == 0 ? Double.NaN : 1 / conductance;
    }
}
