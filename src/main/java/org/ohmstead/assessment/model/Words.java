package org.ohmstead.assessment.model;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.ohmstead.kernel.OhmicKind;

/** Numbers as people read them: unit, sign, no more digits than the instrument gave. */
final class Words {

    private static final int MOST_LISTED = 6;

    private Words() {}

    /** "+41 %", with a true minus sign. */
    static String change(double share) {
        return signed(String.format(Locale.ROOT, "%+.0f", share * 100)) + " %";
    }

    /** "+3.2 %". */
    static String fineChange(double share) {
        return signed(String.format(Locale.ROOT, "%+.1f", share * 100)) + " %";
    }

    static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", share * 100);
    }

    /** "0.412 mΩ" or "1812 S". */
    static String ohmic(OhmicKind kind, double value) {
        return significant(value, 3) + " " + kind.unit();
    }

    static String microohms(double value) {
        return signed(String.format(Locale.ROOT, "%.1f µΩ", value));
    }

    static String volts(double value) {
        return String.format(Locale.ROOT, "%.3f V", value);
    }

    static String millivolts(double value) {
        return String.format(Locale.ROOT, "%.0f mV", value);
    }

    static String celsius(double value) {
        return signed(String.format(Locale.ROOT, "%.1f °C", value));
    }

    static String kelvin(double value) {
        return signed(String.format(Locale.ROOT, "%.1f K", value));
    }

    static String years(double value) {
        return String.format(Locale.ROOT, "%.1f years", value);
    }

    static String number(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
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
        return signed(String.format(Locale.ROOT, "%." + Math.max(0, digits - Math.min(whole, digits)) + "f", value));
    }

    private static String signed(String number) {
        return number.replace('-', '\u2212');
    }
}
