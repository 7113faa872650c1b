package org.ohmstead.reports;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.model.Reason;
import org.ohmstead.assessment.model.UnitForecast;
import org.ohmstead.kernel.Urgency;
import org.ohmstead.reports.render.Cell;

/** How reports say what they say over and over. */
final class Phrases {

    static final String NO_PROOF =
            "Ohmic values show change, not capacity; only a capacity test shows capacity. Battery work is live work:"
                    + " follow your employer's rules and local codes.";

    private static final double PERCENT = 100;

    private Phrases() {}

    /** 0.41 becomes 41, for a column of percentages. */
    static Cell percent(@Nullable Double share, int decimals) {
        return share == null ? Cell.NONE : Cell.of(share * PERCENT, decimals);
    }

    static String link(int ordinal, int positions) {
        if (ordinal == 0) {
            return "positive terminal";
        }
        return ordinal == positions ? "negative terminal" : ordinal + " to " + (ordinal + 1);
    }

    static String asked(List<Reason> reasons) {
        return reasons.stream()
                .filter(reason -> reason.asks() != Urgency.CLEAR)
                .map(reason -> reason.words().replaceFirst("\\.$", ""))
                .collect(Collectors.joining("; "));
    }

    /** "2027-02-03 (2026-11-20 to 2028-01-15)": when the limit is crossed, and the range of four in five. */
    static String crossing(@Nullable UnitForecast forecast) {
        if (forecast == null || forecast.middle() == null && forecast.early() == null) {
            return "";
        }
        return day(forecast.middle()) + " (" + day(forecast.early()) + " to " + day(forecast.late()) + ")";
    }

    private static String day(@Nullable LocalDate day) {
        return day == null ? "beyond" : day.toString();
    }
}
