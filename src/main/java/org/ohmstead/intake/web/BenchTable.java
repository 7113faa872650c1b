package org.ohmstead.intake.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.ohmstead.intake.BenchLine;

/** The file's readings beside what was expected, as text. */
final class BenchTable {

    /** From here on a jar's or link's distance from its own pattern is worth a look. Our choice. */
    private static final double ODD_OHMIC_PERCENT = 5;

    private static final double ODD_LINK_PERCENT = 25;
    private static final int HUNDRED = 100;

    private BenchTable() {}

    /** Numbers as text; empty where nothing was measured or nothing is known. */
    record Line(
            String place,
            String line,
            String ohmic,
            String ohmicExpected,
            String ohmicOff,
            boolean ohmicOdd,
            String volts,
            String link,
            String linkExpected,
            String linkOff,
            boolean linkOdd) {}

    static List<Line> of(List<BenchLine> lines) {
        return lines.stream().map(BenchTable::line).toList();
    }

    private static Line line(BenchLine at) {
        double ohmicOff = off(at.ohmic(), at.ohmicExpected());
        double linkOff = off(at.linkMicroohms(), at.linkExpected());
        return new Line(
                at.position() == 0 ? "+ terminal" : "" + at.position(),
                at.line() == 0 ? "" : "" + at.line(),
                ohmic(at.ohmic()),
                ohmic(at.ohmicExpected()),
                signed(ohmicOff),
                Math.abs(ohmicOff) > ODD_OHMIC_PERCENT,
                ohmic(at.volts()),
                link(at.linkMicroohms()),
                link(at.linkExpected()),
                signed(linkOff),
                Math.abs(linkOff) > ODD_LINK_PERCENT);
    }

    static String ohmic(@Nullable Double value) {
        return text(value, "%.3f");
    }

    static String link(@Nullable Double value) {
        return text(value, "%.1f");
    }

    static String percent(@Nullable Double percent) {
        return text(percent, "%.1f %%");
    }

    private static double off(@Nullable Double now, @Nullable Double expected) {
        return now == null || expected == null || expected == 0 ? Double.NaN : HUNDRED * (now / expected - 1);
    }

    private static String signed(double percent) {
        String text = Double.isNaN(percent) ? "" : String.format(Locale.ROOT, "%+.1f %%", percent);
        return text.replace('-', '−').replace("−0.0 ", "0.0 ").replace("+0.0 ", "0.0 ");
    }

    private static String text(@Nullable Double value, String format) {
        return value == null ? "" : String.format(Locale.ROOT, format, value).replace('-', '−');
    }
}
