package org.ohmstead.intake.check;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import org.ohmstead.intake.file.ColumnKind;
import org.ohmstead.statistics.Quantiles;

/** The last digits of measured values fall as they will; those that somebody thought up, or rounded, do not. */
final class Digits {

    private static final int TEN = 10;

    private Digits() {}

    static Optional<Remark> regular(SurveyUnderCheck survey) {
        ForensicThresholds limits = survey.limits().forensics();
        double[] read = Arrays.stream(survey.laidOut().ohmic())
                .filter(value -> value > 0)
                .toArray();
        int decimals = Arrays.stream(read).mapToInt(Digits::decimals).max().orElse(0);
        if (read.length < limits.digitJars() || !isWide(read, decimals)) {
            return Optional.empty();
        }
        int[] counts = new int[TEN];
        Arrays.stream(read).forEach(value -> counts[last(value, decimals)]++);
        int most = Arrays.stream(counts).max().orElse(0);
        return most > limits.digitShare() * read.length
                ? Optional.of(Remark.of(
                        RemarkCode.DIGITS_REGULAR,
                        survey.place(
                                "all jars",
                                survey.sheet().line(),
                                survey.sheet().columnOf(ColumnKind.JAR_OHMIC)),
                        most + " of " + read.length + " values end in " + digitSeen(counts, most),
                        "about " + Math.round(read.length / (double) TEN)))
                : Optional.empty();
    }

    /** Only values that spread over more than ten steps of the last digit let every digit come up. */
    private static boolean isWide(double[] read, int decimals) {
        double spread = Quantiles.quantile(read, 0.9) - Quantiles.quantile(read, 0.1);
        return spread * Math.pow(TEN, decimals) >= TEN;
    }

    private static int decimals(double value) {
        return Math.max(0, BigDecimal.valueOf(value).stripTrailingZeros().scale());
    }

    private static int last(double value, int decimals) {
        return (int) Math.floorMod(Math.round(value * Math.pow(TEN, decimals)), (long) TEN);
    }

    private static int digitSeen(int[] counts, int most) {
        int digit = 0;
        while (counts[digit] != most) {
            digit++;
        }
        return digit;
    }
}
