package org.ohmstead.intake.check;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Numbers as people read them: four figures, plainly written, and their unit. */
final class Figures {

    private static final MathContext FOUR = new MathContext(4, RoundingMode.HALF_UP);
    private static final int HUNDRED = 100;

    private Figures() {}

    static String of(double value, String unit) {
        return plain(value) + " " + unit;
    }

    /** A share as a signed percentage: "+41 %". */
    static String percent(double share) {
        long rounded = Math.round(share * HUNDRED);
        return (rounded > 0 ? "+" : rounded < 0 ? "−" : "") + Math.abs(rounded) + " %";
    }

    private static String plain(double value) {
        if (Double.isNaN(value)) {
            return "?";
        }
        String digits =
                new BigDecimal(Math.abs(value)).round(FOUR).stripTrailingZeros().toPlainString();
        return (value < 0 ? "−" : "") + digits;
    }
}
