package org.ohmstead.capacity.model;

import java.util.Locale;

/** Numbers as sentences carry them. */
final class Words {

    private Words() {}

    static String fixed(int decimals, double value) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }

    /** Up to three decimals, no trailing zeros. */
    static String plain(double value) {
        String text = fixed(3, value);
        return text.replaceFirst("\\.?0+$", "");
    }

    static String percent(double value) {
        return fixed(1, value) + " %";
    }
}
