package org.ohmstead.overview;

import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.ohmstead.assessment.OverruleView;
import org.ohmstead.kernel.OhmicKind;
import org.ohmstead.kernel.Urgency;

/**
 * A jar as last judged.
 *
 * @param ohmic in the unit of its kind
 * @param changeOnBaseline 0.41 is 41 % towards ageing
 * @param changeOnMedian against the jars that came with it
 * @param trendPerYear of the share of the baseline
 * @param urgency what it asks, with what people overruled
 */
public record JarLine(
        int position,
        @Nullable String serial,
        LocalDate sittingSince,
        Urgency urgency,
        @Nullable LocalDate readOn,
        @Nullable OhmicKind ohmicKind,
        @Nullable Double ohmic,
        @Nullable Double baseline,
        @Nullable String baselineFrom,
        @Nullable Double changeOnBaseline,
        @Nullable Double changeOnMedian,
        @Nullable Double trendPerYear,
        @Nullable Double volts,
        @Nullable Double celsius,
        List<Why> reasons,
        @Nullable Prospect prospect,
        @Nullable OverruleView overruled) {

    public JarLine {
        reasons = List.copyOf(reasons);
    }

    public boolean asks() {
        return urgency != Urgency.CLEAR;
    }

    /** "Jar 17: 0.581 mΩ, +41 % on its baseline, Act". */
    public String words() {
        String read = ohmic == null
                ? "not measured"
                : Figures.ohmic(ohmic, ohmicKind) + ", " + Figures.change(changeOnBaseline) + " on its baseline";
        return "Jar " + position + ": " + read + ", " + urgency.word();
    }
}
