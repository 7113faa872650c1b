package org.ohmstead.intake.web;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.ohmstead.ledger.Readings;
import org.ohmstead.ledger.SurveyRecord;

/** A survey's readings position by position, beside the same jar's and link's readings of the survey before. */
final class SurveyTable {

    private static final double NONE = Double.NaN;

    private SurveyTable() {}

    /** Numbers as text; empty where nothing was measured. */
    record Line(
            int position,
            String ohmic,
            String ohmicBefore,
            String ohmicChange,
            String volts,
            String celsius,
            String link,
            String linkBefore,
            String linkChange) {}

    static List<Line> of(SurveyRecord survey, @Nullable SurveyRecord before) {
        Readings now = survey.readings();
        boolean comparable =
                before != null && before.facts().ohmicKind() == survey.facts().ohmicKind();
        return IntStream.rangeClosed(0, now.positions())
                .mapToObj(position -> line(position, now, before == null ? null : before.readings(), comparable))
                .toList();
    }

    private static Line line(int position, Readings now, @Nullable Readings then, boolean comparable) {
        double ohmic = at(now.ohmic(), position - 1);
        double ohmicThen = then == null || !comparable ? NONE : at(then.ohmic(), position - 1);
        double[] link = now.linkMicroohms()[position];
        double[] linkThen = then == null || position >= then.linkMicroohms().length
                ? new double[0]
                : then.linkMicroohms()[position];
        return new Line(
                position,
                text(ohmic, "%.3f"),
                text(ohmicThen, "%.3f"),
                change(ohmic, ohmicThen),
                text(at(now.volts(), position - 1), "%.3f"),
                text(at(now.celsius(), position - 1), "%.1f"),
                straps(link),
                straps(linkThen),
                change(mean(link), mean(linkThen)));
    }

    private static double at(double[] values, int index) {
        return index < 0 || index >= values.length ? NONE : values[index];
    }

    private static String straps(double[] straps) {
        return Arrays.stream(straps)
                .filter(value -> !Double.isNaN(value))
                .mapToObj(value -> text(value, "%.1f"))
                .collect(Collectors.joining(" ∥ "));
    }

    private static double mean(double[] straps) {
        return Arrays.stream(straps)
                .filter(value -> !Double.isNaN(value))
                .average()
                .orElse(NONE);
    }

    private static String change(double now, double then) {
        double percent = 100 * (now / then - 1);
        if (Double.isNaN(percent) || Double.isInfinite(percent)) {
            return "";
        }
        return String.format(Locale.ROOT, "%+.0f %%", percent)
                .replace('-', '−')
                .replace("−0 ", "0 ")
                .replace("+0 ", "0 ");
    }

    private static String text(double value, String format) {
        return Double.isNaN(value)
                ? ""
                : String.format(Locale.ROOT, format, value).replace('-', '−');
    }
}
