package org.ohmstead.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A scale with round ticks that covers the given values. Nothing measured gives the range 0 to 1. */
record Axis(double low, double high, double step) {

    /** @param ticks about how many are wanted */
    static Axis covering(double[] values, int ticks) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (Double.isFinite(value)) {
                low = Math.min(low, value);
                high = Math.max(high, value);
            }
        }
        return low > high ? new Axis(0, 1, 1) : rounded(low, high, ticks);
    }

    private static Axis rounded(double low, double high, int ticks) {
        double span = high - low;
        if (span <= Math.abs(high) * 1e-9) {
            span = high == 0 ? 1 : Math.abs(high) * 0.2;
        }
        double step = roundStep(span / ticks);
        double middle = (low + high) / 2;
        double from = Math.floor(Math.min(low, middle - span / 2) / step) * step;
        double until = Math.ceil(Math.max(high, middle + span / 2) / step) * step;
        return new Axis(from, until, step);
    }

    private static double roundStep(double raw) {
        double power = Math.pow(10, Math.floor(Math.log10(raw)));
        double lead = raw / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }

    /** 0 at the low end, 1 at the high end. */
    double share(double value) {
        return (value - low) / (high - low);
    }

    List<Double> ticks() {
        List<Double> ticks = new ArrayList<>();
        long count = Math.min(50, Math.round((high - low) / step));
        for (int i = 0; i <= count; i++) {
            ticks.add(low + i * step);
        }
        return ticks;
    }

    /** As many decimals as the step needs. */
    String label(double tick) {
        int decimals = (int) Math.max(0, Math.min(6, -Math.floor(Math.log10(step) + 1e-9)));
        String text = String.format(Locale.ROOT, "%." + decimals + "f", tick);
        return text.replaceFirst("^-(?=0(\\.0*)?$)", "").replace('-', '−');
    }
}
