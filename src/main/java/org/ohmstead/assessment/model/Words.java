package org.ohmstead.assessment.model;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ohmstead.kernel.OhmicKind;

/** Numbers as people read them: unit, sign, no more digits than the instrument gave. */
final class Words {

    private static final int MOST_LISTED = 6;

    private Words() {}

    /** "+41 %", with a true minus sign. */
    static String change(double share) {
        return withSign(share * 100, 0) + " %";
    }

    /** "+3.2 %". */
    static String fineChange(double share) {
        return withSign(share * 100, 1) + " %";
    }

    static String percent(double share) {
        return fixed(share * 100, 0) + " %";
    }

    /** "0.412 mΩ" or "1812 S". */
    static String ohmic(OhmicKind kind, double value) {
        return significant(value, 3) + " " + kind.unit();
    }

    static String microohms(double value) {
        return fixed(value, 1) + " µΩ";
    }

    static String volts(double value) {
        return fixed(value, 3) + " V";
    }

    static String millivolts(double value) {
        return fixed(value, 0) + " mV";
    }

    static String celsius(double value) {
        return fixed(value, 1) + " °C";
    }

    static String kelvin(double value) {
        return fixed(value, 1) + " K";
    }

    static String years(double value) {
        return fixed(value, 1) + " years";
    }

    static String number(double value) {
        return fixed(value, 1);
    }

    /** "3, 4, 17 and 9 more". */
    static String list(List<Integer> numbers) {
        String first = IntStream.range(0, Math.min(MOST_LISTED, numbers.size()))
                .mapToObj(i -> String.valueOf(numbers.get(i)))
                .collect(Collectors.joining(", "));
        int more = numbers.size() - MOST_LISTED;
        return more > 0 ? first + " and " + more + " more" : first;
    }

    private static String significant(double value, int digits) {
        int whole = value == 0 ? 1 : (int) Math.floor(Math.log10(Math.abs(value))) + 1;
        return fixed(value, Math.max(0, digits - Math.min(whole, digits)));
    }

    private static String withSign(double value, int decimals) {
        return (value >= 0 ? "+" : "") + fixed(value, decimals);
    }

    /** Halves away from zero, as {@link java.util.Formatter} does; a sentence is said of every second jar, so that counts. */
    private static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return String.valueOf(value);
        }
        String digits = BigDecimal.valueOf(Math.abs(value))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
        return value < 0 ? "\u2212" + digits : digits;
    }
}
