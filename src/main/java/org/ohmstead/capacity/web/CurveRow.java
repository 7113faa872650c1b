package org.ohmstead.capacity.web;

import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.ohmstead.capacity.model.DischargeCurve;

/** An instant of a discharge as a page lists it; a dash for what was not read. */
public record CurveRow(String minute, String amps, String stringVolts, List<String> jarVolts) {

    static List<CurveRow> of(DischargeCurve curve) {
        return IntStream.range(0, curve.minutes().length)
                .mapToObj(row -> new CurveRow(
                        shown(1, curve.minutes()[row]),
                        shown(1, curve.amps()[row]),
                        shown(2, curve.stringVolts()[row]),
                        curve.lowest().stream()
                                .map(jar -> shown(3, jar.volts()[row]))
                                .toList()))
                .toList();
    }

    private static String shown(int decimals, double value) {
        return Double.isNaN(value) ? "–" : String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
